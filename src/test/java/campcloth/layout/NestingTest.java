package campcloth.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Refused;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class NestingTest {

    private static final Effort BRIEF = new Effort(0.2, 7);

    private static Piece plain(String name, Outline outline, int count) {
        return new Piece(name, outline, count, true, false, false);
    }

    private static Layout laid(Strip strip, List<Piece> pieces, Effort effort) {
        Layout layout = Nesting.layout(strip, pieces, effort);
        LayoutCheck.holds(layout, strip, pieces, strip + " " + pieces + " " + effort);
        assertThat(Verification.faults(layout)).isEmpty();
        return layout;
    }

    @Test
    void twoHalvesThatFillTheWidthLieSideBySide() {
        List<Piece> halves = List.of(plain("half", Outline.rectangle(69, 100), 2));
        assertThat(laid(Strip.ofWidth(138), halves, BRIEF).lengthCm()).isCloseTo(100, within(1e-9));
        assertThat(laid(Strip.ofWidth(137), halves, BRIEF).lengthCm()).isCloseTo(200, within(1e-9));
        assertThat(laid(Strip.ofWidth(137), halves, BRIEF).lowerBoundCm()).isCloseTo(200, within(1e-6));
    }

    @Test
    void widthsThatDoublesCannotHoldStillFillTheWidth() {
        List<Piece> thirds = List.of(
                plain("a", Outline.rectangle(0.1, 30), 1),
                plain("b", Outline.rectangle(0.2, 30), 1),
                plain("c", Outline.rectangle(139.7, 30), 1));
        assertThat(laid(Strip.ofWidth(140), thirds, BRIEF).lengthCm()).isCloseTo(30, within(1e-6));
    }

    @Test
    void turnedTrapezoidsInterlock() {
        Outline gore = RandomPieces.trapezoid(60, 20, 80);
        Layout free = laid(Strip.ofWidth(140), List.of(plain("gore", gore, 3)), BRIEF);
        assertThat(free.lengthCm()).isCloseTo(80, within(1e-6));
        assertThat(free.placements()).anyMatch(Placement::turned).anyMatch(p -> !p.turned());
    }

    @Test
    void napKeepsEveryPieceUpright() {
        Outline gore = RandomPieces.trapezoid(60, 20, 80);
        Piece napped = new Piece("gore", gore, 3, false, false, false);
        Layout layout = laid(Strip.ofWidth(140), List.of(napped), BRIEF);
        assertThat(layout.placements()).noneMatch(Placement::turned);
        assertThat(layout.lengthCm()).isGreaterThan(80);
    }

    @Test
    void pairsHoldAsManyLeftsAsRights() {
        Outline sleeve = RandomPieces.outline(0, 0, 40, 0, 30, 50, 5, 55);
        Piece pair = new Piece("sleeve", sleeve, 4, true, false, true);
        Layout layout = laid(Strip.ofWidth(100), List.of(pair), BRIEF);
        assertThat(layout.placements()).filteredOn(Placement::mirrored).hasSize(2);
    }

    @Test
    void smallPieceLiesInTheHollowOfALargeOne() {
        Outline frame = RandomPieces.outline(0, 0, 100, 0, 100, 60, 70, 60, 70, 20, 30, 20, 30, 60, 0, 60);
        List<Piece> pieces = List.of(plain("frame", frame, 1), plain("pocket", Outline.rectangle(40, 40), 1));
        Layout layout = laid(Strip.ofWidth(100), pieces, BRIEF);
        assertThat(layout.lengthCm()).isCloseTo(60, within(1e-6));
        assertThat(layout.usedPercent()).isCloseTo(100, within(1e-6));
    }

    @Test
    void gapKeepsPiecesApart() {
        List<Piece> halves = List.of(plain("half", Outline.rectangle(69, 100), 2));
        assertThat(laid(new Strip(138, 0.5), halves, BRIEF).lengthCm()).isCloseTo(200.5, within(1e-6));
        assertThat(laid(new Strip(138.5, 0.5), halves, BRIEF).lengthCm()).isCloseTo(100, within(1e-6));
    }

    @Test
    void sameSeedGivesTheSameLayout() {
        List<Piece> pieces = new RandomPieces(3).some(8, 100);
        Layout first = Nesting.layout(Strip.ofWidth(140), pieces, new Effort(0.3, 5));
        assertThat(Nesting.layout(Strip.ofWidth(140), pieces, new Effort(0.3, 5)))
                .isEqualTo(first);
    }

    @Test
    void piecesOfOneNameAreCountedOn() {
        List<Piece> pieces = List.of(
                plain("gusset", Outline.rectangle(10, 10), 2),
                new Piece("gusset", RandomPieces.trapezoid(20, 5, 12), 2, false, false, true));
        Layout layout = laidWithSharedName(pieces);
        assertThat(layout.placements()).extracting(Placement::copy).containsExactly(1, 2, 3, 4);
        assertThat(layout.pieceOf(layout.placements().get(3))).isSameAs(pieces.get(1));
        assertThat(layout.placements().get(2).mirrored()).isFalse();
        assertThat(layout.placements().get(3).mirrored()).isTrue();
    }

    private static Layout laidWithSharedName(List<Piece> pieces) {
        Layout layout = Nesting.layout(Strip.ofWidth(50), pieces, BRIEF);
        assertThat(Verification.faults(layout)).isEmpty();
        return layout;
    }

    @Test
    void pieceWiderThanTheClothIsRefusedByName() {
        List<Piece> pieces = List.of(
                plain("collar", Outline.rectangle(40, 10), 1), plain("cloak", Outline.rectangle(150.2, 100), 1));
        Refused refused = catchThrowableOfType(Refused.class, () -> Nesting.layout(Strip.ofWidth(140), pieces, BRIEF));
        assertThat(refused.refusals()).singleElement().satisfies(refusal -> {
            assertThat(refusal.field()).isEqualTo("pieces[1].outlineCm");
            assertThat(refusal.because()).contains("cloak", "150.2", "140.0");
        });
    }

    @Test
    void moreThanTwoHundredCopiesOrNoneAreRefused() {
        List<Piece> many =
                List.of(plain("patch", Outline.rectangle(5, 5), 200), plain("band", Outline.rectangle(5, 5), 1));
        for (List<Piece> pieces : List.of(many, List.<Piece>of())) {
            Refused refused =
                    catchThrowableOfType(Refused.class, () -> Nesting.layout(Strip.ofWidth(140), pieces, BRIEF));
            assertThat(refused.refusals()).extracting("field").containsExactly("pieces");
        }
    }

    @Test
    void twoHundredDifferentPiecesAreLaid() {
        RandomPieces random = new RandomPieces(11);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            pieces.add(new Piece("patch " + i, random.outline(40), 1, true, true, false));
        }
        laid(Strip.ofWidth(150), pieces, new Effort(0.5, 1));
    }

    @Test
    void outlinesOfThousandsOfPointsAreLaid() {
        RandomPieces random = new RandomPieces(12);
        List<Point> circle = new ArrayList<>();
        for (int i = 0; i < 10_000; i++) {
            double angle = 2 * Math.PI * i / 10_000;
            circle.add(new Point(30 * Math.cos(angle), 30 * Math.sin(angle)));
        }
        List<Piece> pieces = List.of(plain("round", Outline.of(circle), 2), plain("star", random.star(40, 3000), 2));
        Layout layout = laid(Strip.ofWidth(140), pieces, BRIEF);
        assertThat(layout.lengthCm()).isLessThan(250);
    }

    @Test
    void randomPiecesNeverOverlapNorLeaveTheCloth() {
        for (long seed = 1; seed <= 300; seed++) {
            RandomPieces random = new RandomPieces(seed);
            double width = random.between(60, 160);
            double gap = seed % 3 == 0 ? random.between(0.1, 1) : 0;
            List<Piece> pieces = random.some(1 + (int) (seed % 9), width);
            laid(new Strip(width, gap), pieces, new Effort(0.02, seed));
        }
    }

    @Test
    void moreEffortIsAtMostALittleWorse() {
        for (long seed = 1; seed <= 10; seed++) {
            List<Piece> pieces = new RandomPieces(seed).some(6, 120);
            double brief =
                    laid(Strip.ofWidth(120), pieces, new Effort(0.02, seed)).lengthCm();
            double thorough =
                    laid(Strip.ofWidth(120), pieces, new Effort(0.3, seed)).lengthCm();
            assertThat(thorough).as("seed " + seed).isLessThan(1.03 * brief);
        }
    }

    @Test
    void secondsOutsideTheRangeAreRefused() {
        for (double seconds : new double[] {0, -1, 120.1, Double.NaN, Double.POSITIVE_INFINITY}) {
            Refused refused = catchThrowableOfType(Refused.class, () -> new Effort(seconds, 1));
            assertThat(refused.refusals()).extracting("field").containsExactly("seconds");
        }
    }
}
