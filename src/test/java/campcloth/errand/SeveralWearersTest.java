package campcloth.errand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.advice.Judged;
import campcloth.advice.Verdict;
import campcloth.advice.Warning;
import campcloth.cloth.ShippedCatalogue;
import campcloth.figure.Refused;
import campcloth.garment.SewnBy;
import campcloth.garment.Sizes;
import campcloth.plan.CuttingPlan;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The same garment for several people from one length of cloth. */
class SeveralWearersTest {

    private static final Sizes SIZES = ShippedCatalogue.get().sizes();
    private static final Errand GROUP = ErrandSamples.group(Instant.EPOCH);
    private static final CuttingPlan PLAN = ErrandSamples.plan(GROUP, true, SewnBy.HAND);
    private static final ErrandSheet SHEET = ErrandSamples.SHEETS.of(GROUP, PLAN);

    @Test
    void everybodyGetsALineOfTheirOwn() {
        assertThat(GROUP.garment().lines(SIZES))
                .extracting(line -> line.design() + " " + line.count())
                .containsExactly("tunic 1", "tunic 2", "tunic 1");
        assertThat(SHEET.count()).isEqualTo(4);
        assertThat(SHEET.garments()).hasSize(3);
    }

    @Test
    void theSheetSaysWhoseIsWhose() {
        assertThat(SHEET.wearers())
                .containsExactly(
                        new SheetWearer(
                                "tunic 1", "Ansel", 1, Optional.of("M-M"), List.of(Map.entry("round the chest", 98.0))),
                        new SheetWearer("tunic 2", "Berit", 2, Optional.of("W-S"), List.of()),
                        new SheetWearer(
                                "tunic 3",
                                "",
                                1,
                                Optional.of("M-L"),
                                List.of(Map.entry("from the shoulder to the hem", 101.0))));
        assertThat(PLAN.placements())
                .extracting(placed -> placed.piece())
                .contains("tunic 1 front", "tunic 2 front", "tunic 3 front");
        assertThat(SHEET.toAsk()).anyMatch(ask -> ask.question().startsWith("Measure everybody who wears one: "));
    }

    @Test
    void forOneWearerNobodyIsListed() {
        assertThat(ErrandSamples.sheet(ErrandSamples.tunic(Instant.EPOCH)).wearers())
                .isEmpty();
    }

    @Test
    void theWorstVerdictCountsForAll() {
        ErrandDraw.always(drawn -> {
            List<Judged> each = new ArrayList<>(List.of(judged(drawn.errand().asked(SIZES))));
            drawn.errand().askedForOthers(SIZES).forEach(asked -> each.add(judged(asked)));
            assertThat(drawn.sheet().verdict())
                    .isEqualTo(
                            Collections.max(each.stream().map(Judged::verdict).toList()));
            for (Judged one : each) {
                assertThat(drawn.sheet().heed().warnings()).containsAll(one.warnings());
            }
        });
    }

    @Test
    void warningsOfAllStandOnceAndStopFirst() {
        Warning stop = new Warning("melting", Warning.Severity.STOP, "Stop.");
        Warning note = new Warning("rule", Warning.Severity.NOTE, "Note.");
        ForEverybody judged = new ForEverybody(
                judged(Verdict.CAUTION, List.of(note)), List.of(judged(Verdict.RULED_OUT, List.of(stop, note))));
        assertThat(judged.verdict()).isEqualTo(Verdict.RULED_OUT);
        assertThat(judged.warnings()).containsExactly(stop, note);
    }

    @Test
    void whatIsWrongIsNamedByItsWearer() {
        WantedGarment one = GROUP.garment();
        WantedGarment wrong = with(one, List.of(new OtherWearer("", Map.of(), Optional.of("XXL"), 1)));
        assertThatThrownBy(() -> wrong.lines(SIZES))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.refusals().get(0).field()).isEqualTo("others[0].size"));
        assertThatThrownBy(() -> new OtherWearer("n".repeat(61), Map.of(), Optional.empty(), 1))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> with(one, Collections.nCopies(5, new OtherWearer("", Map.of(), one.size(), 1))))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("5");
    }

    private static WantedGarment with(WantedGarment one, List<OtherWearer> others) {
        return new WantedGarment(
                one.design(), one.wearerCm(), one.size(), one.touchesSkin(), 1, Map.of(), one.outfit(), "", others);
    }

    private static Judged judged(Asked asked) {
        return ErrandSamples.ADVISER.rank(asked.question()).judged().get(0);
    }

    private static Judged judged(Verdict verdict, List<Warning> warnings) {
        Judged any = judged(GROUP.asked(SIZES));
        return new Judged(any.candidate(), verdict, true, 50, 40, 60, any.criteria(), warnings, any.rules(), List.of());
    }
}
