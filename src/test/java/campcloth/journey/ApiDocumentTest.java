package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.journey.DescribedApi.Operation;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The OpenAPI document says what the service does: every example in it is sent, every answer held against it. */
@WholeService
class ApiDocumentTest {

    private static final JsonMapper JSON = new JsonMapper();

    /** By schema, a word of the example that makes it well-formed and unusable when another stands in its place. */
    private static final Map<String, List<String>> UNUSABLE = Map.of(
            "LabelRequest", List.of("30%", "60%"),
            "Cloth", List.of("\"flax\"", "\"moonlight\""),
            "Event", List.of("\"humidityPercent\":50", "\"humidityPercent\":500"),
            "AdviceRequest", List.of("\"tunic\"", "\"armour\""),
            "CuttingPlanRequest", List.of("\"tunic\"", "\"armour\""));

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    private DescribedApi api;

    /** A call as it would be made after the document; what a test bends, it bends here. */
    private record Call(String method, String path, String body, Map<String, String> headers) {

        Call at(String other) {
            return new Call(method, other, body, headers);
        }

        Call sending(String other) {
            return new Call(method, path, other, headers);
        }

        Call with(String header, String value) {
            Map<String, String> more = new HashMap<>(headers);
            more.put(header, value);
            return new Call(method, path, body, more);
        }

        Call without(String header) {
            Map<String, String> fewer = new HashMap<>(headers);
            fewer.remove(header);
            return new Call(method, path, body, fewer);
        }
    }

    @BeforeEach
    void readTheDocument() throws Exception {
        api = new DescribedApi(JSON.readTree(
                send(new Call("get", "/v3/api-docs", "", Map.of())).body()));
    }

    @Test
    void itSaysWhatItIsAndOnWhichTerms() {
        JsonNode info = api.document().path("info");
        assertThat(info.path("title").asString()).isEqualTo("Campcloth");
        assertThat(info.path("version").asString()).isNotBlank();
        assertThat(info.at("/license/name").asString()).isEqualTo("Apache-2.0");
        assertThat(info.path("description").asString()).contains("any clothing can burn");
        assertThat(api.document().at("/servers/0/url").asString()).isEqualTo("/");
    }

    @Test
    void everyAddressOfTheApiIsDescribedAndNoOther() {
        List<String> paths = List.copyOf(api.document().path("paths").propertyNames());
        assertThat(paths)
                .contains(
                        "/api/fibres",
                        "/api/sources",
                        "/api/labels",
                        "/api/cloths",
                        "/api/cloths/{id}",
                        "/api/designs",
                        "/api/events",
                        "/api/events/{id}",
                        "/api/advice",
                        "/api/cutting-plans",
                        "/api/cutting-plans/{id}",
                        "/api/cutting-plans/{id}/layout.svg")
                .allMatch(path -> path.startsWith("/api/"));
    }

    @Test
    void everyOperationHasANameASummaryAndATag() {
        List<Operation> operations = api.operations();
        assertThat(operations).allSatisfy(operation -> {
            assertThat(operation.says().path("summary").asString())
                    .as(operation + " summary")
                    .isNotBlank();
            assertThat(operation.says().path("tags").size())
                    .as(operation + " tags")
                    .isEqualTo(1);
            assertThat(operation.says().path("operationId").asString())
                    .as(operation + " operationId")
                    .matches("[a-z]+[A-Z][A-Za-z]+");
        });
        assertThat(operations.stream().map(o -> o.says().path("operationId").asString()))
                .doesNotHaveDuplicates();
    }

    @Test
    void everyExampleSentIsAnsweredAsDescribed() throws Exception {
        for (Operation operation : api.operations()) {
            HttpResponse<String> answer = send(call(operation));
            assertThat(answer.statusCode() + "")
                    .as(operation + ": " + answer.body())
                    .isEqualTo(operation.success());
            JsonNode described = operation.says().path("responses").path(operation.success());
            described
                    .path("headers")
                    .propertyNames()
                    .forEach(name -> assertThat(answer.headers().firstValue(name))
                            .as(operation + " " + name)
                            .isPresent());
            for (String name : List.of("ETag", "Location")) {
                assertThat(described.path("headers").has(name))
                        .as(operation + " " + name)
                        .isEqualTo(answer.headers().firstValue(name).isPresent());
            }
            if (operation.success().equals("204")) {
                assertThat(operation.mediaType()).as(operation.toString()).isEmpty();
            } else {
                isAsDescribed(operation, answer);
            }
        }
    }

    private void isAsDescribed(Operation operation, HttpResponse<String> answer) {
        assertThat(answer.headers().firstValue("Content-Type").orElse("").replaceAll(";.*", ""))
                .as(operation.toString())
                .isEqualTo(operation.mediaType().orElse("no content described"));
        JsonNode schema = operation.answer().path("schema");
        assertThat(schema.has("$ref"))
                .as(operation + " answers with a named schema")
                .isTrue();
        assertThat(operation.answer().has("example"))
                .as(operation + " shows an answer")
                .isTrue();
        JsonNode example = operation.answer().path("example");
        JsonNode real =
                example.isString() ? JSON.getNodeFactory().stringNode(answer.body()) : JSON.readTree(answer.body());
        assertThat(example.propertyNames())
                .as(operation + " example of an answer")
                .containsExactlyInAnyOrderElementsOf(real.propertyNames());
        assertThat(api.misfits(schema, real)).as(operation + " answer").isEmpty();
        assertThat(api.misfits(schema, example))
                .as(operation + " example of an answer")
                .isEmpty();
    }

    @Test
    void everyBodyHasAnExampleOfItsSchema() {
        List<Operation> withBody = api.operations().stream()
                .filter(o -> o.says().has("requestBody"))
                .toList();
        assertThat(withBody).isNotEmpty().allSatisfy(operation -> {
            assertThat(operation.bodyExample()).as(operation.toString()).isPresent();
            assertThat(api.misfits(
                            operation.bodySchema().orElseThrow(),
                            operation.bodyExample().orElseThrow()))
                    .as(operation.toString())
                    .isEmpty();
        });
    }

    @Test
    void whatGoesWrongIsAnsweredAsDescribed() throws Exception {
        int provoked = 0;
        for (Operation operation : api.operations()) {
            JsonNode responses = operation.says().path("responses");
            if (operation.says().has("requestBody")) {
                assertThat(responses.propertyNames()).as(operation.toString()).contains("400", "413", "415", "422");
            }
            if (operation.takesIfMatch()) {
                assertThat(responses.propertyNames()).as(operation.toString()).contains("404", "412", "422", "428");
            }
            for (String status : responses.propertyNames()) {
                if (status.startsWith("4")) {
                    isAsDescribed(operation, status, send(gone(operation, status)));
                    provoked++;
                }
            }
        }
        assertThat(provoked).isGreaterThan(40);
    }

    private void isAsDescribed(Operation operation, String status, HttpResponse<String> answer) {
        String what = operation + " " + status + ": " + answer.body();
        JsonNode described =
                api.resolved(operation.says().path("responses").path(status)).at("/content/application~1problem+json");
        assertThat(answer.statusCode() + "").as(what).isEqualTo(status);
        assertThat(answer.headers().firstValue("Content-Type").orElse(""))
                .as(what)
                .startsWith("application/problem+json");
        JsonNode real = JSON.readTree(answer.body());
        assertThat(api.misfits(described.path("schema"), real)).as(what).isEmpty();
        assertThat(api.misfits(described.path("schema"), described.path("example")))
                .as(what)
                .isEmpty();
        assertThat(described.at("/example/status").asString()).as(what).isEqualTo(status);
        assertThat(real.propertyNames())
                .as(what)
                .containsAll(described.path("example").propertyNames());
    }

    @Test
    void whereTheDatabaseIsAskedItsAbsenceIsDescribed() {
        JsonNode away = api.document().at("/components/responses/Problem503/content/application~1problem+json");
        assertThat(api.misfits(away.path("schema"), away.path("example"))).isEmpty();
        assertThat(api.operations().stream()
                        .filter(o -> !o.says().path("responses").has("503"))
                        .map(Operation::path))
                .containsExactlyInAnyOrder("/api/fibres", "/api/sources", "/api/labels", "/api/designs");
    }

    @Test
    void rangesOfQueryParametersAreThoseThatHold() throws Exception {
        Operation search = api.operation("get", "/api/cloths");
        assertThat(search.parameters("query")
                        .filter(p -> p.at("/schema/maximum").isNumber()))
                .hasSize(4);
        for (JsonNode parameter : search.parameters("query").toList()) {
            assertThat(parameter.path("description").asString()).isNotBlank();
            if (parameter.at("/schema/maximum").isNumber()) {
                int least = parameter.at("/schema/minimum").asInt();
                int most = parameter.at("/schema/maximum").asInt();
                assertThat(Stream.of(least - 1, least, most, most + 1)
                                .map(value -> search.path() + "?"
                                        + parameter.path("name").asString() + "=" + value)
                                .map(path -> send(new Call("get", path, "", Map.of()))
                                        .statusCode()))
                        .as(parameter.toString())
                        .containsExactly(422, 200, 200, 422);
            }
        }
        JsonNode page = JSON.readTree(send(call(search)).body());
        search.parameters("query")
                .filter(p -> p.at("/schema/default").isNumber())
                .forEach(p -> assertThat(page.path(p.path("name").asString())).isEqualTo(p.at("/schema/default")));
    }

    /** The call that the document describes: its example as the body, and something kept where an id is asked for. */
    private Call call(Operation operation) {
        String body = operation.bodyExample().map(JsonNode::toString).orElse("");
        Call call = new Call(operation.method(), operation.path(), body, Map.of("Content-Type", "application/json"));
        int id = operation.path().indexOf("/{id}");
        if (id < 0) {
            return call;
        }
        HttpResponse<String> kept =
                send(call(api.operation("post", operation.path().substring(0, id))));
        Call found = call.at(operation
                .path()
                .replace("{id}", JSON.readTree(kept.body()).path("id").asString()));
        Optional<String> tag = kept.headers().firstValue("ETag").filter(etag -> operation.takesIfMatch());
        return tag.map(etag -> found.with("If-Match", etag)).orElse(found);
    }

    /** The same call gone wrong in the way of that status. */
    private Call gone(Operation operation, String status) {
        Call right = call(operation);
        return switch (status) {
            case "400" -> right.body().isEmpty() ? right.at(right.path() + "?size=many") : right.sending("[]");
            case "404" ->
                operation.path().contains("{id}")
                        ? right.at(operation.path().replace("{id}", "nowhere"))
                        : right.sending(namingNothingKept(operation));
            case "412" -> right.with("If-Match", "\"999\"");
            case "413" -> right.sending(right.body() + " ".repeat(1024 * 1024));
            case "415" -> right.with("Content-Type", "text/xml");
            case "422" -> unusable(operation, right);
            case "428" -> right.without("If-Match");
            default -> throw new AssertionError(operation + " describes " + status + ", which nothing provokes");
        };
    }

    private String namingNothingKept(Operation operation) {
        ObjectNode body = (ObjectNode) operation.bodyExample().orElseThrow().deepCopy();
        api.resolved(operation.bodySchema().orElseThrow()).path("properties").propertyNames().stream()
                .filter(name -> name.endsWith("Id"))
                .forEach(name -> {
                    body.remove(name.substring(0, name.length() - "Id".length()));
                    body.put(name, "nowhere");
                });
        return body.toString();
    }

    private static Call unusable(Operation operation, Call right) {
        if (right.body().isEmpty()) {
            return operation.takesIfMatch()
                    ? right.with("If-Match", "yesterday's")
                    : right.at(right.path() + "?size=0");
        }
        String schema =
                operation.bodySchema().orElseThrow().path("$ref").asString().replaceAll(".*/", "");
        assertThat(UNUSABLE).as(operation + " needs an unusable example").containsKey(schema);
        List<String> words = UNUSABLE.get(schema);
        String bent = right.body().replace(words.get(0), words.get(1));
        assertThat(bent).as(operation.toString()).isNotEqualTo(right.body());
        return right.sending(bent);
    }

    private HttpResponse<String> send(Call call) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + call.path()))
                .method(
                        call.method().toUpperCase(java.util.Locale.ROOT),
                        HttpRequest.BodyPublishers.ofString(call.body()));
        call.headers().forEach(request::header);
        try {
            return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException failure) {
            throw new AssertionError(call.toString(), failure);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(call.toString(), stopped);
        }
    }
}
