package campcloth.errand;

import static campcloth.figure.Words.fixed;
import static campcloth.figure.Words.number;

import campcloth.cloth.Property;
import campcloth.cloth.Weave;
import java.util.ArrayList;
import java.util.List;

/** What to do before cutting, in its order. Common practice, no source, where none is named. */
final class BeforeCutting {

    private BeforeCutting() {}

    static List<SheetStep> steps(CutErrand cut) {
        List<SheetStep> steps = new ArrayList<>();
        steps.add(new SheetStep(
                "Look the whole length over in good light, both faces: mark holes, stains and uneven stripes with a"
                        + " thread, and lay the pieces around them.",
                "What is cut is not taken back. " + ErrandSheet.PRACTICE));
        steps.add(new SheetStep(cut.toCut().washing(), shrinkage(cut)));
        steps.add(straighten(cut));
        if (!cut.isClosed() && !cut.sewn().hasPile()) {
            steps.add(new SheetStep(
                    "Press it along the grain until it lies flat" + (cut.melts() ? ", with a cool iron." : "."),
                    "A crease that is cut in is a piece of the wrong size. " + ErrandSheet.PRACTICE));
        }
        steps.add(measure(cut));
        if (cut.cloth().nap()) {
            steps.add(new SheetStep(
                    "Mark which way is up on the whole length.",
                    "The cloth has a nap: every piece lies the same way up. " + ErrandSheet.PRACTICE));
        }
        return steps;
    }

    private static String shrinkage(CutErrand cut) {
        if (cut.isClosed()) {
            return "Nothing is reckoned for shrinkage. " + ErrandSheet.PRACTICE;
        }
        return "Shrinkage along " + KnownAs.words(cut.cloth().required(Property.SHRINK_WARP_PERCENT), "%")
                + ", across " + KnownAs.words(cut.cloth().required(Property.SHRINK_WEFT_PERCENT), "%")
                + ". How to wash: common practice, no source.";
    }

    private static SheetStep straighten(CutErrand cut) {
        Weave weave = cut.cloth().weave();
        String because = "A piece cut off the grain twists as it is worn. " + ErrandSheet.PRACTICE;
        if (weave.isKnit() || cut.sewn().holdsItsCutEdge() || cut.isClosed()) {
            return new SheetStep(
                    "Square both ends with a right angle from the selvedge, or along a row of loops.", because);
        }
        return new SheetStep(
                "Draw a thread of the weft at both ends and cut along the gap. Fold it selvedge to selvedge: where the"
                        + " corners do not meet, pull it straight on the cross while it is damp.",
                because);
    }

    private static SheetStep measure(CutErrand cut) {
        return new SheetStep(
                "Measure it as it lies now: the layout takes "
                        + fixed(cut.plan().usableWidthCm(), 1)
                        + " cm between the selvedges and " + fixed(cut.plan().netLengthCm(), 1)
                        + " cm of length. Where it has less, plan again before cutting.",
                "Reckoned from a width of " + number(cut.toCut().widthCm()) + " cm with selvedges of "
                        + number(cut.toCut().selvedgeCm()) + " cm"
                        + (cut.toCut().isWashedFirst() ? " and the shrinkage above." : "."));
    }
}
