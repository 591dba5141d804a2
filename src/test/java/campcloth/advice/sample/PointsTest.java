package campcloth.advice.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PointsTest {

    private static final int COUNT = 64;

    @Test
    void haltonsPointsAreThoseOfAPublicProgram() throws IOException {
        List<Fault> faults = new ArrayList<>();
        try (Reader text = new InputStreamReader(
                Objects.requireNonNull(PointsTest.class.getResourceAsStream("/agreement/halton.csv")),
                StandardCharsets.UTF_8)) {
            List<ReferenceTable.Row> rows =
                    ReferenceTable.read("halton.csv", text, List.of(), faults).map(row -> row);
            assertThat(faults).isEmpty();
            assertThat(rows).hasSize(11);
            for (ReferenceTable.Row row : rows) {
                int index = (int) row.number("index");
                assertThat(Halton.at(index, 0)).isCloseTo(row.number("inBase2"), within(5e-7));
                assertThat(Halton.at(index, 1)).isCloseTo(row.number("inBase3"), within(5e-7));
            }
        }
    }

    @Test
    void aSeedGivesItsPointsAndNoOthers() {
        assertThat(all(Points.of(COUNT, 5, 7))).isEqualTo(all(Points.of(COUNT, 5, 7)));
        assertThat(all(Points.of(COUNT, 5, 7))).isNotEqualTo(all(Points.of(COUNT, 5, 8)));
    }

    /** Each sixteenth of the first dimension holds 4 of 64 points, one more or less where the shift cuts it. */
    @Test
    void thePointsAreEven() {
        for (long seed = 0; seed < 200; seed++) {
            Points points = Points.of(COUNT, 2, seed);
            int[] held = new int[16];
            for (int i = 0; i < COUNT; i++) {
                assertThat(points.at(i, 0)).isBetween(0.0, Math.nextDown(1.0));
                held[(int) (16 * points.at(i, 0))]++;
            }
            assertThat(held).as("seed %d", seed).satisfies(h -> {
                assertThat(IntStream.of(h).min().orElseThrow()).isGreaterThanOrEqualTo(3);
                assertThat(IntStream.of(h).max().orElseThrow()).isLessThanOrEqualTo(5);
            });
        }
    }

    /** Points of two seeds are as though drawn apart: over many pairs no correlation is left. */
    @Test
    void setsBesideEachOtherDoNotFollowEachOther() {
        double sum = 0;
        int pairs = 400;
        for (long seed = 0; seed < pairs; seed++) {
            Points one = Points.of(COUNT, 2, seed);
            Points other = Points.of(COUNT, 2, seed + 1_000_000);
            sum += IntStream.range(0, COUNT)
                            .mapToDouble(i -> (one.at(i, 1) - 0.5) * (other.at(i, 1) - 0.5) * 12)
                            .sum()
                    / COUNT;
        }
        assertThat(sum / pairs).isCloseTo(0, within(0.03));
    }

    @Test
    void tooManyDimensionsAreRefused() {
        assertThatThrownBy(() -> Points.of(COUNT, 7, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<Double> all(Points points) {
        return IntStream.range(0, COUNT).mapToObj(i -> points.at(i, i % 5)).toList();
    }
}
