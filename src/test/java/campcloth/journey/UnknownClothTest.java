package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.advice.Verdict;
import campcloth.fire.RuleOutcome.Outcome;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** Over HTTP too, a cloth of which nobody knows anything stands no better than any cloth of the catalogue, and of nothing else. */
@WholeService
class UnknownClothTest {

    private static final String UNKNOWN =
            "{\"name\": \"from the bin\", \"blend\": [{\"fibre\": \"unknown\", \"percent\": 100}]}";

    @LocalServerPort
    private int port;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"PASSING\", \"distanceM\": 30 | \"askAbout\": \"the marshal's eye\"",
                "\"SEATED\", \"distanceM\": 2 | \"maxMeltablePercent\": 33, \"withinM\": 3",
                "\"SEATED\", \"distanceM\": 4 | \"forbiddenFibres\": [\"acrylic\"], \"minWeightGsm\": 150",
                "\"PASSING\", \"kind\": \"BONFIRE\" | \"allowedFibres\": [\"wool\", \"flax\"], \"roles\": [\"COOKING\"]",
                "\"COOKING\", \"distanceM\": 1 | \"plainSurfaceOnly\": true, \"closeFitOnly\": true"
            })
    void aClothOfWhichNothingIsKnownIsNoBetterThanAny(String fire, String rule) throws Exception {
        JsonNode ranking =
                new BareCalls(port, "/api/advice").answer(request(fire, rule)).path("ranking");
        assertThat(ranking.size()).isGreaterThan(100);
        JsonNode unknown = null;
        for (JsonNode cloth : ranking) {
            unknown = cloth.at("/cloth/name").asString().equals("from the bin") ? cloth : unknown;
        }
        assertThat(unknown).isNotNull();
        for (JsonNode known : ranking) {
            assertThat(verdict(unknown)).as(known.at("/cloth/id").asString()).isGreaterThanOrEqualTo(verdict(known));
            assertThat(hazard(unknown)).as(known.at("/cloth/id").asString()).isGreaterThanOrEqualTo(hazard(known));
            assertThat(outcome(unknown)).as(known.at("/cloth/id").asString()).isGreaterThanOrEqualTo(outcome(known));
        }
    }

    private static Verdict verdict(JsonNode cloth) {
        return Verdict.valueOf(cloth.path("verdict").asString());
    }

    private static Outcome outcome(JsonNode cloth) {
        return Outcome.valueOf(cloth.at("/rulesApplied/0/outcome").asString());
    }

    private static double hazard(JsonNode cloth) {
        for (JsonNode criterion : cloth.path("criteria")) {
            if (criterion.path("criterion").asString().equals("fire")) {
                return criterion.path("value").asDouble();
            }
        }
        throw new AssertionError("no fire criterion");
    }

    private String request(String fire, String rule) throws Exception {
        return """
                {"event": {"name": "Wendlow river camp", "season": "SUMMER", "spells": [
                   {"name": "fireside", "hours": 3, "airC": 15, "humidityPercent": 60, "windMs": 1, "sun": "NONE",
                    "activity": "SEATED", "fire": {"role": %s}}],
                   "rules": [{"authority": "VENUE", "statement": "As posted at the gate", %s}]},
                 "garment": {"design": "tunic", "wearer": {"chestCm": 98}},
                 "cloths": {"ids": %s, "inline": [%s]}, "limit": 500}
                """.formatted(fire, rule, CatalogueCloths.ids(port), UNKNOWN);
    }
}
