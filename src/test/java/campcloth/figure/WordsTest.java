package campcloth.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as they are written, against exact decimal arithmetic: at and near halves, at powers of ten, and drawn. */
class WordsTest {

    private static final long SEED = 30_11;
    private static final int DRAWN = 200_000;
    private static final double[] EDGES = {
        0,
        -0.0,
        0.1,
        0.01,
        0.001,
        0.5,
        1.5,
        2.5,
        0.25,
        0.125,
        1.005,
        9.9995,
        99.995,
        999.95,
        9999.5,
        10_000,
        12.5,
        99_999_999.5,
        1e8,
        1e15,
        1e22,
        1e300,
        Double.MIN_VALUE,
        0.000_999_95,
        0.045,
        1.0000005,
        0.499_999_999_999
    };

    private final SplittableRandom random = new SplittableRandom(SEED);

    @Test
    void edgesAndTheNumbersBesideThemAreWrittenAsExactArithmeticDoes() {
        for (double edge : EDGES) {
            for (double value : new double[] {Math.nextDown(edge), edge, Math.nextUp(edge)}) {
                writtenRight(value);
                writtenRight(-value);
            }
        }
    }

    @Test
    void numbersDrawnOfAllSizesAreWrittenAsExactArithmeticDoes() {
        for (int i = 0; i < DRAWN; i++) {
            double size = Math.pow(10, random.nextDouble(-9, 12));
            writtenRight(random.nextBoolean() ? size : -size);
        }
    }

    /** What people type lies on halves more often than chance has it. */
    @Test
    void shortDecimalsAreWrittenAsExactArithmeticDoes() {
        for (int i = 0; i < DRAWN; i++) {
            writtenRight(random.nextInt(-2_000_000, 2_000_000) / Math.pow(10, random.nextInt(6)));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0.3, 0.3, 0.30",
        "12.5, 12.5, 12.50",
        "1200, 1200, 1200.00",
        "-0.001, -0.001, 0.00",
        "99.996, 100, 100.00"
    })
    void theyLookLikeThis(double value, String number, String fixed) {
        assertThat(Words.number(value)).isEqualTo(number);
        assertThat(Words.fixed(value, 2)).isEqualTo(fixed);
    }

    private static void writtenRight(double value) {
        assertThat(Words.number(value)).as("seed %s, %s", SEED, value).isEqualTo(number(value));
        for (int decimals = 0; decimals <= 7; decimals++) {
            assertThat(Words.fixed(value, decimals))
                    .as("seed %s, %s, %s decimals", SEED, value, decimals)
                    .isEqualTo(fixed(value, decimals));
        }
        assertThat(Canvas.n(value)).as("seed %s, %s on a picture", SEED, value).isEqualTo(stripped(rounded(value, 2)));
    }

    private static String number(double value) {
        return stripped(new BigDecimal(value).round(new MathContext(4, RoundingMode.HALF_UP)));
    }

    private static String fixed(double value, int decimals) {
        BigDecimal rounded = rounded(value, decimals);
        return (rounded.signum() == 0 ? BigDecimal.ZERO.setScale(decimals) : rounded).toPlainString();
    }

    private static BigDecimal rounded(double value, int decimals) {
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
    }

    private static String stripped(BigDecimal rounded) {
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
