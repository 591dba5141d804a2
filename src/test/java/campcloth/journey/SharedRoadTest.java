package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** An event that is shared by a link: read by whoever has it, on all the ways that lead from it, and by nobody else. */
@SeveralAskers
class SharedRoadTest {

    private static final JsonMapper JSON = new JsonMapper();

    @LocalServerPort
    private int port;

    private HeaderCalls calls;

    @BeforeEach
    void begin() {
        calls = new HeaderCalls(port);
    }

    @Test
    void anEventIsReadByItsLinkAndOnAllWaysFromIt() throws Exception {
        String api = "/api/events/"
                + HeaderCalls.id(calls.post(HeaderCalls.OWNER, "/api/events", Bodies.EVENT_WITH_EVERY_CONDITION));
        String page = api.replace("/api", "");
        assertThat(calls.get(HeaderCalls.NOBODY, api).statusCode()).isEqualTo(404);
        assertThat(calls.get(HeaderCalls.OTHER, page).statusCode()).isEqualTo(404);
        JsonNode link =
                JSON.readTree(calls.post(HeaderCalls.OWNER, api + "/share", "").body());
        String key = link.path("link").asString().replaceAll(".*\\?key=", "");
        assertThat(link.path("link").asString()).isEqualTo(page + "?key=" + key);
        assertThat(link.path("apiLink").asString()).isEqualTo(api + "?key=" + key);
        assertThat(JSON.readTree(
                        calls.post(HeaderCalls.OWNER, api + "/share", "").body()))
                .isEqualTo(link);
        assertThat(calls.get(HeaderCalls.NOBODY, api + "?key=" + key).statusCode())
                .isEqualTo(200);

        String read = calls.get(HeaderCalls.OTHER, page + "?key=" + key).body();
        assertThat(read)
                .contains("/plan?event=", "/fire-rules?key=", "/copy?key=")
                .doesNotContain("/edit", "/remove", "/share\"");
        calls.everyLinkTo(page, read, HeaderCalls.NOBODY, 3);
        calls.everyLinkTo(
                page,
                calls.get(HeaderCalls.NOBODY, page + "/fire-rules?key=" + key).body(),
                HeaderCalls.NOBODY,
                2);
        assertThat(calls.get(HeaderCalls.OWNER, page).body())
                .contains("/edit", "/remove", page + "/unshare\"", page + "?key=" + key);
        assertThat(calls.get(HeaderCalls.MARSHAL, page).statusCode()).isEqualTo(404);
        assertThat(calls.get(HeaderCalls.MARSHAL, page + "?key=" + key).body())
                .contains("/edit?key=")
                .doesNotContain("/remove");
        assertThat(calls.get(HeaderCalls.MARSHAL, page + "/edit?key=" + key).body())
                .contains("action=\"" + page + "/edit?key=" + key);
        assertThat(calls.get(HeaderCalls.OTHER, page + "/edit?key=" + key).statusCode())
                .isEqualTo(403);

        HttpResponse<String> copied = calls.post(HeaderCalls.OTHER, page + "/copy?key=" + key, "");
        assertThat(copied.statusCode()).isEqualTo(302);
        assertThat(calls.get(
                                HeaderCalls.OTHER,
                                copied.headers().firstValue("Location").orElseThrow())
                        .statusCode())
                .isEqualTo(200);

        assertThat(calls.send("DELETE", HeaderCalls.OTHER, api + "/share?key=" + key, "")
                        .statusCode())
                .isEqualTo(403);
        assertThat(calls.send("DELETE", HeaderCalls.OWNER, api + "/share", "").statusCode())
                .isEqualTo(204);
        assertThat(calls.get(HeaderCalls.NOBODY, api + "?key=" + key).statusCode())
                .isEqualTo(404);
        assertThat(calls.get(HeaderCalls.OTHER, page + "?key=" + key).statusCode())
                .isEqualTo(404);
    }

    @Test
    void aMarshalWithTheLinkChangesRulesAndIsToldWhatElseDiffers() throws Exception {
        HttpResponse<String> kept = calls.post(HeaderCalls.OWNER, "/api/events", Bodies.EVENT_WITH_EVERY_CONDITION);
        String api = "/api/events/" + HeaderCalls.id(kept);
        String key = "?key=" + HeaderCalls.key(calls.post(HeaderCalls.OWNER, api + "/share", ""));
        HttpResponse<String> renamed = calls.send(
                "PUT",
                HeaderCalls.MARSHAL,
                api + key,
                kept.body().replaceFirst("\"name\":\"[^\"]*\"", "\"name\":\"Mine\""));
        assertThat(renamed.statusCode()).as(renamed.body()).isEqualTo(403);
        assertThat(JSON.readTree(renamed.body()).path("detail").asString()).contains("name");
        assertThat(JSON.readTree(renamed.body()).path("type").asString()).endsWith("not-allowed");
        HttpResponse<String> rules = calls.send("PUT", HeaderCalls.MARSHAL, api + "/rules" + key, "{\"rules\": []}");
        assertThat(rules.statusCode()).as(rules.body()).isEqualTo(200);
        assertThat(calls.send("PUT", HeaderCalls.OTHER, api + "/rules" + key, "{\"rules\": []}", "\"1\"")
                        .statusCode())
                .isEqualTo(403);
        assertThat(calls.send("DELETE", HeaderCalls.MARSHAL, api + key, "", "\"1\"")
                        .statusCode())
                .isEqualTo(403);
    }

    @Test
    void aMarshalWithTheLinkUsesTheFormForTheRules() throws Exception {
        String id = HeaderCalls.id(calls.post(HeaderCalls.OWNER, "/api/events", Bodies.EVENT_WITH_EVERY_CONDITION));
        String key = "?key=" + HeaderCalls.key(calls.post(HeaderCalls.OWNER, "/api/events/" + id + "/share", ""));
        String address = "/events/" + id + "/edit" + key;
        for (String units : List.of("metric", "imperial")) {
            String page =
                    calls.get(HeaderCalls.MARSHAL, address, "units=" + units).body();
            Map<String, String> fields = FormFields.of(page);
            assertThat(page.replace("\"" + address, "")).doesNotContain("/edit");
            assertThat(fields)
                    .containsKeys("rules[0].statement", "typedIn")
                    .doesNotContainKeys("name", "spells[0].airC");
            fields.put("rules[0].statement", "");
            HttpResponse<String> refused = calls.form(HeaderCalls.MARSHAL, address, fields);
            assertThat(refused.statusCode()).isEqualTo(422);
            assertThat(refused.body()).contains("id=\"rules0.statement-wrong\"").doesNotContain("spells[0]");
            fields.put("rules[0].statement", "Wool at the fire " + units);
            HttpResponse<String> kept = calls.form(HeaderCalls.MARSHAL, address, fields);
            assertThat(kept.statusCode()).as(kept.body()).isEqualTo(302);
        }
        assertThat(calls.get(HeaderCalls.OWNER, "/events/" + id).body())
                .contains("Wool at the fire imperial", "Wendlow river camp");
    }

    @Test
    void aPlanForASharedEventKeepsTheKeyToTheSheet() throws Exception {
        String id = HeaderCalls.id(calls.post(HeaderCalls.OWNER, "/api/events", Bodies.EVENT_WITH_EVERY_CONDITION));
        String key = HeaderCalls.key(calls.post(HeaderCalls.OWNER, "/api/events/" + id + "/share", ""));
        String asked = "?event=" + id + "&key=" + key + "&design=tunic&size=M-M";
        assertThat(calls.get(HeaderCalls.OTHER, "/plan/cloths" + asked.replace("&key=" + key, ""))
                        .statusCode())
                .isEqualTo(404);
        String form = calls.get(HeaderCalls.OTHER, "/plan" + asked).body();
        assertThat(form).contains("name=\"key\" value=\"" + key + "\"", "value=\"" + id + "\"");
        String ranked = calls.get(HeaderCalls.OTHER, "/plan/cloths" + asked).body();
        assertThat(ranked).contains("/plan/buy?event=" + id + "&amp;key=" + key);
        String buy = calls.get(HeaderCalls.OTHER, "/plan/buy" + asked + "&cloth=linen-plain-185")
                .body();
        assertThat(buy).contains("action=\"/plan/sheets?key=" + key);
        HttpResponse<String> sheet = calls.form(
                HeaderCalls.OTHER,
                "/plan/sheets?key=" + key,
                Map.of(
                        "asked",
                        "event=" + id + "&key=" + key + "&design=tunic&size=M-M",
                        "cloth",
                        "linen-plain-185",
                        "count",
                        "1"));
        assertThat(sheet.statusCode()).as(sheet.body()).isEqualTo(302);
        String shop = calls.get(HeaderCalls.OTHER, "/shop" + asked + "&label=100%25+linen")
                .body();
        assertThat(shop).contains("name=\"key\" value=\"" + key + "\"");
    }
}
