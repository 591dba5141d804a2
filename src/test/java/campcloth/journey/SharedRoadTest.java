package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.Role;
import campcloth.cloth.Cloths;
import campcloth.errand.Errand;
import campcloth.errand.ErrandSamples;
import campcloth.errand.Errands;
import campcloth.garment.SewnBy;
import campcloth.plan.Plans;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What belongs to one and is shared by a link: read by whoever has it, on all the ways that lead from it, and by nobody else. */
@SeveralAskers
class SharedRoadTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final UUID OWNER_ID = new UUID(9, 1);
    private static final String OWNER = OWNER_ID + ":MAKER";
    private static final String OTHER = new UUID(9, 2) + ":MAKER";
    private static final String MARSHAL = new UUID(9, 3) + ":MAKER,MARSHAL";
    private static final String KEEPER = new UUID(9, 4) + ":MAKER,KEEPER";
    private static final String NOBODY = "";
    private static final Pattern LINK = Pattern.compile("(?:href|src)=\"([^\"#]+)\"");

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @Autowired
    private Askers askers;

    @Autowired
    private Cloths cloths;

    @Autowired
    private Plans plans;

    @Autowired
    private Errands errands;

    @Test
    void anEventIsReadByItsLinkAndOnAllWaysFromIt() throws Exception {
        String api = "/api/events/" + id(post(OWNER, "/api/events", Bodies.EVENT_WITH_EVERY_CONDITION));
        String page = api.replace("/api", "");
        assertThat(get(NOBODY, api).statusCode()).isEqualTo(404);
        assertThat(get(OTHER, page).statusCode()).isEqualTo(404);
        JsonNode link = JSON.readTree(post(OWNER, api + "/share", "").body());
        String key = link.path("link").asString().replaceAll(".*\\?key=", "");
        assertThat(link.path("link").asString()).isEqualTo(page + "?key=" + key);
        assertThat(link.path("apiLink").asString()).isEqualTo(api + "?key=" + key);
        assertThat(JSON.readTree(post(OWNER, api + "/share", "").body())).isEqualTo(link);
        assertThat(get(NOBODY, api + "?key=" + key).statusCode()).isEqualTo(200);

        String read = get(OTHER, page + "?key=" + key).body();
        assertThat(read)
                .contains("/plan?event=", "/fire-rules?key=", "/copy?key=")
                .doesNotContain("/edit", "/remove", "/share\"");
        everyLinkTo(page, read, NOBODY, 3);
        everyLinkTo(page, get(NOBODY, page + "/fire-rules?key=" + key).body(), NOBODY, 2);
        assertThat(get(OWNER, page).body()).contains("/edit", "/remove", page + "/unshare\"", page + "?key=" + key);
        assertThat(get(MARSHAL, page).statusCode()).isEqualTo(404);
        assertThat(get(MARSHAL, page + "?key=" + key).body())
                .contains("/edit?key=")
                .doesNotContain("/remove");
        assertThat(get(MARSHAL, page + "/edit?key=" + key).body()).contains("action=\"" + page + "/edit?key=" + key);
        assertThat(get(OTHER, page + "/edit?key=" + key).statusCode()).isEqualTo(403);

        HttpResponse<String> copied = post(OTHER, page + "/copy?key=" + key, "");
        assertThat(copied.statusCode()).isEqualTo(302);
        assertThat(get(OTHER, copied.headers().firstValue("Location").orElseThrow())
                        .statusCode())
                .isEqualTo(200);

        assertThat(send("DELETE", OTHER, api + "/share?key=" + key, "").statusCode())
                .isEqualTo(403);
        assertThat(send("DELETE", OWNER, api + "/share", "").statusCode()).isEqualTo(204);
        assertThat(get(NOBODY, api + "?key=" + key).statusCode()).isEqualTo(404);
        assertThat(get(OTHER, page + "?key=" + key).statusCode()).isEqualTo(404);
    }

    @Test
    void aMarshalWithTheLinkChangesRulesAndIsToldWhatElseDiffers() throws Exception {
        HttpResponse<String> kept = post(OWNER, "/api/events", Bodies.EVENT_WITH_EVERY_CONDITION);
        String api = "/api/events/" + id(kept);
        String key = "?key=" + key(post(OWNER, api + "/share", ""));
        HttpResponse<String> renamed =
                send("PUT", MARSHAL, api + key, kept.body().replaceFirst("\"name\":\"[^\"]*\"", "\"name\":\"Mine\""));
        assertThat(renamed.statusCode()).as(renamed.body()).isEqualTo(403);
        assertThat(JSON.readTree(renamed.body()).path("detail").asString()).contains("name");
        assertThat(JSON.readTree(renamed.body()).path("type").asString()).endsWith("not-allowed");
        HttpResponse<String> rules = send("PUT", MARSHAL, api + "/rules" + key, "{\"rules\": []}");
        assertThat(rules.statusCode()).as(rules.body()).isEqualTo(200);
        assertThat(send("PUT", OTHER, api + "/rules" + key, "{\"rules\": []}", "\"1\"")
                        .statusCode())
                .isEqualTo(403);
        assertThat(send("DELETE", MARSHAL, api + key, "", "\"1\"").statusCode()).isEqualTo(403);
    }

    @Test
    void aMarshalWithTheLinkUsesTheFormForTheRules() throws Exception {
        String id = id(post(OWNER, "/api/events", Bodies.EVENT_WITH_EVERY_CONDITION));
        String key = "?key=" + key(post(OWNER, "/api/events/" + id + "/share", ""));
        String address = "/events/" + id + "/edit" + key;
        for (String units : List.of("metric", "imperial")) {
            String page = get(MARSHAL, address, "units=" + units).body();
            Map<String, String> fields = FormFields.of(page);
            assertThat(page.replace("\"" + address, "")).doesNotContain("/edit");
            assertThat(fields)
                    .containsKeys("rules[0].statement", "typedIn")
                    .doesNotContainKeys("name", "spells[0].airC");
            fields.put("rules[0].statement", "");
            HttpResponse<String> refused = form(MARSHAL, address, fields);
            assertThat(refused.statusCode()).isEqualTo(422);
            assertThat(refused.body()).contains("id=\"rules0.statement-wrong\"").doesNotContain("spells[0]");
            fields.put("rules[0].statement", "Wool at the fire " + units);
            HttpResponse<String> kept = form(MARSHAL, address, fields);
            assertThat(kept.statusCode()).as(kept.body()).isEqualTo(302);
        }
        assertThat(get(OWNER, "/events/" + id).body()).contains("Wool at the fire imperial", "Wendlow river camp");
    }

    @Test
    void aPlanForASharedEventKeepsTheKeyToTheSheet() throws Exception {
        String id = id(post(OWNER, "/api/events", Bodies.EVENT_WITH_EVERY_CONDITION));
        String key = key(post(OWNER, "/api/events/" + id + "/share", ""));
        String asked = "?event=" + id + "&key=" + key + "&design=tunic&size=M-M";
        assertThat(get(OTHER, "/plan/cloths" + asked.replace("&key=" + key, "")).statusCode())
                .isEqualTo(404);
        String form = get(OTHER, "/plan" + asked).body();
        assertThat(form).contains("name=\"key\" value=\"" + key + "\"", "value=\"" + id + "\"");
        String ranked = get(OTHER, "/plan/cloths" + asked).body();
        assertThat(ranked).contains("/plan/buy?event=" + id + "&amp;key=" + key);
        String buy = get(OTHER, "/plan/buy" + asked + "&cloth=linen-plain-185").body();
        assertThat(buy).contains("action=\"/plan/sheets?key=" + key);
        HttpResponse<String> sheet = form(
                OTHER,
                "/plan/sheets?key=" + key,
                Map.of(
                        "asked",
                        "event=" + id + "&key=" + key + "&design=tunic&size=M-M",
                        "cloth",
                        "linen-plain-185",
                        "count",
                        "1"));
        assertThat(sheet.statusCode()).as(sheet.body()).isEqualTo(302);
        String shop = get(OTHER, "/shop" + asked + "&label=100%25+linen").body();
        assertThat(shop).contains("name=\"key\" value=\"" + key + "\"");
    }

    @Test
    void aSheetIsReadByItsLinkWithPdfAndDrawing() throws Exception {
        Instant when = Instant.parse("2027-05-02T09:30:00Z");
        Errand errand = ErrandSamples.tunic(when);
        String id = askers.as(Asker.of(OWNER_ID, Set.of(Role.MAKER)), () -> {
            String plan =
                    plans.add(ErrandSamples.plan(errand, true, SewnBy.MACHINE)).id();
            return errands.add(new Errand(errand.title(), errand.event(), errand.garment(), errand.cloth(), plan, when))
                    .id();
        });
        String page = "/sheets/" + id;
        assertThat(get(OTHER, page).statusCode()).isEqualTo(404);
        assertThat(form(OTHER, page + "/share", Map.of()).statusCode()).isEqualTo(404);
        assertThat(form(OWNER, page + "/share", Map.of()).statusCode()).isEqualTo(302);
        Matched key = found("\\?key=([\\w-]{22})", get(OWNER, page).body());
        String read = get(NOBODY, page + "?key=" + key.text()).body();
        assertThat(read).contains(page + ".pdf?key=" + key.text()).doesNotContain("/delete", "/share", "/unshare");
        everyLinkTo(page, read, NOBODY, 4);
        assertThat(get(NOBODY, page + ".pdf").statusCode()).isEqualTo(404);
        assertThat(form(OTHER, page + "/delete?key=" + key.text(), Map.of("sure", "true"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(form(OWNER, page + "/unshare", Map.of()).statusCode()).isEqualTo(302);
        assertThat(get(NOBODY, page + "?key=" + key.text()).statusCode()).isEqualTo(404);
    }

    @Test
    void aClothOfOnesOwnIsSeenByNobodyElseUntilItIsHandedOver() throws Exception {
        String name = "Moonmill drabbet";
        String body = Bodies.CLOTH.replaceFirst("\"name\": *\"[^\"]*\"", "\"name\": \"" + name + "\"");
        String id = id(post(KEEPER, "/api/cloths", body));
        String api = "/api/cloths/" + id;
        String page = "/cloths/" + id;
        String asked = "/plan/cloths?season=SUMMER&design=tunic&size=M-M&show=500&showOut=500";
        assertThat(get(KEEPER, asked).body()).contains(name);
        for (String who : List.of(OTHER, MARSHAL, OWNER)) {
            assertThat(get(who, api).statusCode()).isEqualTo(404);
            assertThat(get(who, "/api/cloths?text=drabbet").body())
                    .doesNotContain(name)
                    .contains("\"total\":0");
            assertThat(get(who, asked).body()).doesNotContain(name);
            assertThat(get(who, "/api/cloths/export").body()).doesNotContain(name);
        }
        post(OTHER, "/api/cloths", body.replace(name, "Sunmill drabbot"));
        assertThat(get(OTHER, "/api/cloths?text=drabbet").body())
                .as("that a cloth of somebody else has the word turns nothing")
                .contains("Sunmill drabbot", "\"nearMatches\":true");
        assertThat(get(KEEPER, "/api/cloths?text=drabbet").body()).contains(name, "\"nearMatches\":false");
        String key = key(post(KEEPER, api + "/share", ""));
        String read = get(OTHER, page + "?key=" + key).body();
        assertThat(read).contains(name).doesNotContain("/edit", "/remove", "/swatches/new");
        everyLinkTo(page, read, OTHER, 0);
        assertThat(get(OTHER, "/api/cloths?text=drabbet&key=" + key).body()).doesNotContain(name);
        assertThat(get(KEEPER, page).body()).contains(page + "/hand-over");
        assertThat(post(OTHER, api + "/hand-over?key=" + key, "").statusCode()).isEqualTo(403);
        assertThat(post(KEEPER, api + "/hand-over", "").statusCode()).isEqualTo(204);
        assertThat(get(OTHER, "/api/cloths?text=drabbet").body()).contains("\"total\":1");
        assertThat(get(OTHER, asked).body()).contains(name);
        assertThat(get(OTHER, page + "/edit").statusCode()).isEqualTo(403);
        assertThat(get(OTHER, page + "/edit").body()).contains("Copy it and change your copy");
        assertThat(askers.as(Asker.STRANGER, () -> cloths.byId(id))).isEmpty();
    }

    /** Everything that a page leads to and that is about the same thing opens for who was given the link. */
    private void everyLinkTo(String page, String html, String who, int least) throws Exception {
        List<String> links = LINK.matcher(html)
                .results()
                .map((MatchResult found) -> found.group(1).replace("&amp;", "&"))
                .filter(link -> link.contains(page.substring(page.lastIndexOf('/') + 1)) && !link.startsWith("/plan?"))
                .distinct()
                .toList();
        assertThat(links).hasSizeGreaterThanOrEqualTo(least);
        for (String link : links) {
            assertThat(get(who, link).statusCode()).as(link).isEqualTo(200);
        }
    }

    private record Matched(String text) {}

    private static Matched found(String pattern, String text) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .findFirst()
                .map(found -> new Matched(found.group(1)))
                .orElseThrow();
    }

    private static String id(HttpResponse<String> kept) {
        assertThat(kept.statusCode()).as(kept.body()).isEqualTo(201);
        return JSON.readTree(kept.body()).path("id").asString();
    }

    private static String key(HttpResponse<String> shared) {
        assertThat(shared.statusCode()).as(shared.body()).isEqualTo(200);
        return JSON.readTree(shared.body()).path("link").asString().replaceAll(".*\\?key=", "");
    }

    private HttpResponse<String> get(String who, String path) throws IOException, InterruptedException {
        return send("GET", who, path, "");
    }

    private HttpResponse<String> get(String who, String path, String cookie) throws IOException, InterruptedException {
        return http.send(request(who, path).header("Cookie", cookie).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String who, String path, String body) throws IOException, InterruptedException {
        return send("POST", who, path, body);
    }

    private HttpResponse<String> send(String method, String who, String path, String body)
            throws IOException, InterruptedException {
        return send(method, who, path, body, "\"0\"");
    }

    private HttpResponse<String> send(String method, String who, String path, String body, String version)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = request(who, path).method(method, BodyPublishers.ofString(body));
        if (!body.isEmpty()) {
            request.header("Content-Type", "application/json");
        }
        return http.send(request.header("If-Match", version).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> form(String who, String path, Map<String, String> fields)
            throws IOException, InterruptedException {
        String body = fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return http.send(
                request(who, path)
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private HttpRequest.Builder request(String who, String path) {
        URI uri = path.startsWith("http") ? URI.create(path) : URI.create("http://127.0.0.1:" + port + path);
        HttpRequest.Builder request = HttpRequest.newBuilder(uri);
        return who.isEmpty() ? request : request.header(AskersByHeader.HEADER, who);
    }
}
