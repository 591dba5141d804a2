package campcloth.store;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.Fibres;
import campcloth.figure.Figure;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A cloth as it is kept in the column {@code body}: names here are what stands in people's databases and must stay readable.
 *
 * @param blend percent of mass by fibre key
 * @param figures figures by the field name of their property
 */
record ClothBody(
        String name,
        Map<String, Double> blend,
        Weave weave,
        Surface surface,
        Finish finish,
        boolean nap,
        boolean stretch,
        Map<String, Figure> figures,
        String note) {

    static ClothBody of(Cloth cloth) {
        Map<String, Double> blend = new LinkedHashMap<>();
        cloth.blend().shares().forEach(s -> blend.put(s.fibre().key(), s.percent()));
        Map<String, Figure> figures = new LinkedHashMap<>();
        cloth.figures().forEach((property, figure) -> figures.put(property.field(), figure));
        return new ClothBody(
                cloth.name(),
                blend,
                cloth.weave(),
                cloth.surface(),
                cloth.finish(),
                cloth.nap(),
                cloth.stretch(),
                figures,
                cloth.note());
    }

    /** The cloth again; a fibre that a replaced catalogue no longer knows counts as unknown, the worst plausible one. */
    Cloth cloth(Fibres fibres) {
        Map<Property, Figure> known = new EnumMap<>(Property.class);
        for (Property property : Property.values()) {
            Figure figure = figures.get(property.field());
            if (figure != null) {
                known.put(property, figure);
            }
        }
        return new Cloth(name, blend(fibres), weave, surface, finish, nap, stretch, known, note);
    }

    private Blend blend(Fibres fibres) {
        Map<String, Double> shares = new LinkedHashMap<>();
        blend.forEach((key, percent) ->
                shares.merge(fibres.named(key).isPresent() ? key : Fibre.UNKNOWN, percent, Double::sum));
        return fibres.blend(shares);
    }
}
