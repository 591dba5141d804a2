package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** The fire grading asked over HTTP. */
@WholeService
class BareFireTest {

    private static final String COTTON = """
            {"blend": [{"fibre": "cotton", "percent": 100}], "weightGsm": 200, "surface": "PLAIN", "fit": "CLOSE",
             "layer": "OUTER", "role": "SEATED", "distanceM": %s, "fireKw": 100}
            """;

    @LocalServerPort
    private int port;

    private BareCalls fire;

    @BeforeEach
    void find() {
        fire = new BareCalls(port, "/api/fire");
    }

    /** Table for a 100 kW fire in published/fire-radiant-flux.csv, rounded to 0.01. */
    @ParameterizedTest
    @CsvSource({"2, 0.60", "3, 0.27"})
    void theFluxIsThatOfThePublishedTable(double distanceM, double fluxKwM2) {
        JsonNode answer = fire.answer(COTTON.formatted(distanceM));
        assertThat(answer.path("fluxKwM2").asDouble()).isEqualTo(fluxKwM2, within(0.005));
    }

    @Test
    void inTheNearFieldThereIsNoFlux() {
        JsonNode answer = fire.answer(COTTON.formatted("0.5"));
        assertThat(answer.path("fluxKwM2").isNull()).isTrue();
        assertThat(answer.path("reach").asString()).isEqualTo("UNBEARABLE");
        assertThat(answer.path("standBackM").asDouble()).isGreaterThan(0.5);
    }

    @Test
    void theHeatTellsHowTheClothWarmsAndWhatLimitsIt() {
        JsonNode heat = fire.answer(COTTON.formatted("1.3")).path("heat");
        assertThat(heat.at("/usual/fluxKwM2").asDouble()).isEqualTo(1.41, within(0.005));
        assertThat(heat.at("/strong/steadyC").asDouble())
                .isGreaterThan(heat.at("/usual/steadyC").asDouble());
        assertThat(heat.at("/usual/skinHurtsAfterS").asDouble()).isBetween(45.0, 115.0);
        assertThat(heat.path("softeningPart").isNull()).isTrue();
        assertThat(heat.path("notes").toString()).contains("steady fire");
        JsonNode near = fire.answer(COTTON.formatted("0.5")).path("heat");
        assertThat(near.path("usual").isNull()).isTrue();
        assertThat(near.path("notes").toString()).contains("contact with flame");
    }

    @Test
    void eachThreatIsAnItemOfItsOwn() {
        JsonNode answer = fire.answer(Bodies.FIRE);
        assertThat(answer.path("threats").findValuesAsString("kind"))
                .containsExactly("RADIANT_HEAT", "FLAME_CONTACT", "FLARE_UP", "SPARKS");
        assertThat(answer.path("standBackBecause").asString()).contains("steady fire", "margin");
    }

    @Test
    void theKindOfAFireStandsForItsHeatAndTooLargeAFireIsForTheMarshal() {
        String bonfire = COTTON.formatted("4").replace("\"fireKw\": 100", "\"kind\": \"BONFIRE\"");
        JsonNode named = fire.answer(bonfire);
        JsonNode given = fire.answer(COTTON.formatted("4").replace("\"fireKw\": 100", "\"fireKw\": 500"));
        assertThat(named.path("fluxKwM2")).isEqualTo(given.path("fluxKwM2"));
        assertThat(named.path("reasons").toString()).contains("a bonfire, counted as 500 kW");
        fire.refused(COTTON.formatted("4").replace("\"fireKw\": 100", "\"fireKw\": 1001"), 422, "fireKw");
        fire.refused(bonfire.replace("BONFIRE", "INFERNO"), 400, "kind");
    }

    @Test
    void polyesterCottonAtTheFireIsWarnedOfWithAllThatBelongsToIt() {
        JsonNode answer = fire.answer(Bodies.FIRE);
        assertThat(answer.path("meltablePercent").asDouble()).isEqualTo(65);
        assertThat(answer.path("meltWarning").asString()).isEqualTo("WARN");
        assertThat(answer.path("warnings").findValuesAsString("code")).contains("MELT", "SPREAD");
        assertThat(answer.path("warnings").findValuesAsString("text")).allMatch(text -> text.endsWith("."));
        assertThat(answer.path("reasons").size()).isGreaterThan(3);
        assertThat(answer.path("cautions").toString())
                .contains("not a flammability test")
                .contains("organiser, the venue and local law win");
    }

    @Test
    void whatWouldBetterItIsToldWhereThereIsSomethingToBetter() {
        JsonNode whatIf = fire.answer(Bodies.FIRE).path("whatIf");
        assertThat(whatIf.isEmpty()).isFalse();
        assertThat(whatIf.findValuesAsString("text")).allMatch(text -> text.contains("would then be"));
        assertThat(whatIf.findValuesAsString("wouldBe")).doesNotContain("RULED_OUT");
        assertThat(fire.answer(COTTON.formatted("4")).path("whatIf").isEmpty()).isTrue();
    }

    @Test
    void theBurnTestIsToldBesideTheMeltWarningAndChangesNothingOfIt() {
        String polyester = COTTON.replace("cotton", "polyester")
                .replace("SEATED", "COOKING")
                .formatted("0.6");
        JsonNode answer = fire.answer(polyester);
        assertThat(answer.at("/burnTest/outcome").asString()).isEqualTo("EXEMPT_BY_FIBRE");
        assertThat(answer.at("/burnTest/information").asString()).contains("polyester is exempt and melts");
        assertThat(answer.path("meltWarning").asString()).isEqualTo("STOP");
        String untold = COTTON.replace("\"surface\": \"PLAIN\",", "").formatted("2");
        assertThat(fire.answer(untold).at("/burnTest/outcome").asString()).isEqualTo("NOT_KNOWN");
    }

    @Test
    void whatIsNotSaidIsPresumedTheWorseAndTold() {
        String bare = """
                {"blend": [{"fibre": "polyester", "percent": 100}], "weightGsm": 150, "role": "SEATED"}
                """;
        String told =
                bare.replace("\"role\"", "\"surface\": \"RAISED\", \"fit\": \"LOOSE\", \"layer\": \"SKIN\", \"role\"");
        JsonNode presumed = fire.answer(bare);
        JsonNode said = fire.answer(told);
        assertThat(presumed.path("hazard")).isEqualTo(said.path("hazard"));
        assertThat(presumed.path("presumed").toString()).contains("raised", "loose", "on the skin");
        assertThat(said.path("presumed").toString()).doesNotContain("worse case");
        assertThat(presumed.path("warnings").findValuesAsString("code")).contains("ASSUMED");
    }

    @Test
    void farFromTheFireLessIsLeftOfTheHazardAndWithoutOneNothing() {
        double near = fire.answer(COTTON.formatted("1.5")).path("hazard").asDouble();
        double far = fire.answer(COTTON.formatted("6")).path("hazard").asDouble();
        assertThat(far).isLessThan(near);
        JsonNode none = fire.answer(COTTON.formatted("6").replace("SEATED", "NONE"));
        assertThat(none.path("hazard").asDouble()).isZero();
        assertThat(none.path("warnings").size()).isZero();
        assertThat(none.path("cautions").toString())
                .contains("Any clothing can burn")
                .doesNotContain("stop, drop");
        assertThat(fire.answer(COTTON.formatted("60").replace("SEATED", "PASSING"))
                        .path("cautions")
                        .toString())
                .contains("stop, drop, cover and roll", "emergency number");
    }

    @ParameterizedTest
    @CsvSource({
        "'\"weightGsm\": 120,', '', weightGsm, 400",
        "'\"role\": \"SEATED\",', '', role, 400",
        "'\"percent\": 35', '\"percent\": 30', blend, 422",
        "'\"cotton\"', '\"moonlight\"', 'blend[1]', 422",
        "'\"weightGsm\": 120', '\"weightGsm\": 0', weightGsm, 422",
        "'\"distanceM\": 2.0', '\"distanceM\": 0', distanceM, 422",
        "'\"MIDDLE\"', '\"UNDER\"', layer, 400"
    })
    void whatCannotBeGradedIsRefusedByField(String word, String other, String field, int status) {
        String body = Bodies.FIRE.replace("\"OUTER\"", "\"MIDDLE\"");
        assertThat(body).contains(word);
        fire.refused(body.replace(word, other), status, field);
    }
}
