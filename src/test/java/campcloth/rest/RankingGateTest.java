package campcloth.rest;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.job.LayoutGate;
import campcloth.job.RankingGate;
import campcloth.journey.BareCalls;
import campcloth.journey.WholeService;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** While every place for a ranking is taken, the next one is sent away in time, over the interface as on the pages, and layouts go on. */
@WholeService
class RankingGateTest {

    private static final String ASKED = "season=SUMMER&design=tunic";
    private static final String SQUARE = """
            {"widthCm": 140, "seconds": 0.05,
             "pieces": [{"name": "one", "outlineCm": [[0, 0], [10, 0], [10, 10], [0, 10]]}]}
            """;

    @LocalServerPort
    private int port;

    @Autowired
    private RankingGate gate;

    @Autowired
    private LayoutGate layouts;

    @Test
    void oneTooManyIsToldWhenToComeBackAndOthersAreServed() throws Exception {
        BareCalls advice = new BareCalls(port, "/api/advice");
        String question = question();
        FullGate.awaitEmpty(layouts);
        FullGate.whileFull(gate, () -> {
            isSentAway(advice.post(question));
            isSentAwayOnAPage(page("/plan/cloths?" + ASKED));
            isSentAwayOnAPage(page("/plan/firmness?" + ASKED));
            assertThat(new BareCalls(port, "/api/layouts")
                            .answer(SQUARE)
                            .path("lengthCm")
                            .asDouble())
                    .isEqualTo(10);
            assertThat(page("/cloths").statusCode()).isEqualTo(200);
        });
        assertThat(advice.answer(question).path("ranking").size()).isPositive();
        assertThat(page("/plan/cloths?" + ASKED).statusCode()).isEqualTo(200);
    }

    private static String question() throws IOException {
        try (InputStream example = Objects.requireNonNull(
                RankingGateTest.class.getResourceAsStream("/api-examples/AdviceRequest-request.json"))) {
            return new String(example.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static void isSentAway(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(503);
        assertThat(answer.headers().firstValue("Retry-After")).hasValue("5");
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        JsonNode problem = new JsonMapper().readTree(answer.body());
        assertThat(problem.path("type").asString()).isEqualTo("urn:campcloth:problem:busy");
        assertThat(problem.path("title").asString()).isEqualTo("Too many rankings at once");
        assertThat(problem.path("detail").asString()).contains("rankings", "Try again in a few seconds");
    }

    private static void isSentAwayOnAPage(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(503);
        assertThat(answer.headers().firstValue("Retry-After")).hasValue("5");
        assertThat(answer.body()).contains("Too many at once", "rankings worked out");
    }

    private HttpResponse<String> page(String path) throws Exception {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
    }
}
