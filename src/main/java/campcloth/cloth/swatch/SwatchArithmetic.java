package campcloth.cloth.swatch;

import campcloth.cloth.Absorbency;
import campcloth.cloth.DripTest;
import campcloth.cloth.MarkedShrinkage;
import campcloth.cloth.Property;
import campcloth.cloth.Swatch;
import campcloth.cloth.SwatchFigures;
import campcloth.cloth.WashedMarks;
import campcloth.figure.Figure;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Goes through what was measured, one thing after the other. */
public final class SwatchArithmetic {

    private static final double TAKEN_UP_S = 5;
    private static final String AS_IT_LAY =
            "It had not lain at 20 degrees Celsius and 65 % humidity (ISO 139): fibres that take up water weigh and measure a little more"
                    + " on damp days than on dry ones.";

    private final Swatch swatch;
    private final Map<Property, Figure> figures = new EnumMap<>(Property.class);
    private final List<String> notes = new ArrayList<>();

    private SwatchArithmetic(Swatch swatch) {
        this.swatch = swatch;
    }

    public static SwatchFigures of(Swatch swatch) {
        return new SwatchArithmetic(swatch).figures();
    }

    private SwatchFigures figures() {
        swatch.weighed().ifPresent(weighed -> {
            figures.put(Property.WEIGHT_GSM, WeightOfPieces.figure(weighed, swatch));
            notes.addAll(WeightOfPieces.notes(weighed));
        });
        Optional<MarkedShrinkage> warp = swatch.washed().flatMap(marks -> shrinkage(marks, true));
        Optional<MarkedShrinkage> weft = swatch.washed().flatMap(marks -> shrinkage(marks, false));
        swatch.washed().ifPresent(marks -> notes.addAll(WashNotes.of(marks)));
        swatch.stack().ifPresent(stack -> {
            ThicknessOfStack.figure(stack, swatch).ifPresent(mm -> figures.put(Property.THICKNESS_MM, mm));
            notes.addAll(ThicknessOfStack.notes(stack));
        });
        swatch.wind().ifPresent(wind -> {
            WindByReference.figure(wind, swatch).ifPresent(v -> figures.put(Property.AIR_PERMEABILITY_MM_S, v));
            notes.addAll(WindByReference.notes(wind));
        });
        if (!swatch.conditioned()
                && (swatch.weighed().isPresent() || swatch.washed().isPresent())) {
            notes.add(AS_IT_LAY);
        }
        return new SwatchFigures(
                figures,
                warp,
                weft,
                swatch.wind().map(WindByReference::ratio),
                swatch.drip().map(SwatchArithmetic::absorbency),
                notes);
    }

    private Optional<MarkedShrinkage> shrinkage(WashedMarks marks, boolean warp) {
        ShrinkageOfMarks direction = new ShrinkageOfMarks(
                warp ? "along the cloth" : "across the cloth", warp ? marks.warp() : marks.weft(), marks.rulerStepMm());
        if (direction.pairs().isEmpty()) {
            return Optional.empty();
        }
        figures.put(
                warp ? Property.SHRINK_WARP_PERCENT : Property.SHRINK_WEFT_PERCENT,
                direction.figure(warp ? Property.SHRINK_WARP_PERCENT : Property.SHRINK_WEFT_PERCENT, swatch));
        notes.addAll(direction.notes());
        return Optional.of(direction.shrinkage());
    }

    /** By the median, so that one drop on a greasy spot does not decide. */
    static Absorbency absorbency(DripTest drip) {
        List<Double> sorted = drip.seconds().stream().sorted().toList();
        int count = sorted.size();
        double median = (sorted.get((count - 1) / 2) + sorted.get(count / 2)) / 2;
        if (median <= TAKEN_UP_S) {
            return Absorbency.ABSORBS;
        }
        return median < DripTest.STOPPED_AFTER_S ? Absorbency.SLOW : Absorbency.REPELS;
    }
}
