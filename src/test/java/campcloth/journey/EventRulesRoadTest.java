package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The rules of an event over HTTP: kept, changed, read as they stood, taken along to another service. */
@WholeService
class EventRulesRoadTest {

    private static final JsonMapper JSON = new JsonMapper();

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @Test
    void anEventThatIsServedCanBeFiledElsewhereAndLosesNothing() throws Exception {
        ObjectNode served = (ObjectNode) ok(send("GET", filed(Bodies.EVENT_WITH_EVERY_CONDITION), "", ""));
        HttpResponse<String> elsewhere = send("POST", "/api/events", served.toString(), "");
        assertThat(elsewhere.statusCode()).as(elsewhere.body()).isEqualTo(201);
        ObjectNode copy = (ObjectNode) JSON.readTree(elsewhere.body());
        assertThat(copy.path("id")).isNotEqualTo(served.path("id"));
        copy.remove("id");
        served.remove("id");
        assertThat(copy).isEqualTo(served);
        JsonNode sent = JSON.readTree(Bodies.EVENT_WITH_EVERY_CONDITION);
        assertThat(served.path("startsOn")).isEqualTo(sent.path("startsOn"));
        sent.path("rules")
                .path(0)
                .properties()
                .forEach(field -> assertThat(served.path("rules").path(0).path(field.getKey()))
                        .as(field.getKey())
                        .isEqualTo(field.getValue()));
    }

    @Test
    void rulesAreChangedAloneAndReadAsTheyStood() throws Exception {
        String event = filed(Bodies.EVENT);
        HttpResponse<String> first = send("GET", event + "/rules", "", "");
        ObjectNode rules = (ObjectNode) ok(first);
        assertThat(rules.path("version").asLong()).isZero();
        assertThat(rules.path("keptAt").asString()).isNotBlank();
        assertThat(rules.path("missing").findValuesAsString("authority")).containsExactly("VENUE", "LOCAL_LAW");
        ((ObjectNode) rules.path("rules").path(0)).put("maxMeltablePercent", 20);
        HttpResponse<String> put = send("PUT", event + "/rules", rules.toString(), etag(first));
        assertThat(ok(put).path("version").asLong()).isEqualTo(1);
        assertThat(send("PUT", event + "/rules", rules.toString(), etag(first)).statusCode())
                .isEqualTo(412);
        assertThat(send("PUT", event + "/rules", rules.toString(), "").statusCode())
                .isEqualTo(428);
        assertThat(share(event + "/rules")).isEqualTo(20);
        assertThat(share(event + "/rules?version=0")).isEqualTo(33);
        assertThat(share(event + "/rules?version=1")).isEqualTo(20);
        assertThat(send("GET", event + "/rules?version=2", "", "").statusCode()).isEqualTo(404);
        assertThat(ok(send("GET", event, "", "")).path("spells")).hasSize(2);
        JsonNode history = ok(send("GET", event + "/rules/versions", "", ""));
        assertThat(history.path("total").asInt()).isEqualTo(2);
        assertThat(history.path("versions").path(0).path("version").asInt()).isEqualTo(1);
        assertThat(history.path("versions").path(0).path("changed").asBoolean()).isTrue();
    }

    @Test
    void adviceSaysWhichVersionItJudgedAndWhereRulesDiffer() throws Exception {
        String event = filed(Bodies.EVENT);
        String rules = "{\"rules\": [{\"authority\": \"EVENT\", \"statement\": \"A third\", \"maxMeltablePercent\": 33,"
                + " \"source\": \"camp rules\", \"edition\": \"3\", \"issuedOn\": \"2027-02-01\"},"
                + " {\"authority\": \"VENUE\", \"statement\": \"None\", \"maxMeltablePercent\": 0}]}";
        JsonNode changed = ok(send("PUT", event + "/rules", rules, "*"));
        assertThat(changed.path("conflicts")).hasSize(1);
        String id = changed.path("eventId").asString();
        JsonNode advice = ok(send(
                "POST",
                "/api/advice",
                "{\"eventId\": \"" + id + "\", \"garment\": {\"design\": \"tunic\"},"
                        + " \"cloths\": {\"ids\": [\"polycotton-65-35-200\"]}}",
                ""));
        assertThat(advice.path("eventVersion").asLong()).isEqualTo(1);
        assertThat(advice.path("ruleConflicts")).isEqualTo(changed.path("conflicts"));
        assertThat(advice.path("ruleConflicts").path(0).path("stands").asString())
                .contains("at most 0 %");
        JsonNode applied = advice.at("/ranking/0/rulesApplied/0");
        assertThat(applied.path("source").asString()).isEqualTo("camp rules");
        assertThat(applied.path("edition").asString()).isEqualTo("3");
        assertThat(applied.path("issuedOn").asString()).isEqualTo("2027-02-01");
        assertThat(advice.at("/ranking/0/verdict").asString()).isEqualTo("RULED_OUT");
        JsonNode inline = ok(send("POST", "/api/advice", Bodies.ADVICE, ""));
        assertThat(inline.path("eventVersion").isNull()).isTrue();
    }

    @Test
    void rulesOfAnotherEventAreRefused() throws Exception {
        String event = filed(Bodies.EVENT);
        ObjectNode rules = (ObjectNode) ok(send("GET", filed(Bodies.EVENT) + "/rules", "", ""));
        HttpResponse<String> answer = send("PUT", event + "/rules", rules.toString(), "*");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("\"eventId\"");
    }

    @Test
    void whatCannotBeUsedIsRefusedByNameAndChangesNothing() throws Exception {
        String event = filed(Bodies.EVENT);
        Map<String, String> wrong = Map.ofEntries(
                Map.entry("issuedOn", "\"next summer\""),
                Map.entry("validFrom", "\"2027-02-30\""),
                Map.entry("validUntil", "\"16.7.2027\""),
                Map.entry("edition", "\"" + "x".repeat(101) + "\""),
                Map.entry("source", "\"" + "x".repeat(501) + "\""),
                Map.entry("askAbout", "\" \""),
                Map.entry("requiredTreatment", "\"" + "x".repeat(501) + "\""),
                Map.entry("requiredCertificate", "\"\""),
                Map.entry("allowedFibres", "[\"wool\", \"moonweed\"]"),
                Map.entry("forbiddenFibres", "[\"moonweed\"]"),
                Map.entry("keepAtLeastM", "-1"),
                Map.entry("roles", "[\"NONE\"]"));
        for (Map.Entry<String, String> field : wrong.entrySet()) {
            refused(event, field.getKey(), field.getValue(), 422);
        }
        refused(event, "allowedFibres", "[\"unknown\"]", 422);
        refused(event, "issuedOn", "20270716", 400);
        refused(event, "roles", "[\"DANCING\"]", 400);
        refused(event, "closeFitOnly", "\"yes\"", 400);
        HttpResponse<String> turned = put(event, "\"validFrom\": \"2027-02-02\", \"validUntil\": \"2027-02-01\"");
        assertThat(turned.statusCode()).isEqualTo(422);
        assertThat(turned.body()).contains("rules[0].validUntil");
        assertThat(ok(send("GET", event + "/rules/versions", "", ""))
                        .path("total")
                        .asInt())
                .isEqualTo(1);
    }

    @Test
    void datesOfAnEventMustBeDaysInTheirOrder() throws Exception {
        for (String days : List.of(
                "\"startsOn\": \"soon\"",
                "\"endsOn\": \"2027-07-18\"",
                "\"startsOn\": \"2027-07-18\", \"endsOn\": \"2027-07-16\"")) {
            HttpResponse<String> answer = send("POST", "/api/events", "{\"season\": \"SUMMER\", " + days + "}", "");
            assertThat(answer.statusCode()).as(answer.body()).isEqualTo(422);
            assertThat(answer.body()).containsPattern("\"field\":\"(startsOn|endsOn)\"");
        }
        HttpResponse<String> oneDay =
                send("POST", "/api/events", "{\"season\": \"SUMMER\", \"startsOn\": \"2027-07-18\"}", "");
        assertThat(JSON.readTree(oneDay.body()).path("endsOn").asString()).isEqualTo("2027-07-18");
    }

    private void refused(String event, String field, String value, int status) throws Exception {
        HttpResponse<String> answer = put(event, "\"" + field + "\": " + value);
        assertThat(answer.statusCode()).as(field + ": " + answer.body()).isEqualTo(status);
        JsonNode error = JSON.readTree(answer.body()).path("errors").path(0);
        assertThat(error.path("field").asString()).startsWith("rules[0]." + field);
        assertThat(error.path("message").asString()).as(field).isNotBlank();
        if (status == 422) {
            assertThat(error.path("message").asString()).as(field).contains("; ");
        }
    }

    private HttpResponse<String> put(String event, String fields) throws Exception {
        String rules = "{\"rules\": [{\"authority\": \"EVENT\", \"statement\": \"A rule\", " + fields + "}]}";
        return send("PUT", event + "/rules", rules, "*");
    }

    private double share(String path) throws Exception {
        return ok(send("GET", path, "", "")).at("/rules/0/maxMeltablePercent").asDouble();
    }

    private String filed(String event) throws Exception {
        HttpResponse<String> filed = send("POST", "/api/events", event, "");
        assertThat(filed.statusCode()).as(filed.body()).isEqualTo(201);
        return filed.headers().firstValue("Location").orElseThrow();
    }

    private static String etag(HttpResponse<String> answer) {
        return answer.headers().firstValue("ETag").orElseThrow();
    }

    private HttpResponse<String> send(String method, String path, String body, String ifMatch) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .header("Content-Type", "application/json")
                .method(method, HttpRequest.BodyPublishers.ofString(body));
        if (!ifMatch.isEmpty()) {
            request.header("If-Match", ifMatch);
        }
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static JsonNode ok(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return JSON.readTree(answer.body());
    }
}
