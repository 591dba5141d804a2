package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Asked to end in the middle of a request that takes its time, the program answers it first. */
class OrderlyEndIT {

    private static final String LAYOUT = """
            {"widthCm": 140, "seconds": 8, "pieces": [
              {"name": "a", "count": 9, "outlineCm": [[0,0],[31,0],[27,44],[3,47]]},
              {"name": "b", "count": 7, "outlineCm": [[0,0],[19,5],[23,61],[2,58]]},
              {"name": "c", "count": 8, "outlineCm": [[0,0],[41,2],[20,37]]}]}
            """;

    /** The work of a search is counted, so where the machine is busy it takes longer than the program would wait. */
    private static final Map<String, String> NO_END_OF_PATIENCE =
            Map.of("SPRING_LIFECYCLE_TIMEOUT_PER_SHUTDOWN_PHASE", "4m");

    @TempDir
    Path folder;

    @Test
    void aRequestThatRunsIsAnsweredBeforeTheEnd() throws Exception {
        try (PackedProgram program =
                PackedProgram.start(folder, NO_END_OF_PATIENCE).ready()) {
            String undisturbed = program.post("/api/layouts", LAYOUT).body();
            CompletableFuture<HttpResponse<String>> running = CompletableFuture.supplyAsync(() -> {
                try {
                    return program.post("/api/layouts", LAYOUT);
                } catch (Exception failure) {
                    throw new IllegalStateException(failure);
                }
            });
            await().pollInSameThread()
                    .atMost(2, TimeUnit.MINUTES)
                    .until(() -> program.get("/actuator/prometheus").body().contains("campcloth_layout_searching 1.0"));
            assertThat(running).isNotDone();
            int status = program.terminate();
            HttpResponse<String> answer = running.join();
            assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
            assertThat(answer.body()).as("searched to its end").isEqualTo(undisturbed);
            assertThat(status).isIn(0, 143);
        }
    }
}
