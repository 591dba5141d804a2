package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A swatch cut, marked and washed: the cloth's figures become measured ones, and what is cut from it follows. */
@WholeService
class SwatchRoadTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String WASHED = """
            {"measuredOn": "2026-11-24", "note": "kitchen table",
             "washed": {"warp": [{"beforeCm": 50.0, "afterCm": [47.3]}], "weft": [{"beforeCm": 50.0, "afterCm": [48.9]}]}}
            """;

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    private String cloth = "";

    @BeforeEach
    void aClothThatSaysItDoesNotShrink() throws Exception {
        HttpResponse<String> added = send("POST", "/api/cloths", """
                {"name": "Linen from the chest", "blend": [{"fibre": "flax", "percent": 100}], "weightGsm": 190,
                 "widthCm": 140, "shrinkWarpPercent": 1, "shrinkWeftPercent": 1}
                """, "");
        cloth = "/api/cloths/" + JSON.readTree(added.body()).path("id").asString();
    }

    @Test
    void marksFiftyCmApartGiveTheShrinkageAndThePlanFollowsUntilTheSwatchIsRemoved() throws Exception {
        JsonNode before = plan(true);
        JsonNode cutBefore = plan(false);
        HttpResponse<String> told = send("POST", cloth + "/swatches", WASHED, "");
        assertThat(told.statusCode()).as(told.body()).isEqualTo(201);
        String address = told.headers().firstValue("Location").orElseThrow();
        JsonNode figures = JSON.readTree(told.body()).path("figures");
        assertThat(figures.at("/shrinkWarpPercent/value").asDouble()).isEqualTo(5.4);
        assertThat(figures.at("/shrinkWeftPercent/value").asDouble()).isEqualTo(2.2);
        assertThat(get(address)).isEqualTo(JSON.readTree(told.body()));

        JsonNode measured = get(cloth);
        assertThat(measured.path("shrinkWarpPercent").asDouble()).isEqualTo(5.4);
        assertThat(measured.at("/figures/shrinkWarpPercent/basis").asString()).isEqualTo("MEASURED");
        assertThat(measured.at("/figures/shrinkWarpPercent/source").asString())
                .isEqualTo("swatch of 2026-11-24, 1 pair of marks: kitchen table");

        // (140 - 2) x (1 - 2.2 %) = 134.96 usable; the same washed length takes (1 - 1 %) / (1 - 5.4 %) as much from
        // the bolt: 4.65 % more
        JsonNode after = plan(true);
        assertThat(after.path("usableWidthCm").asDouble()).isEqualTo(134.96);
        assertThat(after.path("buyLengthCm").asDouble())
                .isGreaterThan(before.path("buyLengthCm").asDouble());
        // washed only when sewn, the pieces are cut larger
        assertThat(plan(false).path("netLengthCm").asDouble())
                .isGreaterThan(cutBefore.path("netLengthCm").asDouble());

        assertThat(send("DELETE", address, "", "").statusCode()).isEqualTo(204);
        assertThat(send("DELETE", address, "", "").statusCode()).isEqualTo(404);
        assertThat(get(cloth).path("shrinkWarpPercent").asDouble()).isEqualTo(1);
        assertThat(withoutIds(plan(true))).isEqualTo(withoutIds(before));
    }

    @Test
    void aDeclaredFigureDoesNotPushTheMeasuredOneOut() throws Exception {
        send("POST", cloth + "/swatches", WASHED, "");
        HttpResponse<String> served = send("GET", cloth, "", "");
        ObjectNode changed = (ObjectNode) JSON.readTree(served.body());
        changed.put("shrinkWarpPercent", 3);
        String tag = served.headers().firstValue("ETag").orElseThrow();
        HttpResponse<String> put = send("PUT", cloth, changed.toString(), tag);
        assertThat(put.statusCode()).as(put.body()).isEqualTo(200);
        assertThat(get(cloth).path("shrinkWarpPercent").asDouble()).isEqualTo(5.4);
        JsonNode history = get(cloth + "/swatches");
        assertThat(history.at("/withoutSwatches/shrinkWarpPercent/value").asDouble())
                .isEqualTo(3);
        String id = history.at("/swatches/0/id").asString();
        send("DELETE", cloth + "/swatches/" + id, "", "");
        assertThat(get(cloth).path("shrinkWarpPercent").asDouble()).isEqualTo(3);
    }

    @Test
    void swatchesToldAtOnceAreAllKeptAndTheLastOneStands() throws Exception {
        List<CompletableFuture<HttpResponse<String>>> told = new ArrayList<>();
        for (double after : new double[] {49.0, 48.5, 48.0, 47.5}) {
            told.add(http.sendAsync(
                    request("POST", cloth + "/swatches", WASHED.replace("47.3", Double.toString(after)), ""),
                    HttpResponse.BodyHandlers.ofString()));
        }
        for (var answer : told) {
            assertThat(answer.get().statusCode()).isEqualTo(201);
        }
        JsonNode swatches = get(cloth + "/swatches").path("swatches");
        assertThat(swatches).hasSize(4);
        assertThat(get(cloth).path("shrinkWarpPercent").asDouble())
                .isEqualTo(swatches.at("/0/figures/shrinkWarpPercent/value").asDouble());
        assertThat(swatches.at("/0/standing")).hasSize(2);
        assertThat(swatches.at("/1/standing")).isEmpty();
    }

    @Test
    void aClothOfTheCatalogueCountsAsEditedOnceItIsMeasured() throws Exception {
        String blanket = "/api/cloths/acrylic-blanket-300";
        assertThat(get(blanket).path("origin").asString()).isEqualTo("CATALOGUE");
        JsonNode told =
                JSON.readTree(send("POST", blanket + "/swatches", """
                {"drip": {"seconds": [60.0, 60.0]}}
                """, "").body());
        assertThat(told.path("absorbency").asString()).isEqualTo("REPELS");
        assertThat(told.path("figures")).isEmpty();
        assertThat(get(blanket).path("origin").asString()).isEqualTo("EDITED");
    }

    @Test
    void whatCannotBeIsRefusedByName() throws Exception {
        refused(WASHED.replace("47.3", "53"), "washed.warp[0].afterCm[0]");
        refused(WASHED.replace("2026-11-24", "2099-01-01"), "measuredOn");
        refused("{}", "weighed");
        refused(WASHED.replace("[47.3]", "[]"), "washed.warp[0].afterCm");
        String many = "{\"beforeCm\": 50.0, \"afterCm\": [48.0]},".repeat(10_000);
        refused(
                WASHED.replace(
                        "[{\"beforeCm\": 50.0, \"afterCm\": [47.3]}", "[" + many.substring(0, many.length() - 1)),
                "washed.warp");
        refused("{\"weighed\": {\"pieces\": [{\"areaCm2\": 100, \"massG\": 0}], \"scaleStepG\": 0.1}}", "massG");
        refused(
                "{\"wind\": {\"referenceClothId\": \"nowhere\", \"referenceSeconds\": [20], \"seconds\": [10],"
                        + " \"massG\": 500, \"areaCm2\": 400}}",
                "wind.referenceClothId");
        assertThat(get(cloth + "/swatches").path("swatches")).isEmpty();
        assertThat(send("POST", "/api/cloths/nowhere/swatches", WASHED, "").statusCode())
                .isEqualTo(404);
    }

    @Test
    void theCardIsA4InTrueSizeAndTheStepsHaveCautions() throws Exception {
        String card = send("GET", "/api/swatches/card.svg", "", "").body();
        assertThat(card).contains("width=\"210mm\" height=\"297mm\"", "M0 ", "L100 ");
        JsonNode steps = get("/api/swatches/instructions").path("measurements");
        assertThat(steps).hasSize(5);
        for (JsonNode measurement : steps) {
            assertThat(measurement.path("cautions")).isNotEmpty();
            assertThat(measurement.path("steps")).isNotEmpty();
        }
    }

    private void refused(String body, String field) throws Exception {
        HttpResponse<String> answer = send("POST", cloth + "/swatches", body, "");
        assertThat(answer.statusCode()).as(answer.body()).isIn(400, 422);
        assertThat(JSON.readTree(answer.body()).at("/errors/0/field").asString())
                .contains(field);
    }

    private JsonNode plan(boolean prewash) throws Exception {
        String id = cloth.substring(cloth.lastIndexOf('/') + 1);
        HttpResponse<String> plan = send(
                "POST",
                "/api/cutting-plans",
                "{\"clothId\": \"" + id + "\", \"prewash\": " + prewash
                        + ", \"garments\": [{\"design\": \"tunic\", \"wearer\": {\"chestCm\": 98}}]}",
                "");
        assertThat(plan.statusCode()).as(plan.body()).isEqualTo(201);
        return JSON.readTree(plan.body());
    }

    private static JsonNode withoutIds(JsonNode plan) {
        ObjectNode bare = (ObjectNode) plan.deepCopy();
        bare.remove(List.of("id", "layoutSvg"));
        return bare;
    }

    private JsonNode get(String path) throws Exception {
        HttpResponse<String> answer = send("GET", path, "", "");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return JSON.readTree(answer.body());
    }

    private HttpResponse<String> send(String method, String path, String body, String ifMatch) throws Exception {
        return http.send(request(method, path, body, ifMatch), HttpResponse.BodyHandlers.ofString());
    }

    private HttpRequest request(String method, String path, String body, String ifMatch) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .header("Content-Type", "application/json")
                .method(method, HttpRequest.BodyPublishers.ofString(body));
        if (!ifMatch.isEmpty()) {
            request.header("If-Match", ifMatch);
        }
        return request.build();
    }
}
