package campcloth.cloth;

import campcloth.cloth.swatch.Plausibility;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Declared figures that lie so far from what the rest of the cloth lets expect that a slip of the pen or of the unit is likelier than
 * the cloth. Each is held against the estimate that would stand without it, by the limits of {@link Plausibility}: a note, never a
 * refusal. A price is never estimated and so never doubted.
 */
public final class ToldDoubts {

    private ToldDoubts() {}

    /** What to look at again, in sentences; empty where nothing is strange. */
    public static List<String> of(Cloth cloth) {
        List<String> doubts = new ArrayList<>();
        cloth.figures().forEach((property, figure) -> {
            if (figure.basis() == Basis.DECLARED) {
                doubt(cloth, property, figure).ifPresent(doubts::add);
            }
        });
        return doubts;
    }

    private static Optional<String> doubt(Cloth cloth, Property property, Figure told) {
        Map<Property, Figure> others = new EnumMap<>(Property.class);
        others.putAll(cloth.figures());
        others.remove(property);
        return Estimates.complete(cloth.with(others))
                .figure(property)
                .filter(expected -> Plausibility.isFar(property, told.value(), expected))
                .map(
                        expected -> "Far from what such cloth lets expect: " + property.field() + " "
                                + amount(told.value(), property) + " told, " + amount(expected.low(), property) + " to "
                                + amount(expected.high(), property)
                                + " estimated from the rest. See that it is this figure, in this unit; it stands as it was told.");
    }

    private static String amount(double value, Property property) {
        return Words.number(value) + " " + property.unit();
    }
}
