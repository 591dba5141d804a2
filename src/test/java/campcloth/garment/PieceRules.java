package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.layout.Outline;
import campcloth.layout.Piece;
import campcloth.layout.Point;
import java.util.List;
import java.util.Optional;

/** What holds of every piece, whatever the design: where it lies, and that it is as its flags say. */
final class PieceRules {

    private static final double TOUCH_CM = 1e-6;

    private PieceRules() {}

    static void hold(GarmentPiece piece) {
        Outline outline = piece.outline();
        assertThat(outline.areaCm2()).as(piece.name()).isPositive();
        assertThat(outline.leftCm()).as(piece.name()).isCloseTo(0, within(TOUCH_CM));
        assertThat(outline.lowCm()).as(piece.name()).isCloseTo(0, within(TOUCH_CM));
        assertThat(piece.count()).as(piece.name()).isPositive();
        Piece matched = new Piece(piece.name(), outline, 1, true, false, false, Optional.of(piece.match()));
        assertThat(matched.match()).contains(piece.match());
        if (piece.foldable()) {
            assertThat(isSymmetrical(outline))
                    .as(piece.name() + " is cut on a fold")
                    .isTrue();
        }
        if (piece.pair()) {
            assertThat(isSymmetrical(outline)).as(piece.name() + " is mirrored").isFalse();
            assertThat(piece.count() % 2).as(piece.name()).isZero();
        }
    }

    /** About its lengthwise axis. */
    private static boolean isSymmetrical(Outline outline) {
        List<Point> mirrored = outline.mirrored().points();
        return outline.points().stream()
                .allMatch(p -> mirrored.stream()
                        .anyMatch(
                                m -> Math.abs(m.xCm() - p.xCm()) < TOUCH_CM && Math.abs(m.yCm() - p.yCm()) < TOUCH_CM));
    }
}
