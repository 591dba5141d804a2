package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Finish;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Depths and distances are common practice, no source. */
class HemRulesTest {

    private static final SewnCloth LINEN = cloth(180, 0.45, Surface.PLAIN, Weave.PLAIN, "flax", 0);
    private static final SewnCloth LODEN = cloth(420, 2.0, Surface.PLAIN, Weave.PLAIN, "wool", 0);
    private static final SewnCloth VOILE = cloth(65, 0.25, Surface.PLAIN, Weave.OPEN_PLAIN, "cotton", 0);
    private static final SewnCloth VELVET = cloth(280, 1.2, Surface.PLAIN, Weave.PILE, "cotton", 0);
    private static final SewnCloth FULLED = new SewnCloth(
            380,
            1.6,
            Surface.RAISED,
            Optional.of(Weave.TWILL),
            Optional.of(Finish.FULLED),
            Optional.of("wool"),
            0,
            0,
            140);
    private static final SewnCloth CHALLIS = cloth(150, 0.45, Surface.PLAIN, Weave.PLAIN, "wool", 0);

    @Test
    void straightCrispEdgeIsFoldedTwiceAndStitchedTwice() {
        Hem hem = HemRules.hem(straightBody(), LINEN);
        assertThat(hem.allowanceCm()).isEqualTo(5);
        assertThat(hem.foldsCm()).containsExactly(2.0, 2.0);
        assertThat(hem.stitchFromFoldMm()).isEqualTo(2);
        assertThat(hem.secondRowFromEdgeMm()).hasValue(5);
        assertThat(hem.spareCm()).isEqualTo(1);
        assertThat(hem.because()).contains("extra length");
    }

    @Test
    void bulkyEdgeHasADeeperSecondFoldAndOneRow() {
        Hem hem = HemRules.hem(straightBody(), LODEN);
        assertThat(hem.foldsCm()).containsExactly(2.0, 3.0);
        assertThat(hem.stitchFromFoldMm()).isEqualTo(5);
        assertThat(hem.rows()).isEqualTo(1);
        assertThat(hem.spareCm()).isZero();
    }

    @Test
    void softEdgeHasOneRow() {
        Hem hem = HemRules.hem(straightBody(), CHALLIS);
        assertThat(hem.foldsCm()).containsExactly(2.0, 2.0);
        assertThat(hem.rows()).isEqualTo(1);
    }

    @Test
    void brushingAloneMakesClothNeitherBulkyNorCrisp() {
        Hem flannel = HemRules.hem(straightBody(), cloth(160, 0.6, Surface.RAISED, Weave.TWILL, "cotton", 0));
        assertThat(flannel.foldsCm()).containsExactly(2.0, 2.0);
        assertThat(flannel.rows()).isEqualTo(1);
        Hem thick = HemRules.hem(straightBody(), cloth(240, 1.3, Surface.RAISED, Weave.TWILL, "cotton", 0));
        assertThat(thick.foldsCm()).containsExactly(2.0, 3.0);
    }

    @Test
    void fulledClothAndFeltAreTurnedOnceAndNeverNeatened() {
        SewnCloth felt = cloth(300, 2, Surface.PLAIN, Weave.FELT, "wool", 0);
        for (SewnCloth cloth : List.of(FULLED, felt)) {
            for (HemEdge edge : List.of(straightBody(), flaredBody(0.2), cuff(), split())) {
                Hem hem = HemRules.hem(edge, cloth);
                assertThat(hem.foldsCm()).as(hem.edge()).hasSize(1);
                assertThat(hem.neatened()).as(hem.edge()).isFalse();
                assertThat(hem.rows()).as(hem.edge()).isEqualTo(1);
                assertThat(hem.because()).contains("by hand").contains("leave the edge raw");
            }
        }
    }

    @Test
    void pileIsFoldedOnceAndNeverPressed() {
        Hem hem = HemRules.hem(straightBody(), VELVET);
        assertThat(hem.foldsCm()).containsExactly(3.0);
        assertThat(hem.neatened()).isTrue();
        assertThat(hem.because()).contains("Steam it from the back; never press the pile");
        assertThat(HemRules.hem(cuff(), VELVET).foldsCm()).containsExactly(2.0);
    }

    @Test
    void thinClothHasANarrowHemOfOneRow() {
        Hem voile = HemRules.hem(straightBody(), VOILE);
        assertThat(voile.foldsCm()).containsExactly(1.0, 1.0);
        assertThat(voile.rows()).isEqualTo(1);
        assertThat(voile.allowanceCm()).isEqualTo(3);
        assertThat(HemRules.hem(cuff(), VOILE).foldsCm()).containsExactly(1.0, 1.0);
        SewnCloth gauze = cloth(40, 0.2, Surface.PLAIN, Weave.OPEN_PLAIN, "silk", 0);
        assertThat(HemRules.hem(straightBody(), gauze).foldsCm()).containsExactly(0.5, 0.5);
        SewnCloth lawn = cloth(80, 0.2, Surface.PLAIN, Weave.PLAIN, "cotton", 0);
        assertThat(HemRules.hem(straightBody(), lawn).foldsCm()).containsExactly(2.0, 2.0);
    }

    @Test
    void flaredEdgeIsNeverCalledStraight() {
        for (SewnCloth cloth : List.of(LINEN, LODEN, CHALLIS, VOILE, VELVET, FULLED)) {
            for (double tangent : new double[] {0.001, 0.01, 0.07, 0.2, 1}) {
                assertThat(HemRules.hem(flaredBody(tangent), cloth).because())
                        .as("%s at %s", cloth, tangent)
                        .doesNotContainIgnoringCase("straight");
            }
        }
        assertThat(HemRules.hem(straightBody(), LINEN).because()).startsWith("On a straight edge, crisp cloth");
    }

    @Test
    void smallerAllowanceIsFoldedWithinItself() {
        for (SewnCloth cloth : List.of(LINEN, LODEN, CHALLIS, VOILE, VELVET, FULLED)) {
            for (double left = 2; left <= 10; left += 0.5) {
                for (HemEdge.Kind kind : List.of(HemEdge.Kind.BODY, HemEdge.Kind.CUFF)) {
                    for (double tangent : new double[] {0, 0.2}) {
                        Hem hem = HemRules.hem(new HemEdge(kind, 126, 95, 63, tangent, left), cloth);
                        String which = kind + " of " + cloth + " with " + left + " cm";
                        assertThat(hem.allowanceCm()).as(which).isLessThanOrEqualTo(left);
                        assertThat(hem.spareCm()).as(which).isGreaterThanOrEqualTo(0);
                        assertThat(hem.foldsCm()).as(which).allMatch(fold -> fold >= 0.5);
                    }
                }
            }
        }
    }

    @Test
    void rowThatHoldsASingleFoldRunsJustInsideTheRawEdge() {
        for (SewnCloth cloth : List.of(LINEN, LODEN, CHALLIS, VELVET, FULLED)) {
            Hem hem = HemRules.hem(cuff(), cloth);
            assertThat(hem.stitchFromFoldMm()).as(cloth.toString()).isEqualTo(18);
        }
    }

    @Test
    void sleeveEndIsNeatenedAndFoldedOnce() {
        Hem crisp = HemRules.hem(cuff(), LINEN);
        assertThat(crisp.allowanceCm()).isEqualTo(5);
        assertThat(crisp.foldsCm()).containsExactly(2.0);
        assertThat(crisp.stitchFromFoldMm()).isEqualTo(18);
        assertThat(crisp.secondRowFromEdgeMm()).hasValue(3);
        assertThat(crisp.neatened()).isTrue();
        assertThat(crisp.rows()).isEqualTo(2);
        assertThat(HemRules.hem(cuff(), LODEN).rows()).isEqualTo(1);
    }

    @Test
    void splitIsFoldedOneAndOneWithinTheSeamAllowance() {
        Hem hem = HemRules.hem(split(), LODEN);
        assertThat(hem.foldsCm()).containsExactly(1.0, 1.0);
        assertThat(hem.stitchFromFoldMm()).isEqualTo(1);
        assertThat(hem.allowanceCm()).isEqualTo(2);
    }

    @Test
    void wideFlareNarrowsTheHemToWhatTheClothEases() {
        // linen: 0.5 % of 100 cm is 0.5 cm; at tan a = 0.15 that is d = 0.5 / 0.3 = 1.67, cut to 1.5
        Hem linen = HemRules.hem(flaredBody(0.15), LINEN);
        assertThat(linen.foldsCm()).containsExactly(1.5, 1.5);
        assertThat(linen.allowanceCm()).isEqualTo(4);
        // wool takes 3 %: 3 / 0.3 = 10 cm, so the usual hem stays
        assertThat(HemRules.hem(flaredBody(0.15), CHALLIS).foldsCm()).containsExactly(2.0, 2.0);
    }

    @Test
    void moreFlareNeverDeepensTheHem() {
        double before = 10;
        for (int i = 0; i <= 100; i++) {
            double depth = HemRules.hem(flaredBody(i / 50.0), LINEN).foldsCm().get(1);
            assertThat(depth).as("tan a = %s", i / 50.0).isBetween(1.0, before);
            before = depth;
        }
        assertThat(before).isEqualTo(1);
    }

    @Test
    void unwashedClothLeavesItsShrinkageInTheHem() {
        SewnCloth unwashed = cloth(180, 0.45, Surface.PLAIN, Weave.PLAIN, "flax", 6);
        Hem hem = HemRules.hem(straightBody(), unwashed);
        assertThat(hem.shrinkageCm()).isCloseTo(95 / 0.94 - 95, within(1e-9));
        assertThat(hem.allowanceCm()).isCloseTo(5 + 95 / 0.94 - 95, within(1e-9));
        assertThat(hem.spareCm()).isCloseTo(1, within(1e-9));
        assertThat(hem.because()).contains("not washed before cutting").contains("6.1 cm");
    }

    @Test
    void everyRuleHasAName() {
        assertThat(HemRules.names()).doesNotHaveDuplicates().hasSizeGreaterThanOrEqualTo(6);
    }

    private static HemEdge straightBody() {
        return new HemEdge(HemEdge.Kind.BODY, 126, 95, 63, 0);
    }

    private static HemEdge flaredBody(double tangent) {
        return new HemEdge(HemEdge.Kind.BODY, 200, 95, 100, tangent);
    }

    private static HemEdge split() {
        return new HemEdge(HemEdge.Kind.SIDE_SPLIT, 80, 0, 63, 0);
    }

    private static HemEdge cuff() {
        return new HemEdge(HemEdge.Kind.CUFF, 60, 53, 30, 0);
    }

    private static SewnCloth cloth(
            double gsm, double mm, Surface surface, Weave weave, String fibre, double residualWarp) {
        return new SewnCloth(
                gsm, mm, surface, Optional.of(weave), Optional.empty(), Optional.of(fibre), residualWarp, 0, 140);
    }
}
