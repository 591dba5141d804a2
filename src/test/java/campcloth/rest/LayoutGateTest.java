package campcloth.rest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import campcloth.job.LayoutGate;
import campcloth.journey.BareCalls;
import campcloth.journey.WholeService;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
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

    @BeforeEach
    void allPlacesAreFree() {
        await().atMost(Duration.ofMinutes(2)).until(() -> gate.load().working() == 0);
    }

    @Test
    void oneTooManyIsToldWhenToComeBackAndOthersAreServed() throws Exception {
        BareCalls layouts = new BareCalls(port, "/api/layouts");
        CountDownLatch inside = new CountDownLatch(LayoutGate.PLACES);
        CountDownLatch done = new CountDownLatch(1);
        ExecutorService searching = Executors.newFixedThreadPool(LayoutGate.PLACES);
        try {
            for (int i = 0; i < LayoutGate.PLACES; i++) {
                searching.execute(() -> gate.through(() -> waitFor(inside, done)));
            }
            assertThat(inside.await(60, TimeUnit.SECONDS)).isTrue();
            isSentAway(layouts.post(SQUARE));
            JsonNode label = new BareCalls(port, "/api/labels").answer("{\"text\": \"100% wool\"}");
            assertThat(label.path("parts").size()).isEqualTo(1);
        } finally {
            done.countDown();
            searching.shutdown();
        }
        assertThat(searching.awaitTermination(60, TimeUnit.SECONDS)).isTrue();
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

    private static boolean waitFor(CountDownLatch inside, CountDownLatch done) {
        inside.countDown();
        try {
            return done.await(180, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
