package campcloth.advice;

import static campcloth.advice.Camp.CATALOGUE;
import static campcloth.advice.Camp.assessment;
import static campcloth.advice.Camp.event;
import static campcloth.advice.Camp.fireside;
import static campcloth.advice.Camp.judged;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.Property;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.fibre.Blend;
import campcloth.figure.Basis;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a maker asks first, asked of the catalogue as shipped. */
class AdviserTest {

    @Test
    void inWinterWindAWindtightFulledWoolKeepsWarmerThanAnOpenOneOfTheSameWeightAndTheReasonNamesTheWind() {
        Event market = event(List.of(), Camp.WINDY_WINTER_DAY);
        Cloth fulled = CATALOGUE.cloth("wool-fulled-350");
        Cloth open = CATALOGUE.cloth("wool-open-plain-350");
        assertThat(weight(fulled)).isEqualTo(weight(open));
        Assessment tight = assessment(judged(fulled, market), "warmth");
        Assessment airy = assessment(judged(open, market), "warmth");
        assertThat(tight.score()).isGreaterThan(airy.score());
        assertThat(tight.quantity().orElseThrow().value())
                .isGreaterThan(airy.quantity().orElseThrow().value());
        assertThat(tight.because()).contains("Wind of 6 m/s").contains("mm/s");
        assertThat(airy.because()).contains("the wind goes through it");
    }

    @Test
    void atSummerNoonLinenIsCoolerAndBreathesBetterThanPolyesterOfTheSameWeight() {
        Event noon = event(List.of(), Camp.SUMMER_NOON);
        Judged linen = judged(CATALOGUE.cloth("linen-plain-150"), noon);
        for (String id : List.of("polyester-plain-150", "polyester-satin-150")) {
            Cloth cloth = CATALOGUE.cloth(id);
            assertThat(weight(cloth)).isEqualTo(weight(CATALOGUE.cloth("linen-plain-150")));
            Judged polyester = judged(cloth, noon);
            for (String criterion : List.of("heat", "breathability")) {
                assertThat(assessment(linen, criterion).score())
                        .as("%s against %s", criterion, id)
                        .isGreaterThan(assessment(polyester, criterion).score());
            }
        }
    }

    @Test
    void aRuleOfNoSyntheticsRulesOutEveryClothWithAnyMeltableOtherOrUnknownShare() {
        Event camp = event(List.of(Camp.NO_SYNTHETICS_WITHIN_3_M), Camp.SUMMER_NOON, fireside(FireRole.SEATED, 2.0));
        List<Judged> ranked = Camp.ranked(camp);
        assertThat(ranked).hasSize(CATALOGUE.cloths().size());
        assertThat(ranked)
                .filteredOn(j -> j.candidate().cloth().blend().meltablePercent() > 0)
                .hasSizeGreaterThan(60)
                .allSatisfy(j -> {
                    assertThat(j.verdict()).as(j.candidate().id()).isEqualTo(Verdict.RULED_OUT);
                    assertThat(j.warnings())
                            .as(j.candidate().id())
                            .anySatisfy(w -> assertThat(w.text()).contains("No synthetic fibres"));
                });
        assertThat(ranked)
                .filteredOn(j -> j.candidate().cloth().blend().percentOf("other") > 0
                        || j.candidate().cloth().blend().percentOf("unknown") > 0
                        || j.candidate().cloth().blend().percentOf("polyester") > 0)
                .hasSizeGreaterThan(40)
                .allSatisfy(j -> assertThat(j.verdict()).as(j.candidate().id()).isEqualTo(Verdict.RULED_OUT));
        assertThat(ranked)
                .filteredOn(j -> j.candidate().cloth().blend().meltablePercent() == 0)
                .filteredOn(j -> j.verdict() != Verdict.RULED_OUT)
                .hasSizeGreaterThan(60);
    }

    @Test
    void noClothThatIsRuledOutStandsBeforeOneThatIsNot() {
        Event camp = event(List.of(Camp.NO_SYNTHETICS_WITHIN_3_M), Camp.SUMMER_NOON, fireside(FireRole.COOKING, 1.0));
        List<Verdict> verdicts = Camp.ranked(camp).stream().map(Judged::verdict).toList();
        assertThat(verdicts).contains(Verdict.RULED_OUT);
        assertThat(verdicts).isSorted();
    }

    @Test
    void withoutRulesEveryPolyCottonAtTheFireCarriesAMeltWarningAndNeverOutranksTheSameClothInWool() {
        for (FireRole role : List.of(FireRole.PASSING, FireRole.SEATED, FireRole.COOKING, FireRole.TENDING)) {
            Event camp = event(List.of(), fireside(role, role == FireRole.PASSING ? 4 : 2));
            CATALOGUE.cloths().forEach((id, cloth) -> {
                if (cloth.blend().percentOf("polyester") == 0 || cloth.blend().percentOf("cotton") == 0) {
                    return;
                }
                Judged blend = judged(cloth, camp);
                Judged wool = judged(inWool(cloth), camp);
                assertThat(blend.warnings())
                        .as("%s, %s", id, role)
                        .anySatisfy(w -> assertThat(w.code()).isEqualTo("MELT"));
                assertThat(assessment(blend, "fire").score())
                        .as("%s, %s", id, role)
                        .isLessThan(assessment(wool, "fire").score());
                assertThat(blend.verdict()).as("%s, %s", id, role).isGreaterThanOrEqualTo(wool.verdict());
            });
        }
    }

    @Test
    void aClothOfWhichOnlyTheFibreIsKnownIsJudgedByEstimatesWithWideIntervals() {
        Cloth bare = new Cloth(
                "from the bin",
                CATALOGUE.cloth("linen-plain-150").blend(),
                CATALOGUE.cloth("linen-plain-150").weave(),
                CATALOGUE.cloth("linen-plain-150").surface(),
                CATALOGUE.cloth("linen-plain-150").finish(),
                false,
                false,
                Map.of(),
                "");
        Judged judged = judged(bare, event(List.of(), Camp.SUMMER_NOON, fireside(FireRole.SEATED, 2)));
        assertThat(judged.criteria()).hasSize(6).allSatisfy(a -> {
            assertThat(a.basis()).as(a.criterion()).isEqualTo(Basis.ESTIMATED);
            assertThat(a.because()).isNotBlank();
        });
        assertThat(judged.scoreHigh() - judged.scoreLow()).isGreaterThan(5);
    }

    @Test
    void stretchClothIsNotSuitableForADesignThatIsDrawnForFirmCloth() {
        Cloth jersey = CATALOGUE.cloths().values().stream()
                .filter(c -> c.stretch() && c.blend().meltablePercent() == 0)
                .findFirst()
                .orElseThrow();
        Judged judged = judged(jersey, event(List.of(), Camp.SUMMER_NOON));
        assertThat(judged.verdict()).isEqualTo(Verdict.CAUTION);
        assertThat(judged.warnings()).anySatisfy(w -> assertThat(w.code()).isEqualTo("STRETCH"));
    }

    @Test
    void whatIsWornOverAShirtDoesNotPrickle() {
        Cloth tweed = CATALOGUE.cloth("wool-tweed-420");
        Event day = event(List.of(), Camp.WINDY_WINTER_DAY);
        campcloth.cloth.Wear overShirt = new campcloth.cloth.Wear(
                false,
                Camp.TUNIC.layer(),
                Camp.TUNIC.fit(),
                false,
                Camp.TUNIC.coveredPercent(),
                Camp.TUNIC.clothAreaM2());
        Judged over = Camp.ADVISER
                .rank(new Question(day, overShirt, List.of(new Candidate("it", tweed))))
                .judged()
                .get(0);
        assertThat(assessment(over, "itch").score()).isEqualTo(100);
        assertThat(assessment(judged(tweed, day), "itch").score()).isLessThan(30);
    }

    private static double weight(Cloth cloth) {
        return cloth.required(Property.WEIGHT_GSM).value();
    }

    private static Cloth inWool(Cloth cloth) {
        return new Cloth(
                cloth.name() + " in wool",
                Blend.pure(CATALOGUE.fibres().require("wool")),
                cloth.weave(),
                cloth.surface(),
                cloth.finish(),
                cloth.nap(),
                cloth.stretch(),
                cloth.figures(),
                "");
    }
}
