package campcloth.cloth;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.util.List;

/**
 * Pieces of known area that were weighed one by one: mass per area in the manner of ISO 3801 (from memory).
 *
 * @param pieces 1 to 12 pieces
 * @param scaleStepG smallest step of the scale, 0.0001 to 10 g
 * @param rulerStepMm smallest step of the ruler, 0.1 to 10 mm
 */
public record WeighedPieces(List<Piece> pieces, double scaleStepG, double rulerStepMm) {

    public static final int MOST_PIECES = 12;

    private static final Range SCALE_STEP = new Range("scaleStepG", 0.0001, 10, "g");

    /**
     * One piece.
     *
     * @param lengthCm one side, 1 to 500 cm
     * @param widthCm the other side
     * @param massG what it weighs
     */
    public record Piece(double lengthCm, double widthCm, double massG) {

        private static final Range LENGTH = new Range("lengthCm", 1, 500, "cm");
        private static final Range WIDTH = new Range("widthCm", 1, 500, "cm");
        private static final Range AREA = new Range("areaCm2", 1, 250_000, "cm2");
        private static final Range MASS = new Range("massG", 0.01, 20_000, "g");

        public Piece {
            LENGTH.check(lengthCm);
            WIDTH.check(widthCm);
            MASS.check(massG);
            double gsm = massG / (lengthCm * widthCm) * 10_000;
            if (!Property.WEIGHT_GSM.range().contains(gsm)) {
                throw Refused.of(
                        "massG",
                        "makes " + Words.number(gsm) + " g/m2 on " + Words.number(lengthCm * widthCm) + " cm2",
                        "give g and cm; cloth weighs 10 to 2000 g/m2");
            }
        }

        /** A piece of which the area is known; its sides count as those of a square. */
        public static Piece ofArea(double areaCm2, double massG) {
            double sideCm = Math.sqrt(AREA.check(areaCm2));
            return new Piece(sideCm, sideCm, massG);
        }

        public double areaCm2() {
            return lengthCm * widthCm;
        }

        public double weightGsm() {
            return massG / areaCm2() * 10_000;
        }
    }

    public WeighedPieces {
        pieces = List.copyOf(pieces);
        SCALE_STEP.check(scaleStepG);
        WashedMarks.RULER_STEP.check(rulerStepMm);
        if (pieces.isEmpty() || pieces.size() > MOST_PIECES) {
            throw Refused.of("pieces", "are " + pieces.size(), "give 1 to " + MOST_PIECES + " pieces");
        }
        for (int i = 0; i < pieces.size(); i++) {
            if (pieces.get(i).massG() < scaleStepG) {
                throw Refused.of(
                        "pieces[" + i + "].massG",
                        "is less than the scale can tell",
                        "weigh a larger piece, or several together, or use a finer scale");
            }
        }
    }
}
