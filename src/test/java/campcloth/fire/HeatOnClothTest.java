package campcloth.fire;

import static campcloth.fire.FireFixtures.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.figure.Refused;
import campcloth.fire.StandBack.Limit;
import campcloth.fire.model.HeatBalance;
import campcloth.fire.model.PointSource;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Radiant heat on a cloth, the distance to keep and the kinds of fire. */
class HeatOnClothTest {

    @Test
    void twoMetresFromALargeFireIsWarmAndNothingOfPolyesterSoftens() {
        HeatOnCloth heat = HeatOnCloth.of(FireFixtures.plain("polyester 100", 150), at(FireRole.SEATED, 2));
        RadiantWarming usual = heat.usual().orElseThrow();
        assertThat(usual.fluxKwM2()).isCloseTo(0.597, within(0.0005)); // 100 kW and 0.30 by the point source
        assertThat(heat.strong().orElseThrow().fluxKwM2()).isCloseTo(0.796, within(0.0005));
        assertThat(usual.steadyC()).isEqualTo(HeatBalance.ONE_SIDE.steadyC(usual.fluxKwM2()));
        assertThat(usual.after1MinC()).isLessThanOrEqualTo(usual.after5MinC());
        assertThat(usual.softensAfterS()).isEmpty();
        assertThat(heat.softening()).contains(new Softening("polyester", 230));
        assertThat(heat.notes())
                .anyMatch(note -> note.contains("never comes to 230"))
                .anyMatch(note -> note.contains("outside the table for bare skin"))
                .anyMatch(note -> note.contains("steady fire"));
    }

    @Test
    void whatSoftensEarlySoftensThereAndTheTimeIsTold() {
        HeatOnCloth heat = HeatOnCloth.of(FireFixtures.plain("polylactide 5; wool 95", 150), at(FireRole.SEATED, 1.2));
        assertThat(heat.softening()).contains(new Softening("polylactide", 60));
        RadiantWarming usual = heat.usual().orElseThrow();
        RadiantWarming strong = heat.strong().orElseThrow();
        assertThat(usual.softensAfterS().orElseThrow()).isBetween(1.0, 60.0);
        assertThat(strong.softensAfterS().orElseThrow())
                .isLessThan(usual.softensAfterS().orElseThrow());
        assertThat(strong.skinHurtsAfterS().orElseThrow())
                .isLessThan(usual.skinHurtsAfterS().orElseThrow());
        assertThat(usual.skinHurtsAfterS().orElseThrow())
                .isLessThan(usual.skinBurnsAfterS().orElseThrow());
        assertThat(heat.notes()).noneMatch(note -> note.contains("never") || note.contains("outside the table"));
    }

    @Test
    void ofSeveralPartsTheFirstToSoftenCounts() {
        assertThat(Softening.of(FireFixtures.plain("polyester 60; elastane 40", 200)))
                .contains(new Softening("elastane", 170));
        assertThat(Softening.of(FireFixtures.plain("wool 60; cotton 40", 200))).isEmpty();
        assertThat(Softening.of(FireFixtures.plain("polyester 60; other 40", 200)))
                .contains(new Softening("unnamed fibre", 55));
    }

    @Test
    void withoutPlaceOrFormulaThereAreNoNumbersButTheReason() {
        WornCloth cloth = FireFixtures.plain("polyester 100", 150);
        assertThat(noNumbers(cloth, at(FireRole.SEATED, 0.9))).contains("contact with flame");
        assertThat(noNumbers(cloth, at(FireRole.SEATED))).contains("Without a distance");
        assertThat(noNumbers(cloth, Exposure.none())).contains("no open fire");
    }

    private static String noNumbers(WornCloth cloth, Exposure exposure) {
        HeatOnCloth heat = HeatOnCloth.of(cloth, exposure);
        assertThat(heat.usual()).isEmpty();
        assertThat(heat.strong()).isEmpty();
        return String.join(" ", heat.notes());
    }

    @Test
    void nearerOrLargerNeverWarmsLessNorSoftensLater() {
        Draw.always(61_000_000, draw -> {
            WornCloth cloth = draw.cloth();
            double metres = draw.between(1, 10);
            double fireKw = draw.between(1, 900);
            Exposure far = new Exposure(FireRole.SEATED, Optional.of(metres * 1.2), Optional.of(fireKw));
            Exposure near = new Exposure(FireRole.SEATED, Optional.of(metres), Optional.of(fireKw));
            Exposure large = new Exposure(FireRole.SEATED, Optional.of(metres * 1.2), Optional.of(fireKw * 1.1));
            Draw.claim(neverMilder(HeatOnCloth.of(cloth, far), HeatOnCloth.of(cloth, near)), cloth, far, near);
            Draw.claim(neverMilder(HeatOnCloth.of(cloth, far), HeatOnCloth.of(cloth, large)), cloth, far, large);
        });
    }

    /** Also where the worse place lies in the near field and has no numbers. */
    private static boolean neverMilder(HeatOnCloth mild, HeatOnCloth worse) {
        if (mild.usual().isEmpty() || worse.usual().isEmpty()) {
            return worse.usual().isEmpty();
        }
        RadiantWarming one = mild.usual().get();
        RadiantWarming other = worse.usual().get();
        boolean softensNoLater = one.softensAfterS()
                .map(s -> other.softensAfterS().isPresent()
                        && other.softensAfterS().get() <= s)
                .orElse(true);
        return other.after1MinC() >= one.after1MinC() - 0.001 && other.steadyC() >= one.steadyC() && softensNoLater;
    }

    @Test
    void whatSetsTheDistanceIsNamedWithItsMargin() {
        assertThat(back("wool 100", 5).limit()).isEqualTo(Limit.RING);
        assertThat(back("wool 100", 100).limit()).isEqualTo(Limit.LONG_STAY);
        assertThat(back("wool 100", 100).because()).contains("1.6 kW/m2", "0.4 of its heat", "flare-up");
        assertThat(back("polyester 100", 100).limit()).isEqualTo(Limit.SPARKS);
        assertThat(back("polyester 100", 100).because()).contains("melt holes", "margin over the 1.4 m");
        assertThat(back("polyester 100", 1000).limit()).isEqualTo(Limit.LONG_STAY);
        StandBack early = back("polylactide 5; wool 95", 100);
        assertThat(early.limit()).isEqualTo(Limit.SOFTENING);
        assertThat(early.because()).contains("20 degrees", "60 degrees Celsius", "polylactide");
        double steadyC =
                HeatBalance.ONE_SIDE.steadyC(PointSource.fluxKwM2(PointSource.GRADING_FRACTION, 100, early.metres()));
        assertThat(steadyC).isCloseTo(40, within(1e-6));
    }

    /** By the formulas the flux that bounds a long stay lies farther out than the near field, whatever the fire. */
    @Test
    void theDistanceToKeepIsNeverInTheNearFieldNorInsideTheRing() {
        Draw.always(62_000_000, draw -> {
            double fireKw = draw.between(1, 1000);
            StandBack back = StandBack.of(draw.cloth(), fireKw);
            Draw.claim(back.metres() >= PointSource.nearFieldM(fireKw) && back.metres() >= Exposure.RING_M, back);
        });
    }

    @Test
    void theKindOfAFireStandsForItsHeatWhereNobodyGivesIt() {
        Exposure bonfire = Exposure.of(
                new OpenFire(FireRole.SEATED, Optional.of(4.0), Optional.empty(), Optional.of(FireKind.BONFIRE)));
        assertThat(bonfire.fireKwOrPresumed()).isEqualTo(500);
        assertThat(bonfire.fluxKwM2()).isEqualTo(given(500).fluxKwM2());
        assertThat(FireReasons.place(bonfire)).contains("a bonfire, counted as 500 kW");
    }

    @Test
    void whereBothAreGivenTheHeatCountsAndTheKindIsOnlyAName() {
        Exposure both = Exposure.of(
                new OpenFire(FireRole.SEATED, Optional.of(4.0), Optional.of(60.0), Optional.of(FireKind.BONFIRE)));
        assertThat(both.fluxKwM2()).isEqualTo(given(60).fluxKwM2());
        assertThat(FireReasons.place(both)).contains("a bonfire of 60 kW");
    }

    @Test
    void aFireThatNobodyAdvisesOnIsForTheMarshal() {
        assertThatThrownBy(() -> given(1000.1)).isInstanceOf(Refused.class).hasMessageContaining("fire marshal");
        assertThatThrownBy(() -> new OpenFire(FireRole.SEATED, Optional.empty(), Optional.of(1500.0)))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("fire marshal");
        assertThatThrownBy(() -> given(Double.NaN)).isInstanceOf(Refused.class);
        assertThat(given(1000).fluxKwM2()).isPresent();
    }

    private static Exposure given(double fireKw) {
        return new Exposure(FireRole.SEATED, Optional.of(4.0), Optional.of(fireKw));
    }

    private static StandBack back(String blend, double fireKw) {
        return StandBack.of(FireFixtures.plain(blend, 300), fireKw);
    }
}
