package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.journey.DescribedApi.Operation;
import campcloth.supply.SupplierLists;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** The OpenAPI document says what the service does: all of it, each with its name, its examples and what can go wrong. */
@WholeService
class ApiDocumentTest {

    @LocalServerPort
    private int port;

    private DescribedApi api;

    @BeforeEach
    void readTheDocument() {
        api = DescribedApi.of("http://127.0.0.1:" + port);
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
}
