package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The rules of an event on file under bad input and under many hands: nothing is half written, nothing is lost. */
@WholeService
class HostileRulesTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String RULE = "{\"authority\": \"EVENT\", \"statement\": \"Wool at the fire\"%s}";
    private static final int HANDS = 8;

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    private String rules = "";

    @BeforeEach
    void anEventOnFile() throws Exception {
        HttpResponse<String> made = send("POST", "/api/events", Bodies.EVENT_WITH_EVERY_CONDITION, "");
        rules = "/api/events/" + JSON.readTree(made.body()).path("id").asString() + "/rules";
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "null | (body)",
                "{} | rules",
                "{\"rules\": null} | rules",
                "{\"rules\": {}} | rules",
                "{\"rules\": [null]} | rules[0]",
                "{\"rules\": [7]} | rules[0]",
                "{\"rules\": [], \"rules\": []} | (body)",
                "{\"rules\": [], \"eventId\": \"another\"} | eventId",
                "{\"rules\": [{\"authority\": \"KING\", \"statement\": \"x\"}]} | rules[0].authority",
                "{\"rules\": [{\"authority\": \"EVENT\", \"statement\": 7}]} | rules[0].statement",
                "{\"rules\": [{\"authority\": \"EVENT\", \"statement\": \"\\u0000\"}]} | rules[0].statement",
            })
    void whatIsNoListOfRulesIsRefusedByNameAndWritesNothing(String body, String field) throws Exception {
        HttpResponse<String> answer = send("PUT", rules, body, "*");
        assertThat(answer.statusCode()).as(answer.body()).isBetween(400, 422);
        assertThat(JSON.readTree(answer.body()).at("/errors/0/field").asString())
                .isEqualTo(field);
        assertThat(send("GET", rules, "", "").headers().firstValue("ETag")).contains("\"0\"");
    }

    @ParameterizedTest
    @CsvSource({"-1,422", "abc,400", "1.5,400", "99999999999999999999,400", "999,404"})
    void aVersionThatIsNoneIsToldSo(String version, int status) throws Exception {
        HttpResponse<String> answer = send("GET", rules + "?version=" + version, "", "");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
        assertThat(answer.body()).contains(status == 400 ? "is not a whole number" : "version");
    }

    @Test
    void ofManyHandsAtOnceOneWritesAndTheHistoryHoldsIt() throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(HANDS);
        List<Integer> statuses;
        try {
            statuses = IntStream.range(0, HANDS)
                    .mapToObj(hand -> CompletableFuture.supplyAsync(() -> put("\"0\"", 1, "hand " + hand), hands))
                    .toList()
                    .stream()
                    .map(CompletableFuture::join)
                    .sorted()
                    .toList();
        } finally {
            hands.shutdown();
        }
        assertThat(statuses).startsWith(200).endsWith(412).containsOnlyOnce(200).doesNotContain(500);
        assertThat(put("\"1\"", 100, "many")).isEqualTo(200);
        assertThat(put("\"2\"", 101, "too many")).isEqualTo(400);
        JsonNode history =
                JSON.readTree(send("GET", rules + "/versions", "", "").body());
        assertThat(history.path("total").asInt()).isEqualTo(3);
        assertThat(history.at("/versions/0/rules").asInt()).isEqualTo(100);
    }

    @Test
    void withItsEventTheHistoryIsGone() throws Exception {
        put("*", 1, "one more");
        String event = rules.replace("/rules", "");
        assertThat(send("DELETE", event, "", "*").statusCode()).isEqualTo(204);
        for (String address : List.of(rules, rules + "?version=0", rules + "/versions")) {
            assertThat(send("GET", address, "", "").statusCode()).as(address).isEqualTo(404);
        }
        assertThat(put("*", 1, "after the end")).isEqualTo(404);
    }

    private int put(String ifMatch, int count, String source) {
        String one = RULE.formatted(", \"source\": \"" + source + "\"");
        String body = "{\"rules\": [" + String.join(", ", java.util.Collections.nCopies(count, one)) + "]}";
        try {
            return send("PUT", rules, body, ifMatch).statusCode();
        } catch (Exception unsent) {
            throw new IllegalStateException(unsent);
        }
    }

    private HttpResponse<String> send(String method, String path, String body, String ifMatch) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .header("Content-Type", "application/json")
                .method(method, body.isEmpty() ? BodyPublishers.noBody() : BodyPublishers.ofString(body));
        if (!ifMatch.isEmpty()) {
            request.header("If-Match", ifMatch);
        }
        return http.send(request.build(), BodyHandlers.ofString());
    }
}
