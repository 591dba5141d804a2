package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SewingThreadTest {

    private static final double TOLERANCE = 0.005;

    @ParameterizedTest
    @CsvFileSource(resources = "/published/thread.csv", useHeadersInDisplayName = true)
    void agreesWithPublishedProblems(String stitch, double thicknessIn, double stitchesPerInch, double threadPerInch) {
        assertThat(stitch(stitch).threadByFormula(thicknessIn, 0, stitchesPerInch))
                .isCloseTo(threadPerInch, within(TOLERANCE));
    }

    @Test
    void zigzagOfNoWidthIsTwoStraightThreads() {
        assertThat(Stitch.ZIGZAG_304.threadByFormula(0, 0, 10)).isEqualTo(2);
    }

    @Test
    void zigzagThatIsWideRunsAcrossOnEveryStitch() {
        // 3 mm across and 4 mm along is a diagonal of 5 mm, with each of two threads
        assertThat(Stitch.ZIGZAG_304.threadByFormula(0, 3, 0.25)).isCloseTo(2 * 5 / 4.0, within(1e-12));
    }

    @Test
    void thinClothTakesTheUsualRatioThickClothTheFormula() {
        assertThat(Stitch.LOCK_301.threadRatio(0.1, 0, 0.4)).isEqualTo(2.5);
        assertThat(Stitch.LOCK_301.threadRatio(5, 0, 0.4)).isCloseTo(6, within(1e-12));
    }

    @Test
    void addsFifteenPercentWaste() {
        Seam seam = new Seam("seam", 100, Stitch.LOCK_301, 0);
        assertThat(SewingThread.metres(List.of(seam), List.of(), SewnCloth.usual()))
                .isCloseTo(2.56 * 1.15, within(1e-9)); // T = 2 x 0.7 x 0.5 mm, S = 0.4 a mm: 2 + 2 x 0.7 x 0.4
    }

    @Test
    void everyRowOfAHemTakesThread() {
        Hem one = hem(OptionalDouble.empty());
        Hem two = hem(OptionalDouble.of(5));
        double single = SewingThread.metres(List.of(), List.of(one), SewnCloth.usual());
        assertThat(SewingThread.metres(List.of(), List.of(two), SewnCloth.usual()))
                .isCloseTo(2 * single, within(1e-9));
    }

    private static Hem hem(OptionalDouble secondRow) {
        return new Hem("hem", 126, 5, 0, List.of(2.0, 2.0), 2, secondRow, false, "because");
    }

    private static Stitch stitch(String number) {
        return Arrays.stream(Stitch.values())
                .filter(s -> s.number().equals(number))
                .findFirst()
                .orElseThrow();
    }
}
