package campcloth.rest;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.job.LayoutGate;
import campcloth.journey.BareCalls;
import campcloth.journey.WholeService;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** While every place for a layout is taken, the next one is sent away in time and everybody else is served. */
@WholeService
class LayoutGateTest {

    private static final String SQUARE = """
            {"widthCm": 140, "seconds": 0.05,
             "pieces": [{"name": "one", "outlineCm": [[0, 0], [10, 0], [10, 10], [0, 10]]}]}
            """;

    @LocalServerPort
    private int port;

    @Autowired
    private LayoutGate gate;

    @Test
    void oneTooManyIsToldWhenToComeBackAndOthersAreServed() throws Exception {
        BareCalls layouts = new BareCalls(port, "/api/layouts");
        FullGate.whileFull(gate, () -> {
            isSentAway(layouts.post(SQUARE));
            JsonNode label = new BareCalls(port, "/api/labels").answer("{\"text\": \"100% wool\"}");
            assertThat(label.path("parts").size()).isEqualTo(1);
        });
        assertThat(layouts.answer(SQUARE).path("lengthCm").asDouble()).isEqualTo(10);
    }

    private static void isSentAway(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(503);
        assertThat(answer.headers().firstValue("Retry-After")).hasValue("5");
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        JsonNode problem = new JsonMapper().readTree(answer.body());
        assertThat(problem)
                .isEqualTo(new JsonMapper()
                        .readTree(LayoutGateTest.class.getResourceAsStream("/api-examples/problem-503-busy.json")));
    }
}
