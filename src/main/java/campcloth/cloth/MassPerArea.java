package campcloth.cloth;

/**
 * Mass per area in g/m2 from the unit of American sources. Follows from the definitions of 1959: an ounce (avoirdupois) is
 * 28.349523125 g, a yard 0.9144 m.
 *
 * <p>{@code 1 oz/yd2 = 33.906 g/m2}.
 */
public final class MassPerArea {

    /** Exact since 1959. */
    public static final double METRES_PER_YARD = 0.9144;

    private static final double GRAMS_PER_OUNCE = 28.349523125;

    private MassPerArea() {}

    /** g/m2 of so many ounces per square yard. */
    public static double gsmOfOuncesPerSquareYard(double ouncesPerSquareYard) {
        return ouncesPerSquareYard * GRAMS_PER_OUNCE / (METRES_PER_YARD * METRES_PER_YARD);
    }
}
