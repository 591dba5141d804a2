package campcloth.comfort;

/**
 * Cloth in figures, one end of their intervals or the middle.
 *
 * @param thicknessMm thickness
 * @param permeabilityMmS air permeability, mm/s at 100 Pa
 * @param vapourResistanceM2PaW R_et, m2 Pa/W
 */
public record Sheet(double thicknessMm, double permeabilityMmS, double vapourResistanceM2PaW) {

    /**
     * Both sewn together flat: thickness and vapour resistance add, air passes one after the other (1/p = 1/p1 + 1/p2, flow in
     * proportion to pressure). The air between them is not counted.
     */
    Sheet with(Sheet other) {
        return new Sheet(
                thicknessMm + other.thicknessMm,
                throughBoth(permeabilityMmS, other.permeabilityMmS),
                vapourResistanceM2PaW + other.vapourResistanceM2PaW);
    }

    private static double throughBoth(double one, double other) {
        return one + other == 0 ? 0 : one * other / (one + other);
    }
}
