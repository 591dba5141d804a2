package campcloth.cloth.swatch;

import campcloth.cloth.LayerStack;
import campcloth.cloth.Property;
import campcloth.cloth.Swatch;
import campcloth.figure.Figure;
import campcloth.figure.Range;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Thickness: height of a stack over how many layers, under a pressure near that of ISO 5084 (1 kPa; 0.1 kPa for lofty cloth; from
 * memory). What cannot be read: one step of the instrument, shared by the layers. Under a pressure far from 0.5 to 1 kPa it is
 * no figure, for cloth gives way.
 */
final class ThicknessOfStack {

    private static final Range USUAL_KPA = new Range("pressure", 0.5, 1, "kPa");
    /** Outside these it is another quantity; project choice. */
    private static final Range COMPARABLE_KPA = new Range("pressure", 0.1, 2, "kPa");

    private static final double COARSE = 0.1;

    private ThicknessOfStack() {}

    static Optional<Figure> figure(LayerStack stack, Swatch swatch) {
        if (!COMPARABLE_KPA.contains(stack.pressureKPa())) {
            return Optional.empty();
        }
        Spread one = Spread.of(List.of(stack.thicknessMm()));
        return Optional.of(MeasuredFigure.of(
                Property.THICKNESS_MM,
                one,
                stack.readingStepMm() / stack.layers(),
                swatch,
                "stack of " + MeasuredFigure.counted(stack.layers(), "layer", "layers") + " under "
                        + Words.number(stack.pressureKPa()) + " kPa"));
    }

    static List<String> notes(LayerStack stack) {
        List<String> notes = new ArrayList<>();
        double kPa = stack.pressureKPa();
        if (!COMPARABLE_KPA.contains(kPa)) {
            notes.add("The weight presses with " + Words.number(kPa)
                    + " kPa: thickness is told at 0.5 to 1 kPa, so this height is kept as a note and is no figure. "
                    + weightFor(stack));
        } else if (!USUAL_KPA.contains(kPa)) {
            notes.add("The weight presses with " + Words.number(kPa)
                    + " kPa; thickness is told at 0.5 to 1 kPa (ISO 5084), and soft cloth is thinner under more. "
                    + weightFor(stack));
        }
        if (stack.readingStepMm() / stack.stackMm() > COARSE) {
            notes.add("The stack is low for what it was read with: "
                    + Words.number(100 * stack.readingStepMm() / stack.stackMm())
                    + " % may be misread. Stack more layers.");
        }
        if (stack.layers() > 1) {
            notes.add("Layers settle into each other; a single layer of rough or raised cloth may stand higher.");
        }
        return notes;
    }

    private static String weightFor(LayerStack stack) {
        return "On its area take " + Words.number(stack.massG() / stack.pressureKPa() * USUAL_KPA.least()) + " to "
                + Words.number(stack.massG() / stack.pressureKPa() * USUAL_KPA.most()) + " g.";
    }
}
