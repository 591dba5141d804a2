package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Words that nobody writes in good faith: refused in a sentence that says what was wrong, or told again unbroken. */
@WholeService
class HostileWordsTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String FLAME = "\uD83D\uDD25";

    /** Half of a pair of surrogates, as it is and as JSON writes it. */
    private static final String HALF =
            "[\uD800-\uDBFF](?![\uDC00-\uDFFF])|\\\\u[dD][89abAB]..(?!\\\\u[dD][c-fC-F])|\\?\\.\\.\\.";

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @Test
    void namesInAPictureAreTextAndNothingElse() throws Exception {
        for (String name : List.of(
                "<script>alert(1)</script>",
                "</text></svg><svg onload=\"x\">",
                "\"'&amp;]]><!-- -->",
                "\u202Egnihtemos\u2066",
                "\uFFFE\uFFFF",
                "x" + FLAME.repeat(49),
                "\u05D0".repeat(100))) {
            JsonNode asked = JSON.readTree(Bodies.COURSE);
            ((ObjectNode) asked.path("event")).put("name", name);
            ((ObjectNode) asked.at("/event/spells/0")).put("name", name);
            ((ObjectNode) asked.path("cloth")).put("name", name);
            HttpResponse<String> picture = post("/api/advice/course.svg", asked.toString());
            assertThat(picture.statusCode()).as(name).isEqualTo(200);
            assertThat(picture.body()).as(name).doesNotContain("?\u2026", "NaN", "Infinity");
            Document read = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(picture.body())));
            assertThat(read.getElementsByTagName("script").getLength()).isZero();
            assertThat(read.getElementsByTagName("svg").getLength()).isEqualTo(1);
        }
    }

    @ParameterizedTest
    @CsvSource({"7", "7.5", "true"})
    void whatIsNoTextIsToldSo(String value) throws Exception {
        String answer = refused("/api/events", "{\"season\": \"SUMMER\", \"name\": " + value + "}", 400);
        assertThat(answer).contains("\"field\":\"name\"", "is not text; write it in quotes");
    }

    @Test
    void aLongWordIsToldInShortAndNeverHalved() throws Exception {
        String word = "x" + FLAME.repeat(2500);
        String fire = "{\"weightGsm\": 200, \"role\": \"SEATED\", \"blend\": [{\"fibre\": \"%s\", \"percent\": 100}]}";
        toldInShort(refused("/api/fire", fire.formatted(word), 422));
        toldInShort(refused("/api/events", "{\"season\": \"%s\"}".formatted(word), 400));
        toldInShort(refused("/api/events", "{\"season\": \"SUMMER\", \"startsOn\": \"%s\"}".formatted(word), 422));
        toldInShort(refused("/api/events", "{\"%s\": 1}".formatted(word), 400));
        toldInShort(refused(
                "/api/advice",
                "{\"event\": {\"season\": \"SUMMER\"}, \"garment\": {\"design\": \"" + word + "\"}}",
                422));
        toldInShort(
                refused("/api/advice", "{\"eventId\": \"" + word + "\", \"garment\": {\"design\": \"tunic\"}}", 404));
        String query = URLEncoder.encode("x" + FLAME.repeat(300), StandardCharsets.UTF_8);
        toldInShort(get("/api/cloths?page=" + query).body().replace(query, ""));
        toldInShort(get("/api/cloths?fibre=" + query).body().replace(query, ""));
    }

    @Test
    void aFibreOfARuleIsNamedByItsPlace() throws Exception {
        String rule =
                "{\"authority\": \"EVENT\", \"statement\": \"Wool only\", \"allowedFibres\": [\"wool\", \"moonweed\"]}";
        String answer = refused("/api/events", "{\"season\": \"SUMMER\", \"rules\": [" + rule + "]}", 422);
        assertThat(answer).contains("\"field\":\"rules[0].allowedFibres[1]\"", "'moonweed' is not a fibre known here");
    }

    private static void toldInShort(String answer) {
        assertThat(answer).contains("x" + FLAME, "...").doesNotContain(FLAME.repeat(40));
        assertThat(answer).doesNotContainPattern(HALF);
    }

    private String refused(String path, String body, int status) throws Exception {
        HttpResponse<String> answer = post(path, body);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
        return answer.body();
    }

    private HttpResponse<String> post(String path, String body) throws Exception {
        return http.send(
                HttpRequest.newBuilder(uri(path))
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
    }

    private HttpResponse<String> get(String path) throws Exception {
        return http.send(HttpRequest.newBuilder(uri(path)).build(), BodyHandlers.ofString());
    }

    private URI uri(String path) {
        return URI.create("http://127.0.0.1:" + port + path);
    }
}
