package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.store.postgres.PostgresToKill;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two packed programs over one database. A call with a key that one works on when it is killed is taken over by the other long before
 * its claim has run out; while the first lives, the other waits.
 */
class KilledCallIT {

    /** Longer than a claim of one that is gone is left alone, much shorter than a claim holds. */
    private static final Duration SOON = Duration.ofSeconds(10);

    private static final Duration LONG_ENOUGH_TO_DOUBT = Duration.ofSeconds(6);

    @TempDir
    Path folder;

    private final HttpClient http = HttpClient.newHttpClient();

    @Test
    void aCallOfAProgramThatWasKilledIsTakenOverAtOnceAndOneOfALivingIsNot() throws Exception {
        try (PostgresToKill postgres = PostgresToKill.start(folder.resolve("data"));
                PackedProgram one = started(postgres);
                PackedProgram other = started(postgres)) {
            oneThatLivesIsWaitedFor(postgres, one, other);
            oneThatWasKilledIsNot(postgres, one, other);
        }
    }

    private void oneThatLivesIsWaitedFor(PostgresToKill postgres, PackedProgram one, PackedProgram other)
            throws Exception {
        String key = UUID.randomUUID().toString();
        CompletableFuture<HttpResponse<String>> first;
        try (Connection blocking = postgres.connect()) {
            block(blocking);
            first = sent(one, key);
            long end = System.nanoTime() + LONG_ENOUGH_TO_DOUBT.toNanos();
            awaitClaimed(postgres);
            while (System.nanoTime() < end) {
                HttpResponse<String> busy = sent(other, key).get();
                assertThat(busy.statusCode()).as(busy.body()).isEqualTo(409);
                assertThat(busy.headers().firstValue("Retry-After")).isPresent();
                TimeUnit.MILLISECONDS.sleep(200);
            }
        }
        assertThat(first.get().statusCode()).as(first.get().body()).isEqualTo(201);
        assertThat(sent(other, key).get().body()).isEqualTo(first.get().body());
        assertThat(events(postgres, key)).isEqualTo(1);
    }

    private void oneThatWasKilledIsNot(PostgresToKill postgres, PackedProgram one, PackedProgram other)
            throws Exception {
        String key = UUID.randomUUID().toString();
        try (Connection blocking = postgres.connect()) {
            block(blocking);
            sent(one, key);
            awaitClaimed(postgres);
            one.kill();
        }
        long killed = System.nanoTime();
        HttpResponse<String> answer = sent(other, key).get();
        while (answer.statusCode() == 409) {
            assertThat(System.nanoTime() - killed).as(answer.body()).isLessThan(SOON.toNanos());
            TimeUnit.MILLISECONDS.sleep(100);
            answer = sent(other, key).get();
        }
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(201);
        assertThat(events(postgres, key)).isEqualTo(1);
        System.out.printf(
                "a call of a program that was killed was made by another %d ms after the kill%n",
                (System.nanoTime() - killed) / 1_000_000);
    }

    private PackedProgram started(PostgresToKill postgres) throws Exception {
        Map<String, String> environment = Map.of(
                "SPRING_DATASOURCE_URL", postgres.url(postgres.port()),
                "SPRING_DATASOURCE_USERNAME", postgres.user(),
                "SPRING_DATASOURCE_PASSWORD", postgres.password(),
                "CAMPCLOTH_DEMO", "false");
        return PackedProgram.start(folder.resolve("unused"), environment, List.of("-Xmx256m"))
                .ready();
    }

    /** Until the connection ends, whoever would write an event waits. */
    private static void block(Connection connection) throws Exception {
        connection.setAutoCommit(false);
        try (Statement statement = connection.createStatement()) {
            statement.execute("lock table event in share mode");
        }
    }

    private CompletableFuture<HttpResponse<String>> sent(PackedProgram program, String key) {
        String body = "{\"name\": \"" + key + "\", \"season\": \"SUMMER\"}";
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + program.port() + "/api/events"))
                .header("Content-Type", "application/json")
                .header("Idempotency-Key", key)
                .timeout(Duration.ofSeconds(60))
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        return http.sendAsync(request, HttpResponse.BodyHandlers.ofString());
    }

    private static void awaitClaimed(PostgresToKill postgres) throws Exception {
        long end = System.nanoTime() + SOON.toNanos();
        while (number(postgres, "select count(*) from keyed_call where claimed_by is not null") == 0) {
            assertThat(System.nanoTime()).as("claimed in time").isLessThan(end);
            TimeUnit.MILLISECONDS.sleep(20);
        }
    }

    private static long events(PostgresToKill postgres, String name) throws Exception {
        return number(postgres, "select count(*) from event where body ->> 'name' = '" + name + "'");
    }

    private static long number(PostgresToKill postgres, String query) throws Exception {
        try (Connection connection = postgres.connect();
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(query)) {
            row.next();
            return row.getLong(1);
        }
    }
}
