package campcloth.cloth.swatch;

import campcloth.cloth.Property;
import campcloth.figure.Figure;
import campcloth.figure.Words;
import java.util.Optional;

/**
 * Whether a measured figure lies so far from what was known before that a slip is likelier than the cloth: a note, never a
 * refusal. The limits are project choices: a factor of {@value #FACTOR} beyond the known interval, {@value #AIR_FACTOR} for air
 * permeability, {@value #POINTS} points of percent for shrinkage.
 */
public final class Plausibility {

    private static final double FACTOR = 2;
    private static final double AIR_FACTOR = 4;
    private static final double POINTS = 10;

    private Plausibility() {}

    /** What to check, in a sentence or two; empty where nothing is strange. */
    public static Optional<String> doubt(Property property, Figure measured, Figure known) {
        return isFar(property, measured.value(), known)
                ? Optional.of("Far from what was known: " + property.field() + " " + amount(measured.value(), property)
                        + " measured, " + amount(known.value(), property) + " before (" + known.source() + "). "
                        + remedy(property) + " Remove the swatch where it was a slip; until then its figure stands.")
                : Optional.empty();
    }

    /** Whether a value lies so far from what is known. */
    public static boolean isFar(Property property, double measured, Figure known) {
        return switch (property) {
            case SHRINK_WARP_PERCENT, SHRINK_WEFT_PERCENT ->
                measured < known.low() - POINTS || measured > known.high() + POINTS;
            case AIR_PERMEABILITY_MM_S -> isBeyond(measured, known, AIR_FACTOR);
            default -> isBeyond(measured, known, FACTOR);
        };
    }

    private static boolean isBeyond(double measured, Figure known, double factor) {
        return measured * factor < known.low() || measured > known.high() * factor;
    }

    private static String amount(double value, Property property) {
        return Words.number(value) + " " + property.unit();
    }

    private static String remedy(Property property) {
        return switch (property) {
            case WEIGHT_GSM ->
                "See that sides were told in cm, areas in cm2 and masses in g, and where the point stands.";
            case THICKNESS_MM -> "See that the height is that of all layers, in mm, and how many layers there were.";
            case SHRINK_WARP_PERCENT, SHRINK_WEFT_PERCENT ->
                "See that both readings are in cm, of the same pair, before and after.";
            case AIR_PERMEABILITY_MM_S ->
                "See that the times of the two cloths are not exchanged, and the bag is tight.";
            default -> "See that it is the same cloth and the same unit.";
        };
    }
}
