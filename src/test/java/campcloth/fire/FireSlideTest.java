package campcloth.fire;

import static campcloth.fire.FireFixtures.at;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.FireRole;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The number inside a grade: weight and distance are seen in it, and no step is larger than the grades make it. */
class FireSlideTest {

    private static final Exposure SEATED = at(FireRole.SEATED, 2);

    @Test
    void weightIsSeenInsideAGrade() {
        for (Fit fit : List.of(Fit.CLOSE, Fit.LOOSE)) {
            FireHazard heavy = grade("flax 100", 300, fit, SEATED);
            FireHazard light = grade("flax 100", 140, fit, SEATED);
            assertThat(light.grade()).isEqualTo(heavy.grade());
            assertThat(light.hazard() - heavy.hazard()).isGreaterThan(3);
        }
    }

    @Test
    void everyTenGramsAreSeen() {
        for (String blend : List.of("flax 100", "wool 100", "cotton 50; wool 50")) {
            for (double gsm = 30; gsm < 700; gsm += 10) {
                assertThat(grade(blend, gsm, Fit.LOOSE, SEATED).hazard())
                        .as(blend + " " + gsm)
                        .isGreaterThan(grade(blend, gsm + 10, Fit.LOOSE, SEATED).hazard() + 0.02);
            }
        }
    }

    @Test
    void stepsWithWeightAreNoCliffs() {
        largestStepIsBelow(9, "flax 100");
        largestStepIsBelow(12, "silk 60; cotton 40");
        largestStepIsBelow(14, "silk 100"); // two points at 88 g/m2, for the mass and for its flutter
        assertThat(grade("wool 100", 372, Fit.LOOSE, SEATED).hazard()
                        - grade("wool 100", 374, Fit.LOOSE, SEATED).hazard())
                .isBetween(0.0, 8.0);
    }

    @Test
    void distanceAndRoleAreSeenInsideAGrade() {
        FireHazard passing = grade("flax 100", 150, Fit.LOOSE, at(FireRole.PASSING, 4));
        FireHazard far = grade("flax 100", 150, Fit.LOOSE, at(FireRole.SEATED, 2.9));
        FireHazard near = grade("flax 100", 150, Fit.LOOSE, at(FireRole.SEATED, 1.5));
        assertThat(List.of(passing.grade(), far.grade(), near.grade())).containsOnly(FireGrade.RAISED);
        assertThat(near.hazard() - far.hazard()).isGreaterThan(3);
        FireHazard asFar = grade("flax 100", 150, Fit.LOOSE, at(FireRole.SEATED, 4));
        assertThat(asFar.reach()).isEqualTo(ExposureClass.SPARKS);
        assertThat(asFar.hazard() - passing.hazard()).isBetween(0.0, 3.0);
        assertThat(far.hazard() - passing.hazard()).isGreaterThan(3);
    }

    @Test
    void denselyMilledWoolIsNoWorseThanLighterPlainWool() {
        for (Exposure exposure : List.of(SEATED, at(FireRole.PASSING, 4), at(FireRole.COOKING, 1))) {
            FireHazard melton = FireGrading.grade(raised("wool 100", 500, Finish.FULLED, Weave.TWILL), exposure);
            FireHazard serge = grade("wool 100", 410, Fit.CLOSE, exposure);
            assertThat(melton.hazard()).isLessThanOrEqualTo(serge.hazard());
        }
    }

    @Test
    void raisedFaceCountsWhereItIsNotDenselyMilledWool() {
        assertThat(raised("wool 81; polyamide 19", 420, Finish.FULLED, Weave.TWILL)
                        .canFlash())
                .isFalse();
        assertThat(raised("wool 80; polyamide 20", 420, Finish.FULLED, Weave.TWILL)
                        .canFlash())
                .isTrue();
        assertThat(raised("wool 100", 500, Finish.BRUSHED, Weave.TWILL).canFlash())
                .isTrue();
        assertThat(raised("wool 100", 500, Finish.FULLED, Weave.PILE).canFlash())
                .isTrue();
        assertThat(raised("wool 100", 136, Finish.FULLED, Weave.TWILL).canFlash())
                .isFalse();
        assertThat(raised("wool 100", 135, Finish.FULLED, Weave.TWILL).canFlash())
                .isTrue();
        assertThat(raised("cotton 100", 500, Finish.FULLED, Weave.TWILL).canFlash())
                .isTrue();
    }

    @Test
    void raisedFaceIsNeverGradedLowerThanAPlainOneAndBrushedNeverLowerThanMilled() {
        Draw.always(1414, draw -> {
            WornCloth drawn = draw.cloth();
            WornCloth plain = faced(drawn, Surface.PLAIN, Finish.FULLED);
            WornCloth milled = faced(drawn, Surface.RAISED, Finish.FULLED);
            WornCloth brushed = faced(drawn, Surface.RAISED, Finish.BRUSHED);
            Exposure exposure = draw.exposure();
            double hazard = FireGrading.grade(milled, exposure).hazard();
            Draw.claim(FireGrading.grade(plain, exposure).hazard() <= hazard, drawn, exposure);
            Draw.claim(hazard <= FireGrading.grade(brushed, exposure).hazard(), drawn, exposure);
        });
    }

    @Test
    void usualToleranceOfWeightIsNotHeldAgainstACloth() {
        assertThat(new ClothWeight(380, 361).gradedGsm()).isEqualTo(380);
        assertThat(new ClothWeight(200, 180).gradedGsm()).isEqualTo(200);
        assertThat(new ClothWeight(180, 135).gradedGsm()).isEqualTo(135);
    }

    private static void largestStepIsBelow(double most, String blend) {
        for (double gsm = 30; gsm < 700; gsm++) {
            double step = grade(blend, gsm, Fit.LOOSE, SEATED).hazard()
                    - grade(blend, gsm + 1, Fit.LOOSE, SEATED).hazard();
            assertThat(step).as(blend + " " + gsm).isLessThan(most);
        }
    }

    private static FireHazard grade(String blend, double gsm, Fit fit, Exposure exposure) {
        return FireGrading.grade(
                WornCloth.woven(FireFixtures.FIBRES.blend(blend), gsm, Surface.PLAIN, fit, Layer.OUTER), exposure);
    }

    private static WornCloth faced(WornCloth c, Surface surface, Finish finish) {
        return new WornCloth(c.blend(), c.weight(), surface, finish, c.weave(), c.fit(), c.layer());
    }

    private static WornCloth raised(String blend, double gsm, Finish finish, Weave weave) {
        return new WornCloth(
                FireFixtures.FIBRES.blend(blend), gsm, Surface.RAISED, finish, weave, Fit.CLOSE, Layer.OUTER);
    }
}
