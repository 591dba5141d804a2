package campcloth.cloth.swatch;

import campcloth.cloth.WashedMarks;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What to bear in mind of a piece that was washed, whichever way the marks lie. */
final class WashNotes {

    /** Each way; ISO 3759. */
    private static final double LEAST_SIDE_CM = 50;

    private WashNotes() {}

    static List<String> of(WashedMarks marks) {
        List<String> notes = new ArrayList<>();
        Stream.of(marks.specimenLengthCm(), marks.specimenWidthCm())
                .flatMap(Optional::stream)
                .min(Double::compare)
                .filter(side -> side < LEAST_SIDE_CM)
                .ifPresent(side -> notes.add("The piece is " + Words.number(side)
                        + " cm on a side; ISO 3759 asks for 50 x 50 cm or more. Cut edges fray and curl, and in a small"
                        + " piece they count."));
        String wash = marks.washing().words();
        notes.add(
                wash.isEmpty()
                        ? "How it was washed and dried was not told; shrinkage holds only for the same wash."
                        : "Shrinkage holds for this wash: " + wash
                                + ". Hotter water, more movement or a tumble dryer can take more.");
        if (marks.warp().isEmpty() || marks.weft().isEmpty()) {
            notes.add("Marks lie in one direction only; the other keeps the figure it had.");
        }
        return notes;
    }
}
