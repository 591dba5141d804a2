package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import campcloth.outage.CutLine;
import campcloth.store.postgres.PostgresForTests;
import com.zaxxer.hikari.HikariDataSource;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.sql.Connection;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.Lifecycle;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ContextConfiguration;

/** The line to the database is cut: everything that needs it says so within seconds, and goes on by itself afterwards. */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT)
@ContextConfiguration(initializers = BehindALine.class)
@DirtiesContext
@Timeout(180)
class DatabaseAwayTest {

    /**
     * The service's own bounds come to a few seconds, the rest is for a busy machine. Without them a pool waits half a minute, and a
     * silent line is waited for without end.
     */
    private static final long MOST_MILLIS = 25_000;

    /** Longer than the half second within which the pool hands a connection on without a look at it. */
    private static final Duration AT_REST = Duration.ofSeconds(3);

    private static final List<String> ASKING = List.of(
            "/api/cloths?size=1",
            "/api/cloths/linen-plain-185",
            "/api/cloths/completeness",
            "/api/cloths/linen-plain-185/alike");
    private static final List<String> PAGES = List.of("/cloths", "/events");

    @Autowired
    private CutLine line;

    @Autowired
    private PostgresForTests.Database database;

    @Autowired
    private JdbcTemplate sql;

    @Autowired
    private HikariDataSource pool;

    /** Looks at the database by itself now and then. */
    @Autowired
    @Qualifier("clothWatchStart")
    private Lifecycle watch;

    @LocalServerPort
    private int port;

    private final HttpClient http = HttpClient.newHttpClient();

    @AfterEach
    void mend() {
        line.mend();
    }

    @Test
    void allThatNeedsTheDatabaseSaysSoWithinSecondsAndGoesOnByItself() throws Exception {
        allIsWell();
        line.cut();
        List<CompletableFuture<Answer>> answers = new ArrayList<>();
        ASKING.forEach(path -> answers.add(answer(path, "application/json")));
        PAGES.forEach(path -> answers.add(answer(path, "text/html")));
        for (CompletableFuture<Answer> coming : answers) {
            isAway(coming.join());
        }
        Answer written = answer(HttpRequest.newBuilder(uri("/api/events"))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString("{\"name\": \"camp\", \"season\": \"SUMMER\"}"))
                        .build())
                .join();
        isAway(written);
        assertThat(answer("/api/fibres", "application/json").join().status())
                .as("what needs no database")
                .isEqualTo(200);
        line.mend();
        allIsWell();
    }

    /** An instance that says it is not ready gets no requests, and then nobody is told 503 and when to come back. */
    @Test
    void healthTellsOfTheDatabaseAndTheInstanceStaysReady() throws Exception {
        allIsWell();
        assertThat(answer("/actuator/health", "*/*").join().status()).isEqualTo(200);
        line.cut();
        Answer health = answer("/actuator/health", "*/*").join();
        assertThat(health.status()).isEqualTo(503);
        assertThat(health.body()).contains("\"DOWN\"");
        assertThat(health.millis()).isLessThan(MOST_MILLIS);
        assertThat(answer("/actuator/health/readiness", "*/*").join().status()).isEqualTo(200);
        assertThat(answer("/actuator/health/liveness", "*/*").join().status()).isEqualTo(200);
        line.mend();
        allIsWell();
        assertThat(answer("/actuator/health", "*/*").join().status()).isEqualTo(200);
    }

    /** Connections that broke while they rested, not only just made or used, are noticed before anybody gets one. */
    @Test
    void connectionsThatBrokeAtRestHurtNobody() {
        allIsWell();
        watch.stop();
        try {
            await("the pool is full and rests")
                    .atMost(Duration.ofMinutes(1))
                    .during(AT_REST)
                    .until(() -> pool.getHikariPoolMXBean().getIdleConnections() == pool.getMaximumPoolSize());
            line.drop();
            for (String path : ASKING) {
                assertThat(answer(path, "application/json").join().status())
                        .as(path)
                        .isEqualTo(200);
            }
        } finally {
            watch.start();
        }
    }

    /** No error comes from a line that is only silent, so time alone tells. */
    @Test
    void aSilentLineIsNoticedByItsSilence() throws Exception {
        allIsWell();
        line.mute();
        List<CompletableFuture<Answer>> answers =
                ASKING.stream().map(path -> answer(path, "application/json")).toList();
        for (CompletableFuture<Answer> coming : answers) {
            isAway(coming.join());
        }
        line.mend();
        allIsWell();
    }

    @Test
    void whoWaitsTooLongForATurnIsToldSoAndNothingIsWritten() throws Exception {
        allIsWell();
        HttpRequest cloth = HttpRequest.newBuilder(uri("/api/cloths"))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(
                        "{\"name\": \"late\", \"blend\": [{\"fibre\": \"wool\", \"percent\": 100}],"
                                + " \"weightGsm\": 300, \"widthCm\": 150}"))
                .build();
        try (Connection other = database.connect();
                Statement holding = other.createStatement()) {
            other.setAutoCommit(false);
            holding.execute("select tick from cloth_clock for update");
            Answer answer = answer(cloth).join();
            assertThat(answer.status()).as(answer.toString()).isEqualTo(503);
            assertThat(answer.body()).contains("contended");
            assertThat(answer.millis()).isBetween(900L, MOST_MILLIS);
            other.rollback();
        }
        assertThat(sql.queryForObject("select count(*) from cloth where name = 'late'", Long.class))
                .isZero();
        assertThat(answer(cloth).join().status()).isEqualTo(201);
    }

    @Test
    void aConnectionOfThePoolHasItsBounds() {
        assertThat(sql.queryForObject("show statement_timeout", String.class)).isEqualTo("20s");
        assertThat(sql.queryForObject("show lock_timeout", String.class)).isEqualTo("1s");
        assertThat(sql.queryForObject("show idle_in_transaction_session_timeout", String.class))
                .isEqualTo("1min");
    }

    private record Answer(String path, int status, String type, String retryAfter, String body, long millis) {}

    private void allIsWell() {
        for (String path : List.of(ASKING.get(0), PAGES.get(0))) {
            await().atMost(Duration.ofMinutes(1)).untilAsserted(() -> {
                Answer last = answer(path, "*/*").join();
                assertThat(last.status()).as(last.toString()).isEqualTo(200);
            });
        }
    }

    private static void isAway(Answer answer) {
        assertThat(answer.status()).as(answer.toString()).isEqualTo(503);
        assertThat(answer.retryAfter()).as(answer.path()).isEqualTo("5");
        assertThat(answer.millis()).as(answer.path()).isLessThan(MOST_MILLIS);
        boolean page = PAGES.contains(answer.path());
        assertThat(answer.type()).as(answer.path()).startsWith(page ? "text/html" : "application/problem+json");
        assertThat(answer.body()).as(answer.path()).contains("The database does not answer");
    }

    private CompletableFuture<Answer> answer(String path, String accept) {
        return answer(HttpRequest.newBuilder(uri(path)).header("Accept", accept).build());
    }

    private CompletableFuture<Answer> answer(HttpRequest request) {
        long begun = System.nanoTime();
        return http.sendAsync(request, HttpResponse.BodyHandlers.ofString())
                .thenApply(answer -> new Answer(
                        request.uri().getPath(),
                        answer.statusCode(),
                        answer.headers().firstValue("Content-Type").orElse(""),
                        answer.headers().firstValue("Retry-After").orElse(""),
                        answer.body(),
                        (System.nanoTime() - begun) / 1_000_000));
    }

    private URI uri(String path) {
        return URI.create("http://127.0.0.1:" + port + path);
    }
}
