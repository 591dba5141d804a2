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
            {"widthCm": 140, "seconds": 5, "pieces": [
              {"name": "a", "count": 9, "outlineCm": [[0,0],[31,0],[27,44],[3,47]]},
              {"name": "b", "count": 7, "outlineCm": [[0,0],[19,5],[23,61],[2,58]]},
              {"name": "c", "count": 8, "outlineCm": [[0,0],[41,2],[20,37]]}]}
            """;

    @TempDir
    Path folder;

    @Test
    void aRequestThatRunsIsAnsweredBeforeTheEnd() throws Exception {
        try (PackedProgram program = PackedProgram.start(folder, Map.of()).ready()) {
            long begun = System.nanoTime();
            CompletableFuture<HttpResponse<String>> running = CompletableFuture.supplyAsync(() -> {
                try {
                    return program.post("/api/layouts", LAYOUT);
                } catch (Exception failure) {
                    throw new IllegalStateException(failure);
                }
            });
            await().atMost(1, TimeUnit.MINUTES)
                    .until(() ->
                            program.get("/actuator/prometheus").body().contains("campcloth_layout_searching 1.0"));
            assertThat(running).isNotDone();
            int status = program.terminate();
            HttpResponse<String> answer = running.join();
            assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
            assertThat(status).isIn(0, 143);
            assertThat((System.nanoTime() - begun) / 1e9).as("seconds").isBetween(3.0, 60.0);
        }
    }
}
