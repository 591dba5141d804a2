package campcloth.comfort.model;

import campcloth.comfort.Reading.OutOfRange;
import campcloth.figure.Range;
import java.util.Optional;

/**
 * Heat balance of ISO 11079:2007 (equations read second-hand), M - W - E - H_res - R - C - S = 0 with W = 0, in W/m2.
 * Valid for air up to 10 degrees Celsius, 58..400 W/m2, relative air speed up to 18 m/s (below 0.4 m/s the standard
 * calculates with 0.4). An average adult, dry clothing, no local cooling: hands, feet and face reach their limits first.
 */
final class ColdBalance {

    static final String MODEL = "IREQ, ISO 11079:2007";

    private static final Range AIR = new Range("air temperature", -60, 10, "degrees Celsius");
    private static final Range METABOLIC = new Range("metabolic rate", 58, 400, "W/m2");
    private static final Range SPEED = new Range("relative air speed", 0, 18, "m/s");

    /** Moisture permeability of the clothing i_m and the Lewis relation as the standard writes it, kPa/K. */
    private static final double VAPOUR_KPA_K = 0.06 / 0.38;

    private final Air air;
    private final double metabolicWm2;
    private final double boundaryM2KW;
    private final double skinC;
    private final double wettedness;
    private final double respirationWm2;
    private final double vapourGapKpa;

    ColdBalance(Air air, double metabolicWm2, Motion motion, ColdCriterion criterion) {
        this.air = air;
        this.metabolicWm2 = metabolicWm2;
        this.boundaryM2KW = motion.boundaryM2KW();
        this.skinC = criterion.skinC(metabolicWm2);
        this.wettedness = criterion.wettedness(metabolicWm2);
        double vapour = air.vapourKpa();
        this.vapourGapKpa = Vapour.saturationKpa(skinC) - vapour;
        double exhaledC = 29 + 0.2 * air.airC();
        this.respirationWm2 = 0.0173 * metabolicWm2 * (Vapour.saturationKpa(exhaledC) - vapour)
                + 0.0014 * metabolicWm2 * (exhaledC - air.airC());
    }

    static Optional<OutOfRange> outside(Air air, double metabolicWm2) {
        return Limit.firstPassed(
                MODEL, new Limit(AIR, air.airC()), new Limit(METABOLIC, metabolicWm2), new Limit(SPEED, air.speedMs()));
    }

    /** Clothing area factor f_cl = 1 + 1.197 I. */
    static double areaFactor(double insulationM2KW) {
        return 1 + 1.197 * insulationM2KW;
    }

    /** What the balance misses by, W/m2: rises with the insulation, falls where more heat is stored. */
    double missingWm2(double insulationM2KW, double storedWm2) {
        double fcl = areaFactor(insulationM2KW);
        double evaporation = wettedness * vapourGapKpa / (VAPOUR_KPA_K * (boundaryM2KW + insulationM2KW)); // E
        double throughClothing = metabolicWm2 - evaporation - respirationWm2 - storedWm2;
        double clothingC = skinC - insulationM2KW * throughClothing; // t_cl
        double hr = radiative(clothingC, air.radiantC());
        double hc = 1 / boundaryM2KW - hr;
        double radiation = fcl * hr * (clothingC - air.radiantC()); // R
        double convection = fcl * hc * (clothingC - air.airC()); // C
        return throughClothing - radiation - convection;
    }

    /** h_r, with the quotient of the fourth powers written out, so that equal temperatures do no harm. */
    static double radiative(double clothingC, double radiantC) {
        double clothing = clothingC + 273;
        double radiant = radiantC + 273;
        return 5.67e-8 * 0.95 * 0.77 * (clothing * clothing + radiant * radiant) * (clothing + radiant);
    }
}
