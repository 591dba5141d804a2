package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Suppliers' lists over HTTP: taken over, told while it is done, refused, and written to be read again. */
@WholeService
class ListsRoadTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String LIST = """
            Artikel-Nr.;Bezeichnung;Zusammensetzung;Gewicht (g/m²);Breite cm;Farbe
            A;Leinen;100% linen;185,5;150;natur
            B;Wolle;100% wool;300;140;grau
            """;

    private final HttpClient http = HttpClient.newHttpClient();
    private final String supplier = "Mill " + UUID.randomUUID();

    @LocalServerPort
    private int port;

    @Test
    void aListIsTakenOverOnceAndFoundAgain() throws Exception {
        HttpResponse<String> first = take(LIST, "");
        assertThat(first.statusCode()).as(first.body()).isEqualTo(200);
        JsonNode report = JSON.readTree(first.body());
        assertThat(report.at("/counts/added").asInt()).isEqualTo(2);
        assertThat(report.at("/written").asBoolean()).isTrue();
        assertThat(report.at("/rows/0/row").asInt()).isEqualTo(2);
        assertThat(report.at("/rows/0/outcome").asString()).isEqualTo("ADDED");
        assertThat(report.at("/columns/3/field").asString()).isEqualTo("weightGsm");
        assertThat(report.at("/columns/3/unit").asString()).isEqualTo("g/m2");
        assertThat(report.at("/ignoredColumns/0/header").asString()).isEqualTo("Farbe");
        JsonNode again = JSON.readTree(take(LIST, "").body());
        assertThat(again.at("/counts/unchanged").asInt()).isEqualTo(2);
    }

    @Test
    void aRowThatCannotBeUsedRefusesTheListUnlessItIsSkipped() throws Exception {
        String list = LIST.replace("100% wool", "100% moonlight");
        HttpResponse<String> refused = take(list, "");
        assertThat(refused.statusCode()).isEqualTo(422);
        JsonNode problem = JSON.readTree(refused.body());
        assertThat(problem.at("/errors/0/field").asString()).isEqualTo("line 3, composition");
        assertThat(problem.at("/report/written").asBoolean(true)).isFalse();
        JsonNode looked = JSON.readTree(take(list, "&dryRun=true").body());
        assertThat(looked.at("/rows/1/outcome").asString()).isEqualTo("REFUSED");
        assertThat(looked.at("/rows/1/errors/0/field").asString()).isEqualTo("composition");
        HttpResponse<String> skipped = take(list, "&onBadRow=SKIP");
        assertThat(JSON.readTree(skipped.body()).at("/counts/added").asInt()).isEqualTo(1);
    }

    @Test
    void theWorkIsToldAsLinesWithEveryRowAndTheReportLast() throws Exception {
        StringBuilder list = new StringBuilder("key,name,composition\n");
        for (int i = 0; i < 3000; i++) {
            list.append("K").append(i).append(",Cloth ").append(i).append(",100% wool\n");
        }
        HttpResponse<String> answer = send(request(list.toString().getBytes(StandardCharsets.UTF_8), "text/csv", "")
                .header("Accept", "application/x-ndjson"));
        assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("application/x-ndjson");
        List<JsonNode> lines = answer.body().lines().map(JSON::readTree).toList();
        assertThat(lines.get(0).at("/progress/read").asInt()).isPositive();
        assertThat(lines).filteredOn(line -> line.has("row")).hasSize(3000);
        JsonNode report = lines.get(lines.size() - 1).path("report");
        assertThat(report.at("/counts/added").asInt()).isEqualTo(3000);
        assertThat(report.path("rows").size()).isEqualTo(1000);
        HttpResponse<String> events = send(
                request(LIST.getBytes(StandardCharsets.UTF_8), "text/csv", "").header("Accept", "text/event-stream"));
        assertThat(events.body()).startsWith("event: progress\ndata: {").contains("event: row\n", "event: report\n");
    }

    @Test
    void aListThatBreaksOffBehindItsBeginningEndsWithAProblem() throws Exception {
        String list = "key,name,composition\n" + "K,Cloth,100% wool\n".repeat(1500) + "L,\"Cloth";
        HttpResponse<String> answer = send(request(list.getBytes(StandardCharsets.UTF_8), "text/csv", "")
                .header("Accept", "application/x-ndjson"));
        List<JsonNode> lines = answer.body().lines().map(JSON::readTree).toList();
        assertThat(lines.get(lines.size() - 1).at("/problem/status").asInt()).isEqualTo(422);
    }

    @Test
    void whatIsTooLargeIsRefusedWhateverLengthItClaims() throws Exception {
        byte[] big = new byte[16 * 1024 * 1024 + 1];
        assertThat(send(request(big, "text/csv", "")).statusCode()).isEqualTo(413);
        HttpRequest.Builder chunked = request(new byte[0], "text/csv", "")
                .POST(HttpRequest.BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(big)));
        assertThat(send(chunked).statusCode()).isEqualTo(413);
        byte[] oneCell = ("key,name,composition\nA,\"" + "x".repeat(15 * 1024 * 1024)).getBytes(StandardCharsets.UTF_8);
        assertThat(send(request(oneCell, "text/csv", "")).statusCode()).isEqualTo(422);
    }

    @ParameterizedTest
    @ValueSource(strings = {"application/json", "text/plain", "text/csv;charset=ISO-8859-1", "text/csv;charset=UTF-16"})
    void otherMediaTypesAndCharsetsAreRefused(String type) throws Exception {
        assertThat(send(request(LIST.getBytes(StandardCharsets.UTF_8), type, ""))
                        .statusCode())
                .isEqualTo(415);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"&onBadRow=perhaps", "&dryRun=perhaps", "&currency=shells", "&delimiter=x", "&supplier=" + "x"})
    void parametersOfNoUseAreRefused(String query) throws Exception {
        int status = take(LIST, query).statusCode();
        assertThat(status).isIn(query.startsWith("&supplier") ? List.of(200) : List.of(400, 422));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "key,name,composition\n",
                "A;Leinen;100% linen\n",
                "key,name,composition\nA,\"Cloth,100% wool\n",
                "key,name,composition,weight,gewicht\nA,Cloth,100% wool,1,1\n"
            })
    void whatIsNoListIsAProblemThatNamesWhatIsWrong(String list) throws Exception {
        HttpResponse<String> answer = take(list, "");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(JSON.readTree(answer.body()).at("/errors/0/field").asString())
                .isNotBlank();
    }

    @Test
    void bytesThatAreNoUtf8AreAProblem() throws Exception {
        byte[] latin = LIST.replace("Leinen", "L\u00e4ngs").getBytes(StandardCharsets.ISO_8859_1);
        HttpResponse<String> answer = send(request(latin, "text/csv", ""));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(422);
        assertThat(JSON.readTree(answer.body()).at("/errors/0/message").asString())
                .contains("no UTF-8");
    }

    @Test
    void aKeyThatComesTwiceIsRefusedAtItsSecondLine() throws Exception {
        HttpResponse<String> answer = take(LIST + "A;Leinen 2;100% linen;190;150;natur\n", "");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(422);
        assertThat(JSON.readTree(answer.body()).at("/errors/0/field").asString())
                .as(answer.body())
                .startsWith("line 4");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "@sum", "'=1+1", "\t=1"})
    void whatASpreadsheetWouldRunIsGuardedAndReadBackTheSame(String name) throws Exception {
        take(LIST.replace("Leinen;", name + ";"), "");
        String csv = send(HttpRequest.newBuilder(uri("/api/cloths/export?origin=OWN")))
                .body();
        String line = csv.lines()
                .filter(one -> one.contains(supplier) && one.contains("185.5"))
                .findFirst()
                .orElseThrow();
        assertThat(line).as(csv).contains(",'" + name.strip().replace("'", "") + ",");
        JsonNode again = JSON.readTree(take(csv, "").body());
        assertThat(again.at("/counts/unchanged").asInt())
                .as("%s", again)
                .isEqualTo(again.at("/counts/rows").asInt());
    }

    @Test
    void hostileBytesNeverEndInAFailureOfOurs() throws Exception {
        List<String> hostile = List.of(
                "key,name,composition\nA,Cl\0th,100% wool\n",
                "a,".repeat(10_000) + "\n",
                "key,name,composition\nA,=cmd|' /C calc'!A0,100% wool\n",
                "key,name,composition\nA," + "x".repeat(5000) + ",100% wool\n",
                "key,name,composition\nA,Cloth," + "100% wool ".repeat(300) + "\n",
                "key;name;composition;weight\nA;Cloth;100% wool;9e999 g/m2\n",
                "\ufeff\ufeffkey,name,composition\nA,Cloth,100% wool\n");
        for (String list : hostile) {
            for (String query : List.of("", "&onBadRow=SKIP", "&dryRun=true")) {
                HttpResponse<String> answer = take(list, query);
                assertThat(answer.statusCode()).as(answer.body()).isLessThan(500);
            }
        }
    }

    @Test
    void theExportIsReadAgainAndChangesNothing() throws Exception {
        take(LIST.replace("Leinen;", "=1+1;"), "");
        HttpResponse<String> csv = send(HttpRequest.newBuilder(uri("/api/cloths/export")));
        assertThat(csv.headers().firstValue("Content-Type").orElse("")).startsWith("text/csv");
        assertThat(csv.body()).contains(",'=1+1,").contains("185.5 (185.5..185.5) DECLARED list of " + supplier);
        JsonNode report = JSON.readTree(take(csv.body(), "").body());
        assertThat(report.at("/counts/unchanged").asInt())
                .isEqualTo(report.at("/counts/rows").asInt())
                .isGreaterThan(100);
        assertThat(send(HttpRequest.newBuilder(uri("/api/cloths/export?origin=OWN")))
                        .body())
                .contains(supplier)
                .doesNotContain(",CATALOGUE\r\n");
    }

    @Test
    void allThatIsOnesOwnComesAsOneZip() throws Exception {
        take(LIST, "");
        HttpRequest.Builder event = HttpRequest.newBuilder(uri("/api/events"))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(Bodies.EVENT_WITH_EVERY_CONDITION));
        String id = JSON.readTree(send(event).body()).path("id").asString();
        String clothId = JSON.readTree(send(HttpRequest.newBuilder(uri("/api/cloths"))
                                .header("Content-Type", "application/json")
                                .POST(
                                        HttpRequest.BodyPublishers.ofString(
                                                "{\"name\": \"cut from\", \"blend\": [{\"fibre\": \"wool\", \"percent\": 100}]}")))
                        .body())
                .path("id")
                .asString();
        String swatch = send(HttpRequest.newBuilder(uri("/api/cloths/" + clothId + "/swatches"))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString("{\"note\": \"steel ruler\", \"washed\": {\"warp\":"
                                + " [{\"beforeCm\": 50, \"afterCm\": [47.3]}]}}")))
                .body();
        send(HttpRequest.newBuilder(uri("/plan/sheets"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("asked=season%3DSUMMER%26design%3Dtunic%26size%3DM-M"
                        + "&cloth=linen-plain-185-washed&count=1&fold=ANY&sewnBy=MACHINE&title=For+the+export")));
        HttpResponse<byte[]> zip =
                http.send(HttpRequest.newBuilder(uri("/api/export")).build(), HttpResponse.BodyHandlers.ofByteArray());
        Map<String, String> files = new HashMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip.body()))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        assertThat(files)
                .containsKeys("README.txt", "cloths.csv", "events.json", "plans.json", "swatches.json", "errands.json");
        assertThat(JSON.readTree(files.get("errands.json")).valueStream())
                .filteredOn(one -> one.path("title").asString().equals("For the export"))
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.path("cloth").path("id").asString()).isEqualTo("linen-plain-185-washed");
                    assertThat(one.path("event").path("season").asString()).isEqualTo("SUMMER");
                    assertThat(files.get("plans.json"))
                            .contains(one.path("planId").asString());
                });
        assertThat(files.get("cloths.csv")).contains(supplier);
        assertThat(JSON.readTree(files.get("plans.json")).isArray()).isTrue();
        List<JsonNode> swatches = new ArrayList<>();
        JSON.readTree(files.get("swatches.json")).forEach(swatches::add);
        assertThat(swatches)
                .filteredOn(one -> one.path("clothId").asString().equals(clothId))
                .singleElement()
                .satisfies(one -> assertThat(one.path("swatch"))
                        .as(swatch)
                        .isEqualTo(JSON.readTree(swatch).path("swatch")));
        List<JsonNode> events = new ArrayList<>();
        JSON.readTree(files.get("events.json")).forEach(events::add);
        assertThat(events)
                .filteredOn(one -> one.path("id").asString().equals(id))
                .singleElement()
                .satisfies(one -> assertThat(one.path("rules").size()).isPositive());
    }

    private HttpResponse<String> take(String list, String query) throws Exception {
        return send(request(list.getBytes(StandardCharsets.UTF_8), "text/csv", query));
    }

    private HttpRequest.Builder request(byte[] body, String type, String query) {
        return HttpRequest.newBuilder(uri(
                        "/api/cloths/import?supplier=" + URLEncoder.encode(supplier, StandardCharsets.UTF_8) + query))
                .header("Content-Type", type)
                .POST(HttpRequest.BodyPublishers.ofByteArray(body));
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private URI uri(String path) {
        return URI.create("http://127.0.0.1:" + port + path);
    }
}
