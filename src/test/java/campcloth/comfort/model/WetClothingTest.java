package campcloth.comfort.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.comfort.model.WetClothing.Wetting;
import org.junit.jupiter.api.Test;

class WetClothingTest {

    private static final Motion WALK = Motion.conditioned(2, 0.3, 100);
    private static final Air DRIZZLE = new Air(5, 5, 2, 90);

    @Test
    void dryClothingLosesNothing() {
        WetClothing dry = WetClothing.inComfort(0.2, DRIZZLE, WALK, 100, new Wetting(0, 0));
        assertThat(dry.equivalentM2KW()).isEqualTo(0.2);
        assertThat(dry.dryingWm2()).isZero();
    }

    @Test
    void withoutDryingOnlyTheLostShareIsOff() {
        WetClothing damp = WetClothing.inComfort(0.2, DRIZZLE, WALK, 100, new Wetting(0.1, 0));
        assertThat(damp.equivalentM2KW()).isCloseTo(0.18, within(1e-9));
    }

    /**
     * By hand: I = 0.155, v = 2, w = 0.3: I_a,r = 0.092 exp(-0.366) - 0.0045 = 0.0593 m2 K/W, so h = 16.86 W/(m2 K). Skin 35.7 - 2.85 =
     * 32.85 degrees, f_cl = 1.1855. Dry: R = 0.155 + 0.0593 / 1.1855 = 0.2050, 27.85 / 0.2050 = 135.8 W/m2; surface at 11.8 degrees.
     * Wet all over, in saturated air: h_r = 3.64, so h_c = 13.22; p_s is 0.872 kPa at 5 and 1.165 at 9.2 degrees, 0.0698 kPa/K, so
     * 16.5 * 13.22 * 0.0698 = 15.2 W/(m2 K) beside 16.86: R = 0.155 + 1 / (1.1855 * 32.1) = 0.1813, 27.85 / 0.1813 = 153.6 W/m2:
     * 17.8 more. As much is lost dry through I with I + 0.0593 / (1 + 1.197 I) = 0.1813: I = 0.1295.
     */
    @Test
    void dryingTakesWhatTheSurfaceGivesOff() {
        Air saturated = new Air(5, 5, 2, 100);
        WetClothing wet = WetClothing.inComfort(0.155, saturated, WALK, 100, new Wetting(0, 1));
        assertThat(wet.dryingWm2()).isCloseTo(17.8, within(0.3));
        assertThat(wet.equivalentM2KW()).isCloseTo(0.1295, within(0.0007));
    }

    @Test
    void dryerAirTakesMore() {
        Wetting wet = new Wetting(0.3, 0.6);
        double humid = WetClothing.inComfort(0.2, DRIZZLE, WALK, 100, wet).dryingWm2();
        double dryer =
                WetClothing.inComfort(0.2, new Air(5, 5, 2, 50), WALK, 100, wet).dryingWm2();
        assertThat(dryer).isGreaterThan(humid + 5);
    }

    @Test
    void whereTheSurroundingsWarmTheWearerWaterTakesOnlyInsulation() {
        Air oven = new Air(45, 60, 0.5, 30);
        WetClothing wet = WetClothing.inComfort(0.1, oven, Motion.conditioned(0.5, 0, 60), 60, new Wetting(0.3, 0.6));
        assertThat(wet.equivalentM2KW()).isCloseTo(0.07, within(1e-9));
    }
}
