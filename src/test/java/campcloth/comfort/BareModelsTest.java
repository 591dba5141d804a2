package campcloth.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BareModelsTest {

    private static final long SEED = 20_260_411;

    /** A reading cannot hold what is not a finite number: it would be thrown. */
    @Test
    void whateverCanBeGivesANumberOrAReason() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 5000; i++) {
            BareCase given = drawn(random, i % 2 == 0);
            assertThatCode(() -> BareModels.of(given))
                    .as("seed %d, case %d: %s", SEED, i, given)
                    .doesNotThrowAnyException();
        }
    }

    @Test
    void noNumberIsGivenForABodyThatTheModelDoesNotTellOf() {
        SplittableRandom random = new SplittableRandom(SEED);
        int told = 0;
        for (int i = 0; i < 5000; i++) {
            BareCase given = drawn(random, false);
            BareReadings readings = BareModels.of(given);
            if (readings.coreC() instanceof Reading.Value core) {
                assertThat(core.value())
                        .as("seed %d, case %d: %s", SEED, i, given)
                        .isBetween(35.0, 40.0);
                told++;
            }
        }
        assertThat(told).isGreaterThan(50);
    }

    private static BareCase drawn(SplittableRandom random, boolean whole) {
        double part = whole ? 1 : 0.2;
        return new BareCase(
                end(random, -60, 60),
                end(random, -60, 100),
                end(random, 0, 40 * part),
                end(random, 0, 100),
                end(random, 0.5, 0.5 + 14.5 * part),
                end(random, 0, 10 * part),
                random.nextBoolean() ? Optional.empty() : Optional.of(end(random, 0, 10 * part)),
                end(random, 0, 20_000 * part * part),
                end(random, 0, 40 * part * part));
    }

    /** Often an end of the range itself. */
    private static double end(SplittableRandom random, double least, double most) {
        return switch (random.nextInt(10)) {
            case 0 -> least;
            case 1 -> most;
            default -> random.nextDouble(least, most);
        };
    }
}
