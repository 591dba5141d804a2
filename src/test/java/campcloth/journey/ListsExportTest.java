package campcloth.journey;

import static campcloth.journey.ListCalls.LIST;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.assertj.core.api.ObjectAssert;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is kept, written out: as a list that is read again and changes nothing, and all that is one's own as one file. */
@ListService
class ListsExportTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String JSON_TYPE = "application/json";

    @LocalServerPort
    private int port;

    private ListCalls lists;

    @BeforeEach
    void aSupplier() {
        lists = new ListCalls(port);
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "@sum", "'=1+1", "\t=1"})
    void whatASpreadsheetWouldRunIsGuardedAndReadBackTheSame(String name) throws Exception {
        lists.take(LIST.replace("Leinen;", name + ";"), "");
        String csv = lists.get("/api/cloths/export?origin=OWN").body();
        String line = csv.lines()
                .filter(one -> one.contains(lists.supplier()) && one.contains("185.5"))
                .findFirst()
                .orElseThrow();
        assertThat(line).as(csv).contains(",'" + name.strip().replace("'", "") + ",");
        JsonNode again = lists.report(csv, "");
        assertThat(again.at("/counts/unchanged").asInt())
                .as("%s", again)
                .isEqualTo(again.at("/counts/rows").asInt());
    }

    @Test
    void theExportIsReadAgainAndChangesNothing() throws Exception {
        lists.take(LIST.replace("Leinen;", "=1+1;"), "");
        HttpResponse<String> csv = lists.get("/api/cloths/export");
        assertThat(csv.headers().firstValue("Content-Type").orElse("")).startsWith("text/csv");
        assertThat(csv.body())
                .contains(",'=1+1,")
                .contains("185.5 (185.5..185.5) DECLARED list of " + lists.supplier());
        JsonNode report = lists.report(csv.body(), "");
        assertThat(report.at("/counts/unchanged").asInt())
                .isEqualTo(report.at("/counts/rows").asInt())
                .isGreaterThan(100);
        assertThat(lists.get("/api/cloths/export?origin=OWN").body())
                .contains(lists.supplier())
                .doesNotContain(",CATALOGUE\r\n");
    }

    @Test
    void allThatIsOnesOwnComesAsOneZip() throws Exception {
        String title = "For the export " + UUID.randomUUID();
        lists.take(LIST, "");
        String event = id(lists.post("/api/events", JSON_TYPE, Bodies.EVENT_WITH_EVERY_CONDITION));
        String cloth = id(lists.post(
                "/api/cloths",
                JSON_TYPE,
                "{\"name\": \"cut from\", \"blend\": [{\"fibre\": \"wool\", \"percent\": 100}]}"));
        JsonNode swatch = ListCalls.json(lists.post(
                "/api/cloths/" + cloth + "/swatches",
                JSON_TYPE,
                "{\"note\": \"steel ruler\", \"washed\": {\"warp\": [{\"beforeCm\": 50, \"afterCm\": [47.3]}]}}"));
        HttpResponse<String> sheet = lists.post(
                "/plan/sheets",
                "application/x-www-form-urlencoded",
                "asked=season%3DSUMMER%26design%3Dtunic%26size%3DM-M"
                        + "&cloth=linen-plain-185-washed&count=1&fold=ANY&sewnBy=MACHINE&title="
                        + title.replace(' ', '+'));
        assertThat(sheet.statusCode()).as(sheet.body()).isEqualTo(302);

        Map<String, String> files = files(lists.bytes("/api/export").body());
        assertThat(files)
                .containsKeys("README.txt", "cloths.csv", "events.json", "plans.json", "swatches.json", "errands.json");
        theOne(files, "errands.json", "title", title).satisfies(one -> {
            assertThat(one.path("cloth").path("id").asString()).isEqualTo("linen-plain-185-washed");
            assertThat(one.path("event").path("season").asString()).isEqualTo("SUMMER");
            assertThat(files.get("plans.json")).contains(one.path("planId").asString());
        });
        assertThat(files.get("cloths.csv")).contains(lists.supplier());
        assertThat(JSON.readTree(files.get("plans.json")).isArray()).isTrue();
        theOne(files, "swatches.json", "clothId", cloth)
                .satisfies(one -> assertThat(one.path("swatch")).isEqualTo(swatch.path("swatch")));
        theOne(files, "events.json", "id", event)
                .satisfies(one -> assertThat(one.path("rules").size()).isPositive());
    }

    private static String id(HttpResponse<String> made) {
        assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
        return ListCalls.json(made).path("id").asString();
    }

    /** What a file of the export says of one thing; there is one with that value. */
    private static ObjectAssert<JsonNode> theOne(Map<String, String> files, String name, String field, String value) {
        return assertThat(JSON.readTree(files.get(name)).valueStream())
                .filteredOn(one -> one.path(field).asString().equals(value))
                .singleElement();
    }

    private static Map<String, String> files(byte[] zip) throws IOException {
        Map<String, String> files = new HashMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return files;
    }
}
