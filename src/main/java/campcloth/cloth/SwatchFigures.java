package campcloth.cloth;

import campcloth.cloth.swatch.SwatchArithmetic;
import campcloth.figure.Figure;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What follows from a swatch.
 *
 * @param figures measured figures of the cloth, each with its interval
 * @param warp what marks along the cloth say
 * @param weft what marks across it say
 * @param windRatio air permeability over that of the cloth beside it
 * @param absorbency how it takes a drop
 * @param notes what to bear in mind
 */
public record SwatchFigures(
        Map<Property, Figure> figures,
        Optional<MarkedShrinkage> warp,
        Optional<MarkedShrinkage> weft,
        Optional<Double> windRatio,
        Optional<Absorbency> absorbency,
        List<String> notes) {

    public SwatchFigures {
        EnumMap<Property, Figure> copy = new EnumMap<>(Property.class);
        copy.putAll(figures);
        figures = Collections.unmodifiableMap(copy);
        notes = List.copyOf(notes);
    }

    public static SwatchFigures of(Swatch swatch) {
        return SwatchArithmetic.of(swatch);
    }
}
