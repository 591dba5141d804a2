package campcloth.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Refused;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Pattern, lengths at hand and edges: worked cases, and random ones against a check of its own. */
class LayoutRulesTest {

    private static final Effort BRIEF = new Effort(0.05, 1);

    private static Piece matched(String name, double width, double height, int count, double matchY) {
        return new Piece(
                name,
                Outline.rectangle(width, height),
                count,
                false,
                false,
                false,
                Optional.of(new Match(new Point(0, matchY), Match.USUAL)));
    }

    private static Strip striped(double width, List<MatchPhase> phases) {
        Repeat repeat = new Repeat(Optional.of(12.0), Optional.empty(), 0, 0, false, false, phases);
        return new Strip(width, 0, 0, 0, Optional.of(repeat), List.of());
    }

    private static Layout laid(Strip strip, List<Piece> pieces) {
        Layout layout = Nesting.layout(strip, pieces, BRIEF);
        RulesCheck.holds(layout, strip, pieces, strip + " " + pieces);
        assertThat(Verification.faults(layout)).isEmpty();
        return layout;
    }

    /** Three panels of 50 cm, one above the other: each begins a whole repeat of 12 cm above the last, so 60 cm: 170, not 150. */
    @Test
    void panelsAboveOneAnotherBeginWholeRepeatsApart() {
        Layout layout = laid(striped(60, List.of()), List.of(matched("panel", 60, 50, 3, 10)));
        assertThat(layout.lengthCm()).isCloseTo(170, within(1e-6));
        assertThat(layout.lengthUnmatchedCm().orElseThrow()).isCloseTo(150, within(1e-6));
        assertThat(layout.placements()).extracting(Placement::yCm).containsExactlyInAnyOrder(0.0, 60.0, 120.0);
    }

    /** The match point 10 cm above the hem shall lie 4 cm into the repeat: 10 = 4 + 6, so the first begins at 6 cm. */
    @Test
    void theSaidPlaceOfTheRepeatIsMet() {
        MatchPhase said = new MatchPhase(Match.USUAL, Optional.of(4.0), Optional.empty());
        Layout layout = laid(striped(60, List.of(said)), List.of(matched("panel", 60, 50, 3, 10)));
        assertThat(layout.placements()).extracting(Placement::yCm).containsExactlyInAnyOrder(6.0, 66.0, 126.0);
        assertThat(layout.lengthCm()).isCloseTo(176, within(1e-6));
    }

    /** Side by side, front 95 and back 90 cm with match points 5 cm apart from their hems: the back begins 5 cm higher. */
    @Test
    void piecesSideBySideAreShiftedUntilTheyMatch() {
        Layout layout =
                laid(striped(140, List.of()), List.of(matched("front", 70, 95, 1, 20), matched("back", 70, 90, 1, 15)));
        assertThat(layout.lengthCm()).isCloseTo(95, within(1e-6));
        assertThat(layout.placements()).extracting(Placement::yCm).containsExactly(0.0, 5.0);
    }

    /** Remnants of 100 and 60 cm take the panels of 95 and 55; the third of 50 comes off the bolt. */
    @Test
    void twoLengthsAtHandAreUsedBeforeTheBolt() {
        Strip strip = Strip.ofWidth(70).with(List.of(hand(100), hand(60)));
        List<Piece> pieces = List.of(plain("long", 70, 95), plain("middle", 70, 55), plain("short", 70, 50));
        Layout layout = laid(strip, pieces);
        assertThat(layout.lengthCm()).isCloseTo(50, within(1e-6));
        assertThat(layout.lowerBoundCm()).isCloseTo(40, within(1e-6));
        assertThat(layout.placements())
                .extracting(Placement::atHand)
                .containsExactly(Optional.of(1), Optional.of(2), Optional.empty());
        assertThat(layout.usedPercent()).isCloseTo(100 * 200.0 / 210, within(1e-6));
    }

    @Test
    void nothingIsBoughtWhereTheLengthsAtHandSufficeAndFewAreBegun() {
        Strip strip = Strip.ofWidth(70).with(List.of(hand(60), hand(60), hand(120)));
        Layout layout = laid(strip, List.of(plain("one", 70, 55), plain("two", 70, 55)));
        assertThat(layout.lengthCm()).isZero();
        assertThat(layout.lowerBoundCm()).isZero();
        assertThat(layout.lengthsBegun()).containsExactly(3);
    }

    @Test
    void aNarrowLengthAtHandTakesWhatFits() {
        Strip strip = Strip.ofWidth(70).with(List.of(new AtHand(50, Optional.of(40.0), Optional.empty())));
        Layout layout = laid(strip, List.of(plain("small", 40, 50), plain("large", 41, 50)));
        assertThat(layout.placements()).extracting(Placement::atHand).containsExactly(Optional.of(1), Optional.empty());
    }

    /** 100 cm less 2 x (1.5 + 0.5) leaves 96 for two of 48; the length is 50 and 0.5 at both ends. */
    @Test
    void selvedgesAndEdgesStayFree() {
        Strip strip = new Strip(100, 0, 1.5, 0.5, Optional.empty(), List.of());
        Layout layout = laid(strip, List.of(new Piece("half", Outline.rectangle(48, 50), 2, true, false, false)));
        assertThat(layout.lengthCm()).isCloseTo(51, within(1e-6));
        assertThat(layout.lowerBoundCm()).isCloseTo(51, within(1e-6));
        assertThat(layout.placements()).extracting(Placement::xCm).containsExactlyInAnyOrder(2.0, 50.0);
    }

    @Test
    void aMatchPointOutsideIsRefused() {
        Refused refused = catchThrowableOfType(Refused.class, () -> matched("panel", 60, 50, 1, 51));
        assertThat(refused.refusals().get(0).field()).isEqualTo("matchAtCm");
        assertThat(refused.refusals().get(0).because()).contains("outside");
    }

    @Test
    void twoHundredMatchedPiecesAreLaid() {
        RandomPieces random = new RandomPieces(11);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            Outline outline = random.outline(40);
            pieces.add(new Piece(
                    "patch " + i,
                    outline,
                    1,
                    true,
                    true,
                    false,
                    Optional.of(new Match(outline.points().get(0), Match.USUAL))));
        }
        Repeat repeat = new Repeat(Optional.of(0.5), Optional.of(0.5), 0, 0, true, true, List.of());
        laid(new Strip(150, 0, 1, 0.5, Optional.of(repeat), List.of(hand(200), hand(100))), pieces);
    }

    @Test
    void randomCasesHold() {
        long cases = 10_000;
        double cost = 0;
        int matched = 0;
        for (long seed = 1; seed <= cases; seed++) {
            RandomCases random = new RandomCases(seed);
            Strip strip = random.strip();
            List<Piece> pieces = random.pieces(strip);
            Layout layout = Nesting.layout(strip, pieces, new Effort(0.01, seed), new Once());
            RulesCheck.holds(layout, strip, pieces, "seed " + seed + " " + strip);
            if (layout.lengthUnmatchedCm().isPresent() && layout.lengthCm() > 0) {
                cost += layout.lengthCm()
                        / Math.max(1, layout.lengthUnmatchedCm().get());
                matched++;
            }
        }
        System.out.printf("matching: mean ratio of lengths %.3f in %d cases%n", cost / matched, matched);
        assertThat(matched).isGreaterThan(1000);
    }

    /** Ends each search with its first layout. */
    private static final class Once implements Progress {
        @Override
        public void better(double lengthCm, double usedPercent) {}

        @Override
        public boolean isStopped() {
            return true;
        }
    }

    private static AtHand hand(double length) {
        return new AtHand(length, Optional.empty(), Optional.empty());
    }

    private static Piece plain(String name, double width, double height) {
        return new Piece(name, Outline.rectangle(width, height), 1, false, false, false);
    }
}
