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
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A sheet and a cloth that belong to one and are shared by a link: read by whoever has it, and by nobody else. */
@SeveralAskers
class SharedThingsTest {

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

    private HeaderCalls calls;

    @BeforeEach
    void begin() {
        calls = new HeaderCalls(port);
    }

    @Test
    void aSheetIsReadByItsLinkWithPdfAndDrawing() throws Exception {
        Instant when = Instant.parse("2027-05-02T09:30:00Z");
        Errand errand = ErrandSamples.tunic(when);
        String id = askers.as(Asker.of(HeaderCalls.OWNER_ID, Set.of(Role.MAKER)), () -> {
            String plan =
                    plans.add(ErrandSamples.plan(errand, true, SewnBy.MACHINE)).id();
            return errands.add(new Errand(errand.title(), errand.event(), errand.garment(), errand.cloth(), plan, when))
                    .id();
        });
        String page = "/sheets/" + id;
        assertThat(calls.get(HeaderCalls.OTHER, page).statusCode()).isEqualTo(404);
        assertThat(calls.form(HeaderCalls.OTHER, page + "/share", Map.of()).statusCode())
                .isEqualTo(404);
        assertThat(calls.form(HeaderCalls.OWNER, page + "/share", Map.of()).statusCode())
                .isEqualTo(302);
        Matched key =
                found("\\?key=([\\w-]{22})", calls.get(HeaderCalls.OWNER, page).body());
        String read = calls.get(HeaderCalls.NOBODY, page + "?key=" + key.text()).body();
        assertThat(read).contains(page + ".pdf?key=" + key.text()).doesNotContain("/delete", "/share", "/unshare");
        calls.everyLinkTo(page, read, HeaderCalls.NOBODY, 4);
        assertThat(calls.get(HeaderCalls.NOBODY, page + ".pdf").statusCode()).isEqualTo(404);
        assertThat(calls.form(HeaderCalls.OTHER, page + "/delete?key=" + key.text(), Map.of("sure", "true"))
                        .statusCode())
                .isEqualTo(403);
        assertThat(calls.form(HeaderCalls.OWNER, page + "/unshare", Map.of()).statusCode())
                .isEqualTo(302);
        assertThat(calls.get(HeaderCalls.NOBODY, page + "?key=" + key.text()).statusCode())
                .isEqualTo(404);
    }

    @Test
    void aClothOfOnesOwnIsSeenByNobodyElseUntilItIsHandedOver() throws Exception {
        String name = "Moonmill drabbet";
        String body = Bodies.CLOTH.replaceFirst("\"name\": *\"[^\"]*\"", "\"name\": \"" + name + "\"");
        String id = HeaderCalls.id(calls.post(HeaderCalls.KEEPER, "/api/cloths", body));
        String api = "/api/cloths/" + id;
        String page = "/cloths/" + id;
        String asked = "/plan/cloths?season=SUMMER&design=tunic&size=M-M&show=500&showOut=500";
        assertThat(calls.get(HeaderCalls.KEEPER, asked).body()).contains(name);
        for (String who : List.of(HeaderCalls.OTHER, HeaderCalls.MARSHAL, HeaderCalls.OWNER)) {
            assertThat(calls.get(who, api).statusCode()).isEqualTo(404);
            assertThat(calls.get(who, "/api/cloths?text=drabbet").body())
                    .doesNotContain(name)
                    .contains("\"total\":0");
            assertThat(calls.get(who, asked).body()).doesNotContain(name);
            assertThat(calls.get(who, "/api/cloths/export").body()).doesNotContain(name);
        }
        calls.post(HeaderCalls.OTHER, "/api/cloths", body.replace(name, "Sunmill drabbot"));
        assertThat(calls.get(HeaderCalls.OTHER, "/api/cloths?text=drabbet").body())
                .as("that a cloth of somebody else has the word turns nothing")
                .contains("Sunmill drabbot", "\"nearMatches\":true");
        assertThat(calls.get(HeaderCalls.KEEPER, "/api/cloths?text=drabbet").body())
                .contains(name, "\"nearMatches\":false");
        String key = HeaderCalls.key(calls.post(HeaderCalls.KEEPER, api + "/share", ""));
        String read = calls.get(HeaderCalls.OTHER, page + "?key=" + key).body();
        assertThat(read).contains(name).doesNotContain("/edit", "/remove", "/swatches/new");
        calls.everyLinkTo(page, read, HeaderCalls.OTHER, 0);
        assertThat(calls.get(HeaderCalls.OTHER, "/api/cloths?text=drabbet&key=" + key)
                        .body())
                .doesNotContain(name);
        assertThat(calls.get(HeaderCalls.KEEPER, page).body()).contains(page + "/hand-over");
        assertThat(calls.post(HeaderCalls.OTHER, api + "/hand-over?key=" + key, "")
                        .statusCode())
                .isEqualTo(403);
        assertThat(calls.post(HeaderCalls.KEEPER, api + "/hand-over", "").statusCode())
                .isEqualTo(204);
        assertThat(calls.get(HeaderCalls.OTHER, "/api/cloths?text=drabbet").body())
                .contains("\"total\":1");
        assertThat(calls.get(HeaderCalls.OTHER, asked).body()).contains(name);
        assertThat(calls.get(HeaderCalls.OTHER, page + "/edit").statusCode()).isEqualTo(403);
        assertThat(calls.get(HeaderCalls.OTHER, page + "/edit").body()).contains("Copy it and change your copy");
        assertThat(askers.as(Asker.STRANGER, () -> cloths.byId(id))).isEmpty();
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
}
