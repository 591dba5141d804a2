package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.JdbcTemplate;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Jobs over HTTP: handed in, looked at, done, cancelled, too many; and the pages that hand lists in. */
@WholeService
class JobsRoadTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String LIST = "key,name,composition\nA,Linen,100% linen\nB,Wool,100% wool\n";

    /** The longest search that may be asked for. */
    private static final String LONG = Bodies.LAYOUT.replace("\"seconds\": 0.05", "\"seconds\": 120");

    /** Its layouts, one after the other, would take a good minute. */
    private static final String MANY_GARMENTS =
            Bodies.CUTTING_PLAN.replace("\"widthCm\": 140", "\"widthCm\": 110").replace("\"count\": 1", "\"count\": 3");

    /** What is searched is counted in work: where the machine is busy the whole takes longer still, and so may the end. */
    private static final Duration SOON = Duration.ofSeconds(45);

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @Autowired
    private JdbcTemplate sql;

    static Stream<Arguments> longSearches() {
        return Stream.of(
                Arguments.of("/api/jobs/layouts", LONG),
                Arguments.of("/api/jobs/cutting-plans?secondsALayout=10", MANY_GARMENTS));
    }

    @Test
    void aLayoutIsTakenInAndLookedAtWhenItIsDone() throws Exception {
        HttpResponse<String> taken = post("/api/jobs/layouts", Bodies.LAYOUT);
        assertThat(taken.statusCode()).as(taken.body()).isEqualTo(202);
        assertThat(taken.headers().firstValue("Retry-After")).isPresent();
        JsonNode done = ended(taken);
        assertThat(done.path("state").asString()).isEqualTo("DONE");
        JsonNode atOnce = JSON.readTree(post("/api/layouts", Bodies.LAYOUT).body());
        assertThat(done.path("layout")).isEqualTo(atOnce);
        assertThat(JSON.readTree(get("/api/jobs").body()).at("/jobs/0/id")).isEqualTo(done.path("id"));
    }

    @ParameterizedTest
    @MethodSource("longSearches")
    void aLongSearchEndsSoonAfterItIsCancelled(String path, String body) throws Exception {
        HttpResponse<String> taken = post(path, body);
        assertThat(taken.statusCode()).as(taken.body()).isEqualTo(202);
        String address = taken.headers().firstValue("Location").orElseThrow();
        waitFor(address, "\"state\":\"RUNNING\"");
        long asked = System.nanoTime();
        assertThat(delete(address).statusCode()).isEqualTo(202);
        assertThat(ended(taken).path("state").asString()).isEqualTo("CANCELLED");
        assertThat(System.nanoTime() - asked).isLessThan(SOON.toNanos());
        HttpResponse<String> again = delete(address);
        assertThat(again.statusCode()).isEqualTo(409);
        assertThat(JSON.readTree(again.body()).path("type").asString()).endsWith("job-ended");
    }

    @Test
    void aListHandedInTwiceChangesNothingTheSecondTime() throws Exception {
        String path = "/api/jobs/lists?supplier=" + UUID.randomUUID();
        JsonNode first = ended(post(path, LIST, "text/csv"));
        assertThat(first.at("/report/counts/added").asInt()).isEqualTo(2);
        assertThat(first.at("/progress/rowsWritten").asInt()).isEqualTo(2);
        JsonNode second = ended(post(path, LIST, "text/csv"));
        assertThat(second.at("/report/counts/unchanged").asInt()).isEqualTo(2);
        JsonNode bad = ended(post(path, "no list", "text/csv"));
        assertThat(bad.path("state").asString()).isEqualTo("FAILED");
        assertThat(bad.at("/failure/errors/0/field").asString()).isNotBlank();
    }

    @Test
    void aPlanIsKeptWhereTheJobSays() throws Exception {
        JsonNode done = ended(post("/api/jobs/cutting-plans?secondsALayout=0.1", Bodies.CUTTING_PLAN_WITH_LENGTHS));
        assertThat(done.path("state").asString()).as(done.toString()).isEqualTo("DONE");
        assertThat(get(done.path("planUrl").asString()).statusCode()).isEqualTo(200);
    }

    @Test
    void moreThanTwentyOfOnesOwnAreRefused() throws Exception {
        for (int i = 0; i < 20; i++) {
            assertThat(post("/api/jobs/layouts", LONG).statusCode()).isEqualTo(202);
        }
        HttpResponse<String> refused = post("/api/jobs/layouts", LONG);
        assertThat(refused.statusCode()).isEqualTo(429);
        assertThat(refused.headers().firstValue("Retry-After")).isPresent();
        assertThat(JSON.readTree(refused.body()).path("detail").asString()).contains("cancel one");
    }

    @Test
    void whatIsBeyondAJobIsRefusedAtOnce() throws Exception {
        String tooLong = Bodies.LAYOUT.replace("\"seconds\": 0.05", "\"seconds\": 121");
        assertThat(post("/api/jobs/layouts", tooLong).statusCode()).isEqualTo(422);
        assertThat(post("/api/layouts", LONG).statusCode()).isEqualTo(422);
        assertThat(post("/api/jobs/layouts", Bodies.LAYOUT.replace("\"widthCm\": 140", "\"widthCm\": 10"))
                        .statusCode())
                .isEqualTo(422);
        assertThat(get("/api/jobs/" + UUID.randomUUID()).statusCode()).isEqualTo(404);
        assertThat(delete("/api/jobs/nowhere").statusCode()).isEqualTo(404);
    }

    @Test
    void thePagesTakeAListOverOnceHoweverOftenTheButtonIsPressed() throws Exception {
        String looked = redirect(upload("Mill " + UUID.randomUUID(), LIST));
        String page = waitFor(looked, "What would come of the list");
        assertThat(page).contains("Take it over");
        String taken = redirect(form(looked + "/take"));
        assertThat(redirect(form(looked + "/take"))).isEqualTo(taken).isNotEqualTo(looked);
        waitFor(taken, "The list is taken over");
        assertThat(redirect(form(taken + "/take"))).isEqualTo(taken);
        assertThat(redirect(form(looked + "/forget"))).isEqualTo("/cloths/import");
        assertThat(get(looked).statusCode()).isEqualTo(404);
        waitFor(redirect(upload("Mill", "no list\n")), "The list cannot be read");
    }

    @Test
    void aListOnAPageIsCancelledWhileItWaitsAndMayBeTriedAgain() throws Exception {
        String looked = redirect(upload("Mill " + UUID.randomUUID(), LIST));
        waitFor(looked, "What would come of the list");
        sql.update(
                "update job set state = 'QUEUED', ended_at = null, result = null, not_before = now() + interval '1 hour'"
                        + " where cast(id as text) = ?",
                looked.substring(looked.lastIndexOf('/') + 1));
        assertThat(get(looked).body()).contains("Looking at the list", "/cancel", "http-equiv=\"refresh\"");
        assertThat(redirect(form(looked + "/cancel"))).isEqualTo(looked);
        assertThat(get(looked).body()).contains("The work was cancelled");
        waitFor(redirect(form(looked + "/take")), "What would come of the list");
    }

    private JsonNode ended(HttpResponse<String> taken) throws Exception {
        assertThat(taken.statusCode()).as(taken.body()).isEqualTo(202);
        String address = taken.headers().firstValue("Location").orElseThrow();
        waitFor(address, "\"endedAt\":\"");
        return JSON.readTree(get(address).body());
    }

    private String waitFor(String address, String text) {
        return await().atMost(4, TimeUnit.MINUTES).until(() -> get(address).body(), body -> body.contains(text));
    }

    private HttpResponse<String> upload(String supplier, String list) throws Exception {
        String line = "----boundary";
        String body = part(line, "name=\"supplier\"", supplier)
                + part(line, "name=\"onBadRow\"", "SKIP")
                + part(line, "name=\"file\"; filename=\"list.csv\"", list)
                + "--" + line + "--\r\n";
        return post("/cloths/import", body, "multipart/form-data; boundary=" + line);
    }

    private static String part(String line, String name, String value) {
        return "--" + line + "\r\nContent-Disposition: form-data; " + name + "\r\n\r\n" + value + "\r\n";
    }

    private HttpResponse<String> form(String path) throws Exception {
        return post(path, "", "application/x-www-form-urlencoded");
    }

    private static String redirect(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isBetween(300, 399);
        return URI.create(answer.headers().firstValue("Location").orElseThrow()).getPath();
    }

    private HttpResponse<String> post(String path, String body) throws Exception {
        return post(path, body, "application/json");
    }

    private HttpResponse<String> post(String path, String body, String type) throws Exception {
        return send(
                request(path).header("Content-Type", type).POST(BodyPublishers.ofString(body, StandardCharsets.UTF_8)));
    }

    private HttpResponse<String> get(String path) throws Exception {
        return send(request(path));
    }

    private HttpResponse<String> delete(String path) throws Exception {
        return send(request(path).DELETE());
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path));
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return http.send(request.build(), BodyHandlers.ofString());
    }
}
