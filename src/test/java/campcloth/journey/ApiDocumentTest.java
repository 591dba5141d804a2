package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.journey.DescribedApi.Operation;
import campcloth.supply.SupplierLists;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The OpenAPI document says what the service does: every example in it is sent, every answer held against it. */
@WholeService
class ApiDocumentTest {

    private static final JsonMapper JSON = new JsonMapper();

    @LocalServerPort
    private int port;

    private DescribedApi api;
    private DescribedCalls calls;

    @BeforeEach
    void readTheDocument() throws Exception {
        String address = "http://127.0.0.1:" + port;
        api = new DescribedApi(
                JSON.readTree(DescribedCalls.get(address + "/v3/api-docs").body()));
        calls = new DescribedCalls(address, api);
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
                        "/api/cloths/alike",
                        "/api/cloths/comparison",
                        "/api/cloths/completeness",
                        "/api/cloths/{id}",
                        "/api/cloths/{id}/alike",
                        "/api/designs",
                        "/api/events",
                        "/api/events/{id}",
                        "/api/events/{id}/rules",
                        "/api/events/{id}/rules/versions",
                        "/api/advice",
                        "/api/advice/course",
                        "/api/advice/course.svg",
                        "/api/cutting-plans",
                        "/api/cutting-plans/comparison",
                        "/api/cutting-plans/{id}",
                        "/api/cutting-plans/{id}/layout.svg",
                        "/api/fire",
                        "/api/layouts",
                        "/api/comfort")
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
            HttpResponse<String> answer = calls.send(calls.right(operation));
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
    void aListIsSentWithTheSameWhetherItsEndIsWaitedForOrNot() {
        JsonNode waited = api.document().at("/paths/~1api~1cloths~1import/post/parameters");
        JsonNode handedIn = api.document().at("/paths/~1api~1jobs~1lists/post/parameters");
        assertThat(handedIn.size()).isGreaterThanOrEqualTo(5);
        for (int i = 0; i < 5; i++) {
            assertThat(handedIn.get(i)).isEqualTo(waited.get(i));
        }
        assertThat(waited.at("/1/schema/enum")).extracting(JsonNode::asString).containsExactly("REFUSE_ALL", "SKIP");
        assertThat(waited.at("/1/schema/enum").size()).isEqualTo(SupplierLists.OnBadRow.values().length);
        assertThat(waited.at("/2/schema/type").asString()).isEqualTo("boolean");
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
                if (status.startsWith("4") && !isProvokedElsewhere(operation, status)) {
                    isAsDescribed(operation, status, calls.send(calls.wrong(operation, status)));
                    provoked++;
                }
            }
        }
        assertThat(provoked).isGreaterThan(40);
    }

    /** What needs many calls at once: {@link JobsRoadTest}, {@link SameCallTwiceTest}. */
    private static boolean isProvokedElsewhere(Operation operation, String status) {
        return status.equals("429")
                || (status.equals("409") && operation.method().equals("post"));
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
        List<String> asking = api.operations().stream()
                .filter(o -> o.says().path("responses").has("503"))
                .map(Operation::path)
                .toList();
        assertThat(asking)
                .contains("/api/cloths", "/api/events", "/api/advice", "/api/cutting-plans/{id}/layout.svg")
                .doesNotContain("/api/fibres", "/api/sources", "/api/labels", "/api/designs");
    }

    @Test
    void whereLayoutsAreSearchedTheirLimitIsDescribed() {
        JsonNode busy = api.resolved(
                api.operation("post", "/api/layouts").says().path("responses").path("503"));
        JsonNode content = busy.at("/content/application~1problem+json");
        assertThat(busy.path("headers").has("Retry-After")).isTrue();
        assertThat(content.at("/example/type").asString()).isEqualTo("urn:campcloth:problem:busy");
        assertThat(api.misfits(content.path("schema"), content.path("example"))).isEmpty();
    }

    @Test
    void rangesOfQueryParametersAreThoseThatHold() throws Exception {
        Operation search = api.operation("get", "/api/cloths");
        assertThat(search.parameters("query")
                        .filter(p -> p.at("/schema/maximum").isNumber()))
                .hasSize(6);
        for (JsonNode parameter : search.parameters("query").toList()) {
            assertThat(parameter.path("description").asString()).isNotBlank();
            if (parameter.at("/schema/maximum").isNumber()) {
                int least = parameter.at("/schema/minimum").asInt();
                int most = parameter.at("/schema/maximum").asInt();
                assertThat(Stream.of(least - 1, least, most, most + 1)
                                .map(value -> search.path() + "?"
                                        + parameter.path("name").asString() + "=" + value)
                                .map(path ->
                                        calls.send(calls.right(search).at(path)).statusCode()))
                        .as(parameter.toString())
                        .containsExactly(422, 200, 200, 422);
            }
        }
        JsonNode page = JSON.readTree(calls.send(calls.right(search)).body());
        search.parameters("query")
                .filter(p -> p.at("/schema/default").isNumber())
                .forEach(p -> assertThat(page.path(p.path("name").asString())).isEqualTo(p.at("/schema/default")));
    }
}
