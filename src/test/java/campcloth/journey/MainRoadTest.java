package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.xml.sax.InputSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The main job from end to end over HTTP: an event in, cloths ranked, one chosen, its length to buy out. */
@WholeService
class MainRoadTest {

    private static final JsonMapper JSON = new JsonMapper();

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @Test
    void fromTheEventToTheLengthToBuy() throws Exception {
        HttpResponse<String> filed = send("POST", "/api/events", Bodies.EVENT, "");
        assertThat(filed.statusCode()).isEqualTo(201);
        String eventId = JSON.readTree(filed.body()).path("id").asString();

        JsonNode advice = ok(send(
                "POST",
                "/api/advice",
                "{\"eventId\": \"" + eventId + "\", \"garment\": {\"design\": \"tunic\"}, \"cloths\": {\"ids\": "
                        + CatalogueCloths.ids(port) + "}, \"limit\": 5}",
                ""));
        assertThat(advice.path("ranking")).hasSize(5);
        JsonNode best = advice.path("ranking").path(0);
        assertThat(best.path("verdict").asString()).isEqualTo("SUITABLE");
        assertThat(best.path("criteria")).hasSize(6);
        assertThat(best.path("criteria").path(0).path("because").asString()).isNotBlank();
        assertThat(advice.path("cautions")).isNotEmpty();

        String plan = "{\"clothId\": \"" + best.path("cloth").path("id").asString()
                + "\", \"garments\": [{\"design\": \"tunic\", \"wearer\": {\"chestCm\": 98}}]}";
        HttpResponse<String> planned = send("POST", "/api/cutting-plans", plan, "");
        assertThat(planned.statusCode()).as(planned.body()).isEqualTo(201);
        JsonNode answer = JSON.readTree(planned.body());
        assertThat(answer.path("buyLengthCm").asDouble() % 10).isZero();
        assertThat(answer.path("buyLengthCm").asDouble())
                .isGreaterThanOrEqualTo(answer.path("netLengthCm").asDouble());
        assertThat(answer.path("netLengthCm").asDouble())
                .isGreaterThanOrEqualTo(answer.path("lowerBoundCm").asDouble());
        assertThat(answer.path("hems")).isNotEmpty();

        String where = planned.headers().firstValue("Location").orElseThrow();
        assertThat(ok(send("GET", where, "", ""))).isEqualTo(answer);
        HttpResponse<String> drawing = send("GET", answer.path("layoutSvg").asString(), "", "");
        assertThat(drawing.headers().firstValue("Content-Type").orElseThrow()).startsWith("image/svg+xml");
        assertThat(root(drawing.body())).isEqualTo("svg");
        String address = answer.path("layoutSvg").asString();
        HttpResponse<String> page = send("GET", address + "?paper=A4", "", "");
        assertThat(root(page.body())).isEqualTo("svg");
        assertThat(page.headers().firstValue("Link").orElseThrow()).contains("rel=\"last\"");
        assertThat(send("GET", address + "?paper=A4&page=99", "", "").statusCode())
                .isEqualTo(422);
        assertThat(send("GET", address + "?page=1", "", "").statusCode()).isEqualTo(422);
        assertThat(send("GET", address + "?paper=A7", "", "").statusCode()).isEqualTo(400);
    }

    @Test
    void theExamplePlanIsAnsweredAsReckonedByHand() throws Exception {
        JsonNode plan = JSON.readTree(
                send("POST", "/api/cutting-plans", Bodies.CUTTING_PLAN, "").body());
        // (140 - 2 x 1) x (1 - 4 %) = 132.48 usable; 126 / 2 + 2 x 2 = 67 a half, so the halves lie above each other:
        // 2 x (95 + 2 + 5) = 204 of washed cloth; 204 / (1 - 6 %) = 217.02, so 220 in the shop at 14.50 a metre
        assertThat(plan.path("usableWidthCm").asDouble()).isEqualTo(132.48);
        assertThat(plan.path("netLengthCm").asDouble()).isEqualTo(204);
        assertThat(plan.path("buyLengthCm").asDouble()).isEqualTo(220);
        assertThat(plan.path("cost").asDouble()).isEqualTo(31.9);
        assertThat(plan.path("seamAllowanceCm").asDouble()).isEqualTo(2);
    }

    @Test
    void aSeasonAloneIsEnoughToStart() throws Exception {
        for (String season : new String[] {"SPRING", "SUMMER", "AUTUMN", "WINTER"}) {
            JsonNode advice = ok(send(
                    "POST",
                    "/api/advice",
                    "{\"event\": {\"season\": \"" + season + "\"}, \"garment\": {\"design\": \"tunic\"}}",
                    ""));
            assertThat(advice.path("ranking")).hasSize(20);
            assertThat(advice.path("presumed").toString()).contains("not a forecast");
        }
    }

    @Test
    void aChangeNeedsTheVersionItIsMadeOnAndOtherwiseLosesNothing() throws Exception {
        HttpResponse<String> added = send("POST", "/api/cloths", Bodies.CLOTH, "");
        String where = added.headers().firstValue("Location").orElseThrow();
        String etag = added.headers().firstValue("ETag").orElseThrow();
        ObjectNode body = (ObjectNode) JSON.readTree(send("GET", where, "", "").body());
        body.put("weightGsm", 250);
        assertThat(send("PUT", where, body.toString(), "").statusCode()).isEqualTo(428);
        HttpResponse<String> changed = send("PUT", where, body.toString(), etag);
        assertThat(changed.statusCode()).as(changed.body()).isEqualTo(200);
        body.put("weightGsm", 300);
        assertThat(send("PUT", where, body.toString(), etag).statusCode()).isEqualTo(412);
        assertThat(ok(send("GET", where, "", "")).path("weightGsm").asDouble()).isEqualTo(250);
        assertThat(send(
                                "DELETE",
                                where,
                                "",
                                changed.headers().firstValue("ETag").orElseThrow())
                        .statusCode())
                .isEqualTo(204);
        assertThat(send("GET", where, "", "").statusCode()).isEqualTo(404);
    }

    @Test
    void whatIsServedCanBeSentBackWithoutTurningIntoSomethingElse() throws Exception {
        HttpResponse<String> served = send("GET", "/api/cloths/linen-plain-150", "", "");
        JsonNode before = JSON.readTree(served.body());
        HttpResponse<String> put = send(
                "PUT",
                "/api/cloths/linen-plain-150",
                served.body(),
                served.headers().firstValue("ETag").orElseThrow());
        assertThat(put.statusCode()).as(put.body()).isEqualTo(200);
        JsonNode after = JSON.readTree(put.body());
        assertThat(after).isEqualTo(before);
        assertThat(put.headers().firstValue("ETag")).isEqualTo(served.headers().firstValue("ETag"));
    }

    @Test
    void eitherFormOfAFigureMayBeChangedInWhatWasServed() throws Exception {
        String where = send("POST", "/api/cloths", Bodies.CLOTH, "")
                .headers()
                .firstValue("Location")
                .orElseThrow();
        ObjectNode body = (ObjectNode) JSON.readTree(send("GET", where, "", "").body());
        ((ObjectNode) body.path("figures").path("weightGsm"))
                .put("value", 205)
                .put("low", 200)
                .put("basis", "MEASURED");
        JsonNode measured = ok(send("PUT", where, body.toString(), "*"));
        assertThat(measured.path("weightGsm").asDouble()).isEqualTo(205);
        assertThat(measured.path("figures").path("weightGsm").path("basis").asString())
                .isEqualTo("MEASURED");
        body = (ObjectNode) measured;
        body.put("weightGsm", 230);
        JsonNode declared = ok(send("PUT", where, body.toString(), "*"));
        assertThat(declared.path("figures").path("weightGsm").path("value").asDouble())
                .isEqualTo(230);
        assertThat(declared.path("figures").path("weightGsm").path("basis").asString())
                .isEqualTo("DECLARED");
        body = (ObjectNode) declared;
        body.put("weightGsm", 240);
        ((ObjectNode) body.path("figures").path("weightGsm")).put("value", 250).put("high", 250);
        assertThat(send("PUT", where, body.toString(), "*").statusCode()).isEqualTo(422);
    }

    @Test
    void clothTooNarrowForAPieceIsRefusedWithWhatWouldHelp() throws Exception {
        String narrow = Bodies.CUTTING_PLAN.replace("\"widthCm\": 140", "\"widthCm\": 60");
        HttpResponse<String> answer = send("POST", "/api/cutting-plans", narrow, "");
        assertThat(answer.statusCode()).isEqualTo(422);
        JsonNode error = JSON.readTree(answer.body()).path("errors").path(0);
        assertThat(error.path("field").asString()).isEqualTo("cloth.widthCm");
        assertThat(error.path("message").asString()).contains("centreSeams");
    }

    @Test
    void clothsHandedInUnsavedAreRankedBesideTheCatalogue() throws Exception {
        String request = "{\"event\": " + Bodies.EVENT + ", \"garment\": {\"design\": \"tunic\"}, \"cloths\": {\"ids\":"
                + " [\"linen-plain-150\"], \"inline\": [" + Bodies.CLOTH + "]}}";
        JsonNode advice = ok(send("POST", "/api/advice", request, ""));
        assertThat(advice.path("considered").path("cloths").asInt()).isEqualTo(2);
        assertThat(advice.path("ranking").findValuesAsString("id")).contains("inline-1");
    }

    private HttpResponse<String> send(String method, String path, String body, String ifMatch) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .header("Content-Type", "application/json")
                .method(
                        method,
                        body.isEmpty()
                                ? HttpRequest.BodyPublishers.noBody()
                                : HttpRequest.BodyPublishers.ofString(body));
        if (!ifMatch.isEmpty()) {
            request.header("If-Match", ifMatch);
        }
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static JsonNode ok(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return JSON.readTree(answer.body());
    }

    private static String root(String xml) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(xml)))
                .getDocumentElement()
                .getTagName();
    }
}
