package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.JdbcTemplate;
import tools.jackson.databind.json.JsonMapper;

/** Calls that make something, sent again with their key: one thing is made, whatever happened to the first. */
@WholeService
class SameCallTwiceTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String LIST = "key,name,composition\nA,Linen,100% linen\n";
    private static final int AT_ONCE = 8;

    private final String key = UUID.randomUUID().toString();

    @LocalServerPort
    private int port;

    @Autowired
    private JdbcTemplate sql;

    static Stream<Arguments> creating() {
        return Stream.of(
                Arguments.of("/api/cloths", Bodies.CLOTH, "cloth"),
                Arguments.of("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, "event"),
                Arguments.of("/api/cutting-plans", Bodies.CUTTING_PLAN_WITH_LENGTHS, "cutting_plan"),
                Arguments.of("/api/cloths/acrylic-tweed-look-300/swatches", Bodies.SWATCH, "cloth_swatch"),
                Arguments.of("/api/jobs/layouts", Bodies.LAYOUT, "job"),
                Arguments.of("/api/jobs/cutting-plans", Bodies.CUTTING_PLAN_WITH_LENGTHS, "job"),
                Arguments.of("/api/jobs/lists?dryRun=true&supplier=Mill", LIST, "job"),
                Arguments.of("/api/cloths/import?supplier=Mill%20of%20Keys", LIST, "cloth"));
    }

    @ParameterizedTest
    @MethodSource("creating")
    void isAnsweredAgainAndMakesNothingNew(String path, String body, String table) throws Exception {
        HttpResponse<String> first = post(path, body, key);
        assertThat(first.statusCode()).as(first.body()).isBetween(200, 202);
        assertThat(first.headers().firstValue("Idempotency-Replayed")).isEmpty();
        long made = rows(table);
        HttpResponse<String> again = post(path, body, "\"" + key + "\"");
        assertThat(again.statusCode()).isEqualTo(first.statusCode());
        assertThat(again.body()).isEqualTo(first.body());
        for (String header : List.of("Location", "ETag", "Content-Type", "Retry-After")) {
            assertThat(again.headers().firstValue(header))
                    .as(header)
                    .isEqualTo(first.headers().firstValue(header));
        }
        assertThat(again.headers().firstValue("Idempotency-Replayed")).contains("true");
        assertThat(rows(table)).isEqualTo(made);
    }

    @ParameterizedTest
    @MethodSource("creating")
    void findsWhatWasMadeBeforeTheAnswerWasKept(String path, String body, String table) throws Exception {
        HttpResponse<String> first = post(path, body, key);
        long made = rows(table);
        cutShort();
        HttpResponse<String> again = post(path, body, key);
        assertThat(again.statusCode()).as(again.body()).isEqualTo(first.statusCode());
        assertThat(again.headers().firstValue("Idempotency-Replayed")).isEmpty();
        assertThat(again.headers().firstValue("Location"))
                .isEqualTo(first.headers().firstValue("Location"));
        assertThat(rows(table)).isEqualTo(made);
    }

    @Test
    void withoutAKeyOrWithAnotherAThingMoreIsMade() throws Exception {
        String one = id(post("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, key));
        String two = id(post("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, key + "-2"));
        assertThat(one).isNotEqualTo(two);
        long before = rows("event");
        for (int i = 0; i < 2; i++) {
            new KeyedPosts(port).send("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION);
        }
        assertThat(rows("event")).isEqualTo(before + 2);
    }

    @Test
    void withSomethingElseItIsRefused() throws Exception {
        assertThat(post("/api/jobs/lists?supplier=A", LIST, key).statusCode()).isEqualTo(202);
        for (HttpResponse<String> other : List.of(
                post("/api/jobs/lists?supplier=B", LIST, key),
                post("/api/jobs/lists?supplier=A", LIST + "B,x,y", key))) {
            assertThat(other.statusCode()).isEqualTo(422);
            assertThat(JSON.readTree(other.body()).path("type").asString()).endsWith("key-used");
            assertThat(JSON.readTree(other.body()).at("/errors/0/field").asString())
                    .isEqualTo("Idempotency-Key");
        }
        assertThat(post("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, key).statusCode())
                .as("the same key at another address is another key")
                .isEqualTo(201);
    }

    @Test
    void ofManyAtOnceOneMakesTheThing() throws Exception {
        long before = rows("event");
        ExecutorService pool = Executors.newFixedThreadPool(AT_ONCE);
        List<HttpResponse<String>> answers = new ArrayList<>();
        try {
            Callable<HttpResponse<String>> call = () -> post("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, key);
            for (Future<HttpResponse<String>> answer : pool.invokeAll(Collections.nCopies(AT_ONCE, call))) {
                answers.add(answer.get());
            }
        } finally {
            pool.shutdown();
        }
        assertThat(rows("event")).isEqualTo(before + 1);
        assertThat(answers).extracting(HttpResponse::statusCode).contains(201).isSubsetOf(201, 409);
        assertThat(answers.stream()
                        .filter(answer -> answer.statusCode() == 201)
                        .map(this::id)
                        .distinct())
                .hasSize(1);
    }

    @Test
    void whileTheFirstIsWorkedOnTheSecondIsToldToWait() throws Exception {
        post("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, key);
        cutShort();
        sql.update("update keyed_call set busy_until = now() + interval '1 hour'"
                + " where claimed_at = (select max(claimed_at) from keyed_call)");
        HttpResponse<String> busy = post("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, key);
        assertThat(busy.statusCode()).isEqualTo(409);
        assertThat(busy.headers().firstValue("Retry-After")).isPresent();
        assertThat(JSON.readTree(busy.body()).path("type").asString()).endsWith("key-busy");
    }

    @Test
    void whatIsRefusedDoesNotUseItsKeyUp() throws Exception {
        assertThat(post("/api/events", "{}", key).statusCode()).isEqualTo(400);
        assertThat(post("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, key).statusCode())
                .isEqualTo(201);
    }

    @Test
    void aDayLaterAKeyIsNewAgain() throws Exception {
        String one = id(post("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, key));
        sql.update("update keyed_call set claimed_at = claimed_at - interval '25 hours'");
        String two = id(post("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, key));
        assertThat(two).isNotEqualTo(one);
    }

    /** As it is when the instance goes away after the thing was made. */
    private void cutShort() {
        sql.update("update keyed_call set status = null, headers = null, body = null, busy_until = null"
                + " where claimed_at = (select max(claimed_at) from keyed_call)");
    }

    private String id(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(201);
        return JSON.readTree(answer.body()).path("id").asString();
    }

    private long rows(String table) {
        Long found = sql.queryForObject("select count(*) from " + table, Long.class);
        return found == null ? -1 : found;
    }

    private HttpResponse<String> post(String path, String body, String withKey) throws Exception {
        return new KeyedPosts(port).send(path, body, withKey);
    }
}
