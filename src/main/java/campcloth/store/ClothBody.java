package campcloth.store;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.FlameTreatment;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.SwatchHistory;
import campcloth.cloth.Weave;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.Fibres;
import campcloth.figure.Figure;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A cloth as it is kept in the column {@code body}: names here are what stands in people's databases and must stay readable.
 *
 * @param blend shares in their order: an object would not keep it
 * @param figures figures by the field name of their property
 * @param flameTreatment left out where there is none, as in rows from before it was kept
 * @param beforeSwatches figures known without any swatch; left out where the cloth has none, as in rows from before they were kept
 */
record ClothBody(
        String name,
        List<ShareOf> blend,
        Weave weave,
        Surface surface,
        Finish finish,
        boolean nap,
        boolean stretch,
        Map<String, Figure> figures,
        String note,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable FlameTreatment flameTreatment,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Map<String, Figure> beforeSwatches) {

    /** A fibre by its key, and its percent of mass. */
    record ShareOf(String fibre, double percent) {}

    static ClothBody of(Cloth cloth) {
        List<ShareOf> blend = cloth.blend().shares().stream()
                .map(share -> new ShareOf(share.fibre().key(), share.percent()))
                .toList();
        return new ClothBody(
                cloth.name(),
                blend,
                cloth.weave(),
                cloth.surface(),
                cloth.finish(),
                cloth.nap(),
                cloth.stretch(),
                byField(cloth.figures()),
                cloth.note(),
                cloth.flameTreatment() == FlameTreatment.NONE ? null : cloth.flameTreatment(),
                null);
    }

    /** The same cloth with the figures that follow from its swatches. */
    ClothBody with(SwatchHistory history) {
        return new ClothBody(
                name,
                blend,
                weave,
                surface,
                finish,
                nap,
                stretch,
                byField(history.figures()),
                note,
                flameTreatment,
                history.newestFirst().isEmpty() ? null : byField(history.before()));
    }

    /**
     * That cloth in the place of this, told by who looks at no swatches: figures that stay as they are keep what is known without
     * swatches behind them, others are known without them.
     */
    ClothBody becoming(Cloth cloth) {
        ClothBody told = of(cloth);
        if (beforeSwatches == null) {
            return told;
        }
        Map<String, Figure> without = new LinkedHashMap<>();
        told.figures().forEach((field, figure) -> {
            Figure behind = figure.equals(figures.get(field)) ? beforeSwatches.get(field) : figure;
            if (behind != null) {
                without.put(field, behind);
            }
        });
        return new ClothBody(
                told.name(),
                told.blend(),
                told.weave(),
                told.surface(),
                told.finish(),
                told.nap(),
                told.stretch(),
                told.figures(),
                told.note(),
                told.flameTreatment(),
                without);
    }

    /** Figures that are known without swatches; all of them where the cloth has none. */
    Map<Property, Figure> withoutSwatches() {
        return byProperty(beforeSwatches == null ? figures : beforeSwatches);
    }

    private static Map<String, Figure> byField(Map<Property, Figure> figures) {
        Map<String, Figure> byField = new LinkedHashMap<>();
        for (Property property : Property.values()) {
            Figure figure = figures.get(property);
            if (figure != null) {
                byField.put(property.field(), figure);
            }
        }
        return byField;
    }

    /** The cloth again; a fibre that a replaced catalogue no longer knows counts as unknown, the worst plausible one. */
    Cloth cloth(Fibres fibres) {
        return new Cloth(name, blend(fibres), weave, surface, finish, nap, stretch, byProperty(figures), note)
                .with(flameTreatment == null ? FlameTreatment.NONE : flameTreatment);
    }

    private static Map<Property, Figure> byProperty(Map<String, Figure> figures) {
        Map<Property, Figure> known = new EnumMap<>(Property.class);
        for (Property property : Property.values()) {
            Figure figure = figures.get(property.field());
            if (figure != null) {
                known.put(property, figure);
            }
        }
        return known;
    }

    private Blend blend(Fibres fibres) {
        Map<String, Double> shares = new LinkedHashMap<>();
        blend.forEach(share -> shares.merge(
                fibres.named(share.fibre()).isPresent() ? share.fibre() : Fibre.UNKNOWN, share.percent(), Double::sum));
        return fibres.blend(shares);
    }
}
