package campcloth.cloth.swatch;

import campcloth.cloth.Property;
import campcloth.cloth.Swatch;
import campcloth.cloth.WeighedPieces;
import campcloth.cloth.WeighedPieces.Piece;
import campcloth.figure.Figure;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * Mass per area: mass over area of each piece, mean over the pieces (ISO 3801, pieces cut to a known area; from memory). What
 * cannot be read: one step of the scale, for the reading and its zero are each off by up to half a step, and one step of the
 * ruler on each side; shares added up, so that the interval is rather too wide.
 */
final class WeightOfPieces {

    private static final double MM_PER_CM = 10;
    /** From here on the scale is said to be too coarse; project choice. */
    private static final double COARSE = 0.05;

    private WeightOfPieces() {}

    static Figure figure(WeighedPieces weighed, Swatch swatch) {
        Spread spread =
                Spread.of(weighed.pieces().stream().map(Piece::weightGsm).toList());
        double readingError = weighed.pieces().stream()
                .mapToDouble(piece -> piece.weightGsm() * share(piece, weighed))
                .average()
                .orElseThrow();
        int count = weighed.pieces().size();
        return MeasuredFigure.of(
                Property.WEIGHT_GSM,
                spread,
                readingError,
                swatch,
                MeasuredFigure.counted(count, "piece weighed", "pieces weighed"));
    }

    private static double share(Piece piece, WeighedPieces weighed) {
        double stepCm = weighed.rulerStepMm() / MM_PER_CM;
        return scaleShare(piece, weighed) + stepCm / piece.lengthCm() + stepCm / piece.widthCm();
    }

    private static double scaleShare(Piece piece, WeighedPieces weighed) {
        return weighed.scaleStepG() / piece.massG();
    }

    static List<String> notes(WeighedPieces weighed) {
        List<String> notes = new ArrayList<>();
        weighed.pieces().stream()
                .filter(piece -> scaleShare(piece, weighed) > COARSE)
                .findFirst()
                .ifPresent(piece -> notes.add("The scale reads to " + Words.number(weighed.scaleStepG())
                        + " g and a piece weighs " + Words.number(piece.massG()) + " g: that alone may be off by "
                        + Words.number(100 * scaleShare(piece, weighed))
                        + " %, and the interval says so. Cut pieces of " + enoughCm2(piece, weighed)
                        + " cm2 or more, or use a finer scale."));
        if (weighed.pieces().size() == 1) {
            notes.add("One piece was weighed: the interval holds only what could be misread, not how the cloth differs"
                    + " from place to place.");
        }
        return notes;
    }

    private static String enoughCm2(Piece piece, WeighedPieces weighed) {
        return Words.number(Math.ceil(piece.areaCm2() * scaleShare(piece, weighed) / COARSE / 100) * 100);
    }
}
