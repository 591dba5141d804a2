package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.fibre.AgreedMass.Component;
import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import campcloth.figure.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class AgreedMassTest {

    /** The print rounds to two decimals, and one figure further so that the example sums to 100.00. */
    private static final double PRINTED_TO = 0.01;

    private record Row(String example, Component component, double publishedPercent) {}

    @Test
    void theWorkedExamplesOfTheRegulationComeOut() throws IOException {
        Map<String, List<Row>> examples = examples();
        assertThat(examples).hasSize(2);
        examples.forEach((name, rows) -> {
            List<Double> percents =
                    AgreedMass.percents(rows.stream().map(Row::component).toList());
            for (int i = 0; i < rows.size(); i++) {
                assertThat(percents.get(i))
                        .as("%s, fibre %d", name, i)
                        .isCloseTo(rows.get(i).publishedPercent(), within(PRINTED_TO));
            }
        });
    }

    @Test
    void sharesAlwaysSumToAHundredAndAHigherAllowanceNeverLowersTheShare() {
        long seed = 1007_2011;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 2000; i++) {
            double first = random.nextDouble(1, 99);
            double allowance = random.nextDouble(0, 20);
            Component other = new Component(100 - first, random.nextDouble(0, 20), random.nextDouble(0, 5));
            List<Double> low = AgreedMass.percents(List.of(new Component(first, allowance, 0), other));
            List<Double> high = AgreedMass.percents(List.of(new Component(first, allowance + 1, 0), other));
            assertThat(low.get(0) + low.get(1))
                    .as("seed %d, case %d: dry %s, allowance %s, beside %s", seed, i, first, allowance, other)
                    .isCloseTo(100, within(1e-9));
            assertThat(high.get(0))
                    .as("seed %d, case %d: dry %s, allowance %s, beside %s", seed, i, first, allowance, other)
                    .isGreaterThan(low.get(0));
        }
    }

    @Test
    void nothingAtAllIsRefused() {
        assertThatThrownBy(() -> AgreedMass.percents(List.of())).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new Component(Double.NaN, 0, 0)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new Component(-1, 0, 0)).isInstanceOf(Refused.class);
    }

    private static Map<String, List<Row>> examples() throws IOException {
        List<Fault> faults = new ArrayList<>();
        Map<String, List<Row>> examples = new LinkedHashMap<>();
        try (var text = Files.newBufferedReader(Path.of("src/test/resources/published/annex-viii-examples.csv"))) {
            ReferenceTable.read(
                            "annex-viii-examples.csv",
                            text,
                            List.of("example", "dryPercent", "allowancePercent", "lossPercent", "publishedPercent"),
                            faults)
                    .map(row -> new Row(
                            row.text("example"),
                            new Component(
                                    row.number("dryPercent"),
                                    row.number("allowancePercent"),
                                    row.number("lossPercent")),
                            row.number("publishedPercent")))
                    .forEach(row -> examples.computeIfAbsent(row.example(), e -> new ArrayList<>())
                            .add(row));
        }
        assertThat(faults).isEmpty();
        return examples;
    }
}
