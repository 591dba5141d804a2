package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

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
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two packed programs over one database. A call with a key that one works on when it is killed is taken over by the other long before
 * its claim has run out; while the first lives, the other waits.
 */
class KilledCallIT {

    private static final Duration PATIENCE = Duration.ofMinutes(4);

    /** Longer than a claim of one that is gone is left alone. */
    private static final Duration LONG_ENOUGH_TO_DOUBT = Duration.ofSeconds(6);

    /** Whoever is kept waiting here is kept waiting however slow the machine is. */
    private static final List<String> OPTIONS = List.of(
            "-Xmx256m",
            "-Dcampcloth.database.statement-timeout=10min",
            "-Dcampcloth.database.lock-timeout=10min",
            "-Dspring.datasource.hikari.data-source-properties.socketTimeout=600");

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
            awaitClaimed(postgres);
            await().during(LONG_ENOUGH_TO_DOUBT)
                    .atMost(PATIENCE)
                    .pollInSameThread()
                    .until(() -> isBusy(sent(other, key).get()));
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
        Instant heldUntil = instant(postgres, "select max(busy_until) from keyed_call where claimed_by is not null");
        HttpResponse<String> answer = await().atMost(PATIENCE)
                .pollInSameThread()
                .until(() -> sent(other, key).get(), answered -> answered.statusCode() != 409);
        assertThat(instant(postgres, "select clock_timestamp()"))
                .as("the claim of the one that was killed would have held on")
                .isBefore(heldUntil);
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
                "CAMPCLOTH_DEMO", "false",
                // The server has place for one program with a pool of the usual size.
                "SPRING_DATASOURCE_HIKARI_MAXIMUM_POOL_SIZE", "6");
        return PackedProgram.start(folder.resolve("unused"), environment, OPTIONS)
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
                .timeout(PATIENCE)
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        return http.sendAsync(request, HttpResponse.BodyHandlers.ofString());
    }

    /** A call that is answered gives its claim up, so only the one that waits has one. */
    private static void awaitClaimed(PostgresToKill postgres) {
        await().atMost(PATIENCE)
                .pollInSameThread()
                .until(() -> number(postgres, "select count(*) from keyed_call where claimed_by is not null") == 1);
    }

    private static boolean isBusy(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(409);
        assertThat(answer.headers().firstValue("Retry-After")).isPresent();
        return true;
    }

    private static long events(PostgresToKill postgres, String name) throws Exception {
        return number(postgres, "select count(*) from event where body ->> 'name' = '" + name + "'");
    }

    private static long number(PostgresToKill postgres, String query) throws Exception {
        return told(postgres, query, Long.class);
    }

    private static Instant instant(PostgresToKill postgres, String query) throws Exception {
        return told(postgres, query, OffsetDateTime.class).toInstant();
    }

    private static <T> T told(PostgresToKill postgres, String query, Class<T> kind) throws Exception {
        try (Connection connection = postgres.connect();
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(query)) {
            row.next();
            return row.getObject(1, kind);
        }
    }
}
