package campcloth.fire.model;

/**
 * Radiant heat at a distance from a fire, taken as a point: {@code q = chi Q / (4 pi R^2)}, kW/m2, with R from the centre of the
 * flames. Source: NUREG-1805, chapter 5, point source model without wind.
 *
 * <p>Holds from about 2.5 fire diameters outwards; nearer, flames may reach the wearer and the formula is no measure of that. It
 * leaves out wind that bends the flames, gusts, flare-ups and embers.
 */
public final class PointSource {

    /** Radiative fraction for the value shown: the default of NUREG-1805, chapter 5. */
    public static final double NOMINAL_FRACTION = 0.30;

    /** Radiative fraction for grading: upper end for wood flames, about 0.30 to 0.38 (from memory); project choice. */
    public static final double GRADING_FRACTION = 0.40;

    /**
     * Least distance in fire diameters (from memory, no source found; a report on pool fires says only that the formula is
     * accurate far off and errs within a few diameters of the fire).
     */
    public static final double LEAST_DIAMETERS = 2.5;

    /**
     * Heat release per ground area of a stacked wood fire, kW/m2: project choice. A wider fire of the same heat release would
     * burn more weakly; a 100 kW fire is 0.4 m wide, so its near field ends at 1 m.
     */
    private static final double HEAT_PER_AREA_KW_M2 = 800;

    private PointSource() {}

    /** Radiant flux, kW/m2. */
    public static double fluxKwM2(double fraction, double fireKw, double distanceM) {
        return fraction * fireKw / (4 * Math.PI * distanceM * distanceM);
    }

    /** Distance at which the flux is as given, m. */
    public static double distanceM(double fraction, double fireKw, double fluxKwM2) {
        return Math.sqrt(fraction * fireKw / (4 * Math.PI * fluxKwM2));
    }

    /** Width of the fire on the ground, m. */
    public static double fireDiameterM(double fireKw) {
        return Math.sqrt(4 * fireKw / (Math.PI * HEAT_PER_AREA_KW_M2));
    }

    /** Distance within which the formula does not hold, m: to be taken as contact with flame. */
    public static double nearFieldM(double fireKw) {
        return LEAST_DIAMETERS * fireDiameterM(fireKw);
    }
}
