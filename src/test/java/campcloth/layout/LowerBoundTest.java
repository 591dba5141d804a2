package campcloth.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LowerBoundTest {

    private static Piece piece(Outline outline, int count) {
        return new Piece("piece", outline, count, true, true, false);
    }

    private static double bound(double width, Piece... pieces) {
        return LowerBound.cm(Strip.ofWidth(width), List.of(pieces));
    }

    @Test
    void areaOverWidthWherePiecesAreSmall() {
        assertThat(bound(100, piece(Outline.rectangle(10, 10), 40))).isCloseTo(40, within(1e-6));
    }

    @Test
    void longestPieceWhereOneIsLong() {
        assertThat(bound(100, piece(Outline.rectangle(10, 90), 1))).isCloseTo(90, within(1e-6));
    }

    @Test
    void widePiecesCannotLieSideBySide() {
        assertThat(bound(100, piece(Outline.rectangle(51, 30), 3))).isCloseTo(90, within(1e-6));
        assertThat(bound(100, piece(Outline.rectangle(50, 30), 3))).isCloseTo(45, within(1e-6));
    }

    @Test
    void threeByThreeOfPiecesOverAQuarter() {
        assertThat(bound(100, piece(Outline.rectangle(26, 30), 9))).isCloseTo(90, within(1e-6));
    }

    @Test
    void trapezoidsCountWhereTheyAreWide() {
        Outline gore = RandomPieces.trapezoid(100, 20, 80);
        assertThat(bound(120, piece(gore, 2))).isCloseTo(80, within(1e-6));
        assertThat(bound(90 + 20, piece(gore, 3))).isGreaterThan(3 * 180 * 80 / 3.0 / 110);
    }

    @Test
    void crossSectionsAddUpToTheArea() {
        for (long seed = 1; seed <= 300; seed++) {
            Outline outline = new RandomPieces(seed).outline(100);
            double area = CrossSections.of(outline).stream()
                    .mapToDouble(s -> s.heightCm() * (s.lowWidthCm() + s.highWidthCm()) / 2)
                    .sum();
            assertThat(area).as("seed " + seed).isCloseTo(outline.areaCm2(), within(1e-8));
        }
    }

    @Test
    void addingAPieceNeverLowersTheBound() {
        for (long seed = 1; seed <= 200; seed++) {
            RandomPieces random = new RandomPieces(seed);
            List<Piece> pieces = new ArrayList<>();
            double before = 0;
            for (Piece piece : random.some(6, 140)) {
                pieces.add(piece);
                double after = LowerBound.cm(Strip.ofWidth(140), pieces);
                assertThat(after).as("seed " + seed).isGreaterThanOrEqualTo(before);
                before = after;
            }
        }
    }

    @Test
    void aWiderStripIsNeverLaidBelowTheBoundOfItsOwn() {
        for (long seed = 1; seed <= 30; seed++) {
            List<Piece> pieces = new RandomPieces(seed).some(4, 100);
            for (double width = 100; width <= 160; width += 20) {
                Layout layout = Nesting.layout(Strip.ofWidth(width), pieces, new Effort(0.02, seed));
                assertThat(layout.lengthCm()).as("seed " + seed).isGreaterThan(layout.lowerBoundCm() - 1e-6);
            }
        }
    }

    @Test
    void partsThatFitSideBySideHaveValuesOfOneAtMost() {
        for (long seed = 1; seed <= 3000; seed++) {
            RandomPieces random = new RandomPieces(seed);
            int size = 1 + random.random().nextInt(8);
            double[] parts = new double[size];
            double sum = 0;
            for (int i = 0; i < size; i++) {
                parts[i] = random.random().nextBoolean()
                        ? random.between(0.01, 1)
                        : 1.0 / (1 + random.random().nextInt(8));
                sum += parts[i];
            }
            double scale = sum > 1 ? 1 / sum : 1;
            for (DualFeasible function : DualFeasible.all(List.of(parts[0] * scale, 0.3, 0.7))) {
                double values = 0;
                for (double part : parts) {
                    values += function.value(part * scale);
                }
                assertThat(values).as("seed " + seed + " " + function).isLessThan(1 + 1e-9);
            }
        }
    }

    @Test
    void meansAreThoseOfTheValues() {
        for (DualFeasible function : DualFeasible.all(List.of(0.35, 0.8))) {
            for (double from = 0.013; from < 0.9; from += 0.09) {
                double to = from + 0.0837;
                double mean = 0;
                for (int i = 0; i < 20_000; i++) {
                    mean += function.value(from + (i + 0.5) / 20_000 * (to - from)) / 20_000;
                }
                assertThat(function.mean(from, to)).as(function + " " + from).isCloseTo(mean, within(1e-3));
            }
        }
    }
}
