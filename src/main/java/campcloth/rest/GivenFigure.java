package campcloth.rest;

import campcloth.cloth.Property;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A figure of a cloth as it was sent: bare, whole, both or not at all. What is served carries both; whoever sends it back may
 * have changed either, and the one that was changed counts.
 */
record GivenFigure(
        Property property, @Nullable Double bare, @Nullable FigureBody whole) {

    /**
     * The figure meant; empty where none was sent.
     *
     * @param before what was served before, where there was anything
     */
    Optional<Figure> figure(Optional<Figure> before) {
        Optional<Figure> stated = Optional.ofNullable(whole)
                .map(body -> Refused.within("figures." + property.field(), body::figure))
                .map(this::inRange);
        if (bare == null) {
            return stated;
        }
        property.range().check(bare);
        if (stated.isEmpty()) {
            return Optional.of(FigureBody.declared(bare));
        }
        if (stated.get().value() == bare
                || before.filter(b -> b.value() == bare).isPresent()) {
            return stated;
        }
        if (before.equals(stated)) {
            return Optional.of(FigureBody.declared(bare));
        }
        throw Refused.of(
                property.field(),
                "says something else than figures." + property.field() + ".value",
                "give the same value in both, or leave one out");
    }

    private Figure inRange(Figure figure) {
        return Refused.within("figures", () -> {
            property.range().check(figure.value());
            property.range().check(figure.low());
            property.range().check(figure.high());
            return figure;
        });
    }
}
