package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlacesTest {

    private static final long SEED = 20_26;
    private static final int CASES = 5_000;
    private static final int RANKINGS = 24;

    @Test
    void theBestThreeHoldThePlaces() {
        Places places = new Places(List.of(0, 0, 0, 0));
        places.add(new double[] {10, 40, 30, 20});
        places.add(new double[] {50, 40, 30, 20});
        assertThat(places.firstPercent(0)).isEqualTo(50);
        assertThat(places.firstPercent(1)).isEqualTo(50);
        assertThat(places.topThreePercent(0)).isEqualTo(50);
        assertThat(places.topThreePercent(1)).isEqualTo(100);
        assertThat(places.topThreePercent(3)).isEqualTo(50);
    }

    @Test
    void whoTiesSharesThePlaces() {
        Places places = new Places(List.of(0, 0, 0, 0, 0));
        places.add(new double[] {50, 40, 40, 40, 10});
        assertThat(places.firstPercent(0)).isEqualTo(100);
        assertThat(places.topThreePercent(1)).isCloseTo(200.0 / 3, within(1e-9));
        assertThat(places.topThreePercent(3)).isCloseTo(200.0 / 3, within(1e-9));
        assertThat(places.topThreePercent(4)).isZero();
    }

    /** More than 100 000 rankings of cloths behind gates, many of them tied. */
    @Test
    void noScoreEverCrossesAGateAndAllThreePlacesAreGiven() {
        int rankings = 0;
        for (int i = 0; i < CASES; i++) {
            SplittableRandom random = new SplittableRandom(SEED + i);
            int cloths = random.nextInt(1, 12);
            List<Integer> gates = random.ints(cloths, 0, 6).boxed().sorted().toList();
            Places places = new Places(gates);
            for (int ranking = 0; ranking < RANKINGS; ranking++) {
                places.add(random.ints(cloths, 0, 20).mapToDouble(x -> x).toArray());
                rankings++;
            }
            for (int cloth = 0; cloth < cloths; cloth++) {
                int gate = gates.get(cloth);
                long milder = gates.stream().filter(g -> g < gate).count();
                String where = "seed " + (SEED + i) + ", cloth " + cloth + " of gates " + gates;
                assertThat(places.firstPercent(cloth) > 0 && milder > 0)
                        .as(where)
                        .isFalse();
                assertThat(places.topThreePercent(cloth) > 0 && milder >= 3)
                        .as(where)
                        .isFalse();
                assertThat(places.topThreePercent(cloth))
                        .as(where)
                        .isBetween(places.firstPercent(cloth) - 1e-9, 100 + 1e-9);
            }
            assertThat(IntStream.range(0, cloths)
                            .mapToDouble(places::topThreePercent)
                            .sum())
                    .as("seed %d", SEED + i)
                    .isCloseTo(100 * Math.min(3, cloths), within(1e-6));
            assertThat(IntStream.range(0, cloths)
                            .mapToDouble(places::firstPercent)
                            .sum())
                    .as("seed %d", SEED + i)
                    .isCloseTo(100, within(1e-6));
        }
        assertThat(rankings).isGreaterThanOrEqualTo(100_000);
    }
}
