package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** What is worn or sewn in besides, told over HTTP. */
@WholeService
class OutfitTest {

    private static final String SHIRT = """
            {"kind": "SHIRT", "cloth": {"name": "sports shirt", "weightGsm": 140,
             "blend": [{"fibre": "polyester", "percent": 100}]}}""";

    private static final String LINEN = "{\"ids\": [\"linen-plain-185-washed\"]}";

    @LocalServerPort
    private int port;

    @Test
    void aBadShirtIsToldOnceAndNoClothIsSuitableOverIt() {
        JsonNode answer = advice(SHIRT);
        assertThat(answer.at("/outfit/verdict").asString()).isEqualTo("RULED_OUT");
        assertThat(answer.at("/outfit/parts/0/part/kind").asString()).isEqualTo("SHIRT");
        assertThat(answer.at("/outfit/parts/0/rulesApplied/0/outcome").asString())
                .isEqualTo("FORBIDDEN");
        assertThat(answer.at("/ranking/0/verdict").asString()).isEqualTo("CAUTION");
        assertThat(answer.at("/ranking/0/warnings").toString()).contains("\"OUTFIT\"");
        assertThat(answer.at("/ranking/0/rulesApplied/0/outcome").asString()).isEqualTo("PASSED");
        assertThat(answer.path("presumed").toString()).contains("something is told to lie beneath it");
    }

    @Test
    void aForbiddenLiningRulesOutTheClothThatItIsSewnInto() {
        JsonNode answer = advice("{\"kind\": \"LINING\", \"clothId\": \"polycotton-65-35-200\"}");
        assertThat(answer.at("/ranking/0/verdict").asString()).isEqualTo("RULED_OUT");
        assertThat(answer.at("/ranking/0/rulesApplied/0/because").asString()).startsWith("Lining");
        assertThat(answer.at("/outfit/parts").size()).isZero();
    }

    @Test
    void ofABadLiningAnotherLiningIsToldNotAnotherCloth() {
        JsonNode answer = advice("{\"kind\": \"LINING\", \"clothId\": \"polycotton-65-35-200\"}");
        JsonNode first = answer.at("/ranking/0/whatIf/0");
        assertThat(first.at("/change/0/kind").asString()).isEqualTo("OTHER_PART");
        assertThat(first.at("/change/0/to").asString()).isEqualTo("other lining");
        assertThat(first.path("text").asString()).contains("another lining", "judged by itself");
        assertThat(first.path("wouldBe").asString()).isNotEqualTo("RULED_OUT");
    }

    @Test
    void partsThatCannotBeUsedAreNamed() {
        BareCalls calls = new BareCalls(port, "/api/advice");
        calls.refused(request("{\"kind\": \"LINING\", \"clothId\": \"moonweed\"}"), 422, "garment.outfit[0].clothId");
        calls.refused(
                request(SHIRT.replace("\"kind\": \"SHIRT\"", "\"kind\": \"SHIRT\", \"clothId\": \"x\"")),
                422,
                "garment.outfit[0].cloth");
    }

    @Test
    void theFireGradingGradesTheOutfitBesideTheCloth() {
        BareCalls fire = new BareCalls(port, "/api/fire");
        String wool = """
                {"blend": [{"fibre": "wool", "percent": 100}], "weightGsm": 450, "surface": "PLAIN", "fit": "CLOSE",
                 "layer": "OUTER", "role": "SEATED", "distanceM": 2.0, "fireKw": 100}""";
        JsonNode alone = fire.answer(wool);
        JsonNode worn = fire.answer(wool.replace("\"fireKw\": 100", "\"fireKw\": 100, \"outfit\": [" + SHIRT + "]"));
        assertThat(alone.path("outfit").isNull()).isTrue();
        assertThat(worn.path("hazard")).isEqualTo(alone.path("hazard"));
        assertThat(worn.at("/outfit/worst").asString()).isEqualTo("shirt");
        assertThat(worn.at("/outfit/grade").asString()).isEqualTo("SEVERE");
        assertThat(worn.at("/outfit/warnings").toString()).contains("MELT_ON_SKIN");
        assertThat(worn.at("/outfit/parts").size()).isEqualTo(2);
        assertThat(alone.path("warnings").findValuesAsString("code")).doesNotContain("OUTFIT");
        assertThat(worn.at("/warnings/0/code").asString()).isEqualTo("OUTFIT");
        assertThat(worn.at("/warnings/0/severity").asString()).isEqualTo("STOP");
    }

    private JsonNode advice(String part) {
        return new BareCalls(port, "/api/advice").answer(request(part));
    }

    private static String request(String part) {
        return """
                {"event": %s, "garment": {"design": "tunic", "wearer": {"chestCm": 98}, "outfit": [%s]}, "cloths": %s}
                """.formatted(Bodies.EVENT, part, LINEN);
    }
}
