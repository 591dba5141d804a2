package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Depths and distances are common practice, no source. */
class HemRulesTest {

    private static final SewnCloth LINEN = cloth(180, 0.45, Surface.PLAIN, Weave.PLAIN, "flax", 0);
    private static final SewnCloth LODEN = cloth(420, 2.0, Surface.PLAIN, Weave.PLAIN, "wool", 0);
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
    void raisedClothIsBulkyWhateverItsWeight() {
        SewnCloth flannel = cloth(160, 0.6, Surface.RAISED, Weave.TWILL, "cotton", 0);
        assertThat(HemRules.hem(straightBody(), flannel).foldsCm()).containsExactly(2.0, 3.0);
    }

    @Test
    void sleeveEndIsNeatenedAndFoldedOnce() {
        Hem crisp = HemRules.hem(cuff(), LINEN);
        assertThat(crisp.allowanceCm()).isEqualTo(5);
        assertThat(crisp.foldsCm()).containsExactly(2.0);
        assertThat(crisp.stitchFromFoldMm()).isEqualTo(3);
        assertThat(crisp.neatened()).isTrue();
        assertThat(crisp.rows()).isEqualTo(2);
        assertThat(HemRules.hem(cuff(), LODEN).rows()).isEqualTo(1);
    }

    @Test
    void splitIsFoldedOneAndOneWithinTheSeamAllowance() {
        Hem hem = HemRules.hem(new HemEdge(HemEdge.Kind.SIDE_SPLIT, 80, 0, 63, 0), LODEN);
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

    private static HemEdge cuff() {
        return new HemEdge(HemEdge.Kind.CUFF, 60, 53, 30, 0);
    }

    private static SewnCloth cloth(
            double gsm, double mm, Surface surface, Weave weave, String fibre, double residualWarp) {
        return new SewnCloth(
                gsm, mm, surface, Optional.of(weave), Optional.empty(), Optional.of(fibre), residualWarp, 0);
    }
}
