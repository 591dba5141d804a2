package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Every field of every request, bent in every way: always a 4xx that names a field, never a 5xx, never silence. */
@WholeService
class HostileInputTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private static final Map<String, String> REQUESTS = Map.ofEntries(
            Map.entry("/api/labels", Bodies.LABEL),
            Map.entry("/api/burn-tests", Bodies.BURN_TEST),
            Map.entry("/api/cloths", Bodies.CLOTH),
            Map.entry("/api/cloths/acrylic-tweed-look-300/swatches", Bodies.SWATCH),
            Map.entry("/api/cloths/alike", Bodies.CLOTH),
            Map.entry("/api/cloths/comparison", Bodies.SIDE_BY_SIDE),
            Map.entry("/api/events", Bodies.EVENT_WITH_EVERY_CONDITION),
            Map.entry("/api/advice", Bodies.ADVICE_WITH_AN_OUTFIT),
            Map.entry("/api/advice/course", Bodies.COURSE),
            Map.entry("/api/advice/course.svg", Bodies.COURSE),
            Map.entry("/api/cutting-plans", Bodies.CUTTING_PLAN_WITH_LENGTHS),
            Map.entry("/api/cutting-plans/comparison", Bodies.CLOTH_COMPARISON),
            Map.entry("/api/fire", Bodies.FIRE_IN_AN_OUTFIT),
            Map.entry("/api/layouts", Bodies.LAYOUT),
            Map.entry("/api/jobs/layouts", Bodies.LAYOUT),
            Map.entry("/api/jobs/cutting-plans", Bodies.CUTTING_PLAN_WITH_LENGTHS),
            Map.entry("/api/comfort", Bodies.COMFORT));

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    static Stream<Arguments> requests() {
        return REQUESTS.entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
    }

    @ParameterizedTest
    @MethodSource("requests")
    void aFieldOfTheWrongTypeIsRefusedByName(String path, String body) throws Exception {
        for (Spot spot : spots(JSON.readTree(body))) {
            for (JsonNode wrong : wrongTypes(spot.value())) {
                String sent = spot.replacedIn(JSON.readTree(body), wrong);
                refused(path, sent, spot.path() + " = " + wrong);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("requests")
    void anUnknownFieldIsRefusedByName(String path, String body) throws Exception {
        JsonNode tree = JSON.readTree(body);
        List<ObjectNode> objects = new ArrayList<>();
        collect(tree, objects);
        for (ObjectNode object : objects) {
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
        for (Spot spot : spots(JSON.readTree(body))) {
            if (!spot.value().isNumber()) {
                continue;
            }
            for (String number :
                    List.of("-1", "-1e9", "1e9", "1e308", "1e99999", "\"NaN\"", "\"Infinity\"", "1e-320")) {
                String sent = spot.replacedIn(JSON.readTree(body), NODES.stringNode("@@"))
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
                badUtf8(body));
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

    private URI uri(String path) {
        return URI.create("http://127.0.0.1:" + port + path);
    }

    /** A place in a request that holds a plain value, by its JSON pointer. */
    private record Spot(String path, JsonNode value) {

        String replacedIn(JsonNode tree, JsonNode other) {
            int slash = path.lastIndexOf('/');
            JsonNode parent = tree.at(path.substring(0, slash));
            String last = path.substring(slash + 1);
            if (parent instanceof ArrayNode array) {
                array.set(Integer.parseInt(last), other);
            } else {
                ((ObjectNode) parent).set(last, other);
            }
            return tree.toString();
        }
    }

    private static List<Spot> spots(JsonNode tree) {
        List<Spot> spots = new ArrayList<>();
        walk("", tree, spots);
        return spots;
    }

    private static void walk(String path, JsonNode node, List<Spot> spots) {
        if (!path.isEmpty() && !node.isNull()) {
            spots.add(new Spot(path, node));
        }
        if (node instanceof ObjectNode object) {
            object.properties().forEach(field -> walk(path + "/" + field.getKey(), field.getValue(), spots));
        } else if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                walk(path + "/" + i, array.get(i), spots);
            }
        }
    }

    private static List<JsonNode> wrongTypes(JsonNode value) {
        JsonNode text = NODES.stringNode("x");
        JsonNode number = NODES.numberNode(7);
        JsonNode yes = NODES.booleanNode(true);
        JsonNode list = NODES.arrayNode().add(1);
        JsonNode object = NODES.objectNode().put("a", 1);
        if (value.isNumber()) {
            return List.of(text, yes, list, object, NODES.stringNode("12"));
        }
        if (value.isString()) {
            return List.of(number, yes, list, object);
        }
        if (value.isBoolean()) {
            return List.of(text, list, object);
        }
        return value.isArray() ? List.of(text, number, yes, object) : List.of(text, number, yes, list);
    }

    private static void collect(JsonNode node, List<ObjectNode> objects) {
        if (node instanceof ObjectNode object) {
            objects.add(object);
        }
        node.forEach(child -> collect(child, objects));
    }

    /** Measurements are a map by key: what a design does not use is told in a note, not refused. */
    private static boolean isMapOfNames(ObjectNode object) {
        return object.has("chestCm") || object.has("finishedChestCm");
    }

    private static byte[] badUtf8(String body) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        byte[] good = body.getBytes(StandardCharsets.UTF_8);
        int quote = body.indexOf('"') + 1;
        bytes.write(good, 0, quote);
        bytes.write(0xC3);
        bytes.write(0x28);
        bytes.write(good, quote, good.length - quote);
        return bytes.toByteArray();
    }
}
