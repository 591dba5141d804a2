package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import campcloth.journey.BentBody.Spot;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Every field of every request, bent in every way: always a 4xx that names a field, never a 5xx, never silence. */
@WholeService
class HostileInputTest {

    private static final JsonMapper JSON = new JsonMapper();

    /** Addresses and bodies that are right; the cloth of an address is one of the test's own. */
    private static final List<Arguments> REQUESTS = List.of(
            arguments("/api/labels", Bodies.LABEL),
            arguments("/api/burn-tests", Bodies.BURN_TEST),
            arguments("/api/cloths", Bodies.CLOTH),
            arguments("/api/cloths/{id}/swatches", Bodies.SWATCH),
            arguments("/api/cloths/alike", Bodies.CLOTH),
            arguments("/api/cloths/comparison", Bodies.SIDE_BY_SIDE),
            arguments("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION),
            arguments("/api/advice", Bodies.ADVICE_WITH_AN_OUTFIT),
            arguments("/api/advice/course", Bodies.COURSE),
            arguments("/api/advice/course.svg", Bodies.COURSE),
            arguments("/api/cutting-plans", Bodies.CUTTING_PLAN_WITH_LENGTHS),
            arguments("/api/cutting-plans/comparison", Bodies.CLOTH_COMPARISON),
            arguments("/api/fire", Bodies.FIRE_IN_AN_OUTFIT),
            arguments("/api/layouts", Bodies.LAYOUT),
            arguments("/api/jobs/layouts", Bodies.LAYOUT),
            arguments("/api/jobs/cutting-plans", Bodies.CUTTING_PLAN_WITH_LENGTHS),
            arguments("/api/comfort", Bodies.COMFORT));

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    private String cloth = "";

    static List<Arguments> requests() {
        return REQUESTS;
    }

    @ParameterizedTest
    @MethodSource("requests")
    void aFieldOfTheWrongTypeIsRefusedByName(String path, String body) throws Exception {
        for (Spot spot : BentBody.spots(JSON.readTree(body))) {
            for (JsonNode wrong : BentBody.wrongTypes(spot.value())) {
                String sent = spot.replacedIn(JSON.readTree(body), wrong);
                refused(path, sent, spot.path() + " = " + wrong);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("requests")
    void anUnknownFieldIsRefusedByName(String path, String body) throws Exception {
        JsonNode tree = JSON.readTree(body);
        for (ObjectNode object : BentBody.objects(tree)) {
            object.put("surpriseCm", 3);
            if (!isMapOfNames(object)) {
                assertThat(refused(path, tree.toString(), "unknown field")).contains("surpriseCm");
            }
            object.remove("surpriseCm");
        }
    }

    @ParameterizedTest
    @MethodSource("requests")
    void numbersThatCannotBeAreRefusedOrHarmless(String path, String body) throws Exception {
        for (Spot spot : BentBody.spots(JSON.readTree(body))) {
            if (!spot.value().isNumber()) {
                continue;
            }
            for (String number :
                    List.of("-1", "-1e9", "1e9", "1e308", "1e99999", "\"NaN\"", "\"Infinity\"", "1e-320")) {
                String sent = spot.replacedIn(
                                JSON.readTree(body), JSON.getNodeFactory().stringNode("@@"))
                        .replace("\"@@\"", number);
                HttpResponse<String> answer = post(path, sent.getBytes(StandardCharsets.UTF_8));
                assertThat(answer.statusCode())
                        .as(path + " " + spot.path() + " = " + number + ": " + shortened(answer))
                        .isLessThan(500);
                if (!number.equals("-1") && !number.equals("1e-320")) {
                    refused(path, sent, spot.path() + " = " + number);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("requests")
    void bodiesThatAreNoJsonAreRefused(String path, String body) throws Exception {
        List<byte[]> hostile = List.of(
                new byte[0],
                "null".getBytes(StandardCharsets.UTF_8),
                "[]".getBytes(StandardCharsets.UTF_8),
                "{".getBytes(StandardCharsets.UTF_8),
                (body + "{}").getBytes(StandardCharsets.UTF_8),
                "{\"a\":NaN}".getBytes(StandardCharsets.UTF_8),
                "[".repeat(5000).getBytes(StandardCharsets.UTF_8),
                BentBody.badUtf8(body));
        for (byte[] bytes : hostile) {
            HttpResponse<String> answer = post(path, bytes);
            isProblemWithAField(answer, path + " with a body that is no JSON");
        }
    }

    @ParameterizedTest
    @MethodSource("requests")
    void bodiesOverOneMebibyteAreRefused(String path, String body) throws Exception {
        byte[] twoMebibytes = (body + " ".repeat(2 * 1024 * 1024)).getBytes(StandardCharsets.UTF_8);
        HttpResponse<String> answer = post(path, twoMebibytes);
        assertThat(answer.statusCode()).isEqualTo(413);
        isProblemWithAField(answer, "2 MiB");
        HttpRequest chunked = HttpRequest.newBuilder(uri(path))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofInputStream(() -> new java.io.ByteArrayInputStream(twoMebibytes)))
                .build();
        assertThat(http.send(chunked, HttpResponse.BodyHandlers.ofString()).statusCode())
                .isEqualTo(413);
    }

    @ParameterizedTest
    @MethodSource("requests")
    void otherMediaTypesAndMethodsAreRefused(String path, String body) throws Exception {
        HttpRequest xml = HttpRequest.newBuilder(uri(path))
                .header("Content-Type", "application/xml")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        assertThat(http.send(xml, HttpResponse.BodyHandlers.ofString()).statusCode())
                .isEqualTo(415);
        HttpRequest patch = HttpRequest.newBuilder(uri(path))
                .method("PATCH", HttpRequest.BodyPublishers.ofString(body))
                .build();
        assertThat(http.send(patch, HttpResponse.BodyHandlers.ofString()).statusCode())
                .isEqualTo(405);
    }

    private String refused(String path, String body, String what) throws Exception {
        HttpResponse<String> answer = post(path, body.getBytes(StandardCharsets.UTF_8));
        isProblemWithAField(answer, path + " with " + what);
        return answer.body();
    }

    private static void isProblemWithAField(HttpResponse<String> answer, String what) {
        assertThat(answer.statusCode()).as("%s: %s", what, shortened(answer)).isBetween(400, 499);
        assertThat(answer.headers().firstValue("Content-Type").orElse(""))
                .as(what)
                .startsWith("application/problem+json");
        JsonNode problem = JSON.readTree(answer.body());
        assertThat(problem.path("status").asInt()).isEqualTo(answer.statusCode());
        assertThat(problem.path("title").asString()).as(what).isNotBlank();
        assertThat(problem.path("detail").asString()).as(what).isNotBlank();
        assertThat(problem.path("errors").path(0).path("field").asString())
                .as("%s: %s", what, shortened(answer))
                .isNotBlank();
        assertThat(answer.body()).doesNotContain("Exception").doesNotContain("tools.jackson");
    }

    /** Measurements are a map by key: what a design does not use is told in a note, not refused. */
    private static boolean isMapOfNames(ObjectNode object) {
        return object.has("chestCm") || object.has("finishedChestCm");
    }

    private static String shortened(HttpResponse<String> answer) {
        return answer.body().substring(0, Math.min(500, answer.body().length()));
    }

    private HttpResponse<String> post(String path, byte[] body) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(uri(path))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofByteArray(body))
                .build();
        return http.send(request, HttpResponse.BodyHandlers.ofString());
    }

    private URI uri(String path) throws IOException, InterruptedException {
        return URI.create(
                "http://127.0.0.1:" + port + (path.contains("{id}") ? path.replace("{id}", ownCloth()) : path));
    }

    /** What is taken of the measurements that are sent changes no cloth that others ask for. */
    private String ownCloth() throws IOException, InterruptedException {
        if (cloth.isEmpty()) {
            HttpResponse<String> made = post("/api/cloths", Bodies.CLOTH.getBytes(StandardCharsets.UTF_8));
            cloth = JSON.readTree(made.body()).path("id").asString();
        }
        return cloth;
    }
}
