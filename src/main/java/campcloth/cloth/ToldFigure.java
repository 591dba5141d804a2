package campcloth.cloth;

import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import java.util.Optional;

/**
 * A figure of a cloth as somebody told it: bare, whole, both or not at all. Who was shown a figure sends both back and may have
 * changed either; the one that was changed counts. A bare number that a person gave is declared.
 *
 * @param property which figure
 * @param bare the number alone
 * @param whole the number with its interval, basis and source
 */
public record ToldFigure(Property property, Optional<Double> bare, Optional<Figure> whole) {

    /** Where a figure comes from of which nobody said more. */
    public static final String MAKER = "stated by the maker";

    /** A bare number that a person gave. */
    public static Figure declared(double value) {
        return Figure.exact(value, Basis.DECLARED, MAKER);
    }

    /**
     * A number typed over the one that was shown. Where it is the same the figure stays whole.
     *
     * @param shown the figure that was shown, where there was one
     */
    public static Optional<Figure> typed(Property property, Optional<Double> typed, Optional<Figure> shown) {
        return new ToldFigure(property, typed, typed.flatMap(number -> shown)).figure(shown);
    }

    /**
     * The figure meant; empty where none was told.
     *
     * @param before what was known before, where there was anything
     * @throws Refused where it is out of range, or bare and whole say different things that are both new
     */
    public Optional<Figure> figure(Optional<Figure> before) {
        whole.ifPresent(this::mustBeInRange);
        if (bare.isEmpty()) {
            return whole;
        }
        double number = property.range().check(bare.get());
        if (whole.isEmpty()) {
            return Optional.of(declared(number));
        }
        if (whole.get().value() == number
                || before.filter(known -> known.value() == number).isPresent()) {
            return whole;
        }
        if (before.equals(whole)) {
            return Optional.of(declared(number));
        }
        throw Refused.of(
                property.field(),
                "says something else than figures." + property.field() + ".value",
                "give the same value in both, or leave one out");
    }

    private void mustBeInRange(Figure figure) {
        Refused.within("figures", () -> {
            property.range().check(figure.value());
            property.range().check(figure.low());
            return property.range().check(figure.high());
        });
    }
}
