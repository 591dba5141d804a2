package campcloth.cloth;

/**
 * Air through a bed of fibres under a small difference of pressure: Darcy's law with the permeability of Kozeny and Carman
 * (Carman 1937, "Fluid flow through granular beds").
 *
 * <p>{@code v = K dP / (mu t)} with {@code K = e^3 d^2 / (16 k (1 - e)^2)}; d the fibre diameter, whose surface per volume is
 * 4/d, e the porosity, k = {@value #KOZENY}, mu the viscosity of air at 20 degrees Celsius, dP = 100 Pa as in ISO 9237.
 * Worked example: linen of 0.45 mm, porosity 0.719, 17 um: 208 mm/s.
 *
 * <p>Laminar flow between single fibres only; the holes between threads are not in it, see {@link AirPermeability}. At a given
 * weight and density it never falls where the thickness or the diameter rises.
 */
final class KozenyCarman {

    private static final double KOZENY = 5;
    private static final double AIR_VISCOSITY_PA_S = 1.81e-5;
    private static final double HEAD_PA = 100;

    private KozenyCarman() {}

    /** Air velocity at 100 Pa, mm/s. */
    static double velocityMmS(double porosity, double fibreDiameterUm, double thicknessMm) {
        double d = fibreDiameterUm * 1e-6;
        double solid = 1 - porosity;
        double permeabilityM2 = Math.pow(porosity, 3) * d * d / (16 * KOZENY * solid * solid);
        return 1000 * permeabilityM2 * HEAD_PA / (AIR_VISCOSITY_PA_S * thicknessMm * 1e-3);
    }
}
