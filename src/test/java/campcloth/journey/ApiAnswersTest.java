package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.journey.DescribedApi.Operation;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The service does what the OpenAPI document says: every example in it is sent, every answer held against it. */
@WholeService
class ApiAnswersTest {

    private static final JsonMapper JSON = new JsonMapper();

    @LocalServerPort
    private int port;

    private DescribedApi api;
    private DescribedCalls calls;
    private WrongCalls wrong;

    @BeforeEach
    void readTheDocument() {
        String address = "http://127.0.0.1:" + port;
        api = DescribedApi.of(address);
        calls = new DescribedCalls(address, api);
        wrong = new WrongCalls(api, calls);
    }

    @Test
    void everyExampleSentIsAnsweredAsDescribed() {
        for (Operation operation : api.operations()) {
            HttpResponse<String> answer = calls.send(calls.right(operation));
            calls.endLongJobs();
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
    void whatGoesWrongIsAnsweredAsDescribed() {
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
                    isAsDescribed(operation, status, calls.send(wrong.of(operation, status)));
                    calls.endLongJobs();
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
    void rangesOfQueryParametersAreThoseThatHold() {
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
