package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.fibre.TestFibres;
import campcloth.figure.Basis;
import campcloth.figure.Fault;
import campcloth.figure.Figure;
import campcloth.figure.ReferenceTable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Estimates from the weight alone against ranges remembered for common cloths; prints how far each is off. */
class TypicalClothTest {

    private static final String FILE = "/agreement/typical-cloth-figures.csv";

    private record Row(Cloth cloth, Span thicknessMm, Span airMmS, Span vapourM2PaW) {}

    private final List<Row> rows = read();

    @Test
    void thicknessAgreesWithTypicalCloth() {
        assertAgreement(Property.THICKNESS_MM, Row::thicknessMm, 1.25);
    }

    @Test
    void airPermeabilityAgreesWithTypicalCloth() {
        assertAgreement(Property.AIR_PERMEABILITY_MM_S, Row::airMmS, 1.6);
    }

    @Test
    void vapourResistanceAgreesWithTypicalCloth() {
        assertAgreement(Property.VAPOUR_RESISTANCE_M2PA_W, Row::vapourM2PaW, 1.4);
    }

    @Test
    void anIntervalFromTheWeightAloneStillSaysSomething() {
        for (Row row : rows) {
            if (!row.cloth.finish().closesPores()) {
                Figure air = Estimates.complete(row.cloth).required(Property.AIR_PERMEABILITY_MM_S);
                assertThat(air.high() / air.low()).as(row.cloth.name()).isBetween(4.0, 30.0);
            }
        }
    }

    /** In 85 % of the rows the interval overlaps the range; in 70 % the value lies within the range put a factor further off. */
    private void assertAgreement(Property property, Function<Row, Span> typical, double factor) {
        int overlapping = 0;
        int near = 0;
        StringBuilder table = new StringBuilder(property + "\n");
        for (Row row : rows) {
            Figure estimate = Estimates.complete(row.cloth).required(property);
            Span range = typical.apply(row);
            boolean overlaps = estimate.low() <= range.high() && estimate.high() >= range.low();
            boolean isNear = range.low() / factor <= estimate.value() && estimate.value() <= range.high() * factor;
            overlapping += overlaps ? 1 : 0;
            near += isNear ? 1 : 0;
            table.append(String.format(
                    Locale.ROOT,
                    "%-34s estimate %8.2f (%8.2f..%8.2f) typical %8.2f..%8.2f ratio %5.2f %s%s%n",
                    row.cloth.name(),
                    estimate.value(),
                    estimate.low(),
                    estimate.high(),
                    range.low(),
                    range.high(),
                    estimate.value() / range.mid(),
                    overlaps ? "" : "APART ",
                    isNear ? "" : "FAR"));
        }
        table.append(overlapping)
                .append(" overlap, ")
                .append(near)
                .append(" near, of ")
                .append(rows.size());
        System.out.println(table);
        assertThat((double) overlapping / rows.size()).as(table.toString()).isGreaterThanOrEqualTo(0.85);
        assertThat((double) near / rows.size()).as(table.toString()).isGreaterThanOrEqualTo(0.7);
    }

    private static List<Row> read() {
        List<Fault> faults = new ArrayList<>();
        try (Reader text = new InputStreamReader(
                Objects.requireNonNull(TypicalClothTest.class.getResourceAsStream(FILE)), StandardCharsets.UTF_8)) {
            List<Row> rows = ReferenceTable.read(FILE, text, List.of("cloth", "blend"), faults)
                    .map(TypicalClothTest::row);
            assertThat(faults).isEmpty();
            assertThat(rows).hasSizeGreaterThanOrEqualTo(25);
            return rows;
        } catch (IOException broken) {
            throw new AssertionError(broken);
        }
    }

    private static Row row(ReferenceTable.Row row) {
        Span weight = range(row, "weight");
        Cloth cloth = new Cloth(
                row.text("cloth"),
                TestFibres.blend(row.text("blend")),
                row.word("weave", Weave.class),
                row.word("surface", Surface.class),
                row.word("finish", Finish.class),
                false,
                false,
                Map.of(
                        Property.WEIGHT_GSM,
                        new Figure(
                                (weight.low() + weight.high()) / 2,
                                weight.low(),
                                weight.high(),
                                Basis.TYPICAL,
                                "from memory")),
                "");
        return new Row(cloth, range(row, "thickness"), range(row, "air"), range(row, "vapour"));
    }

    /** The range with its geometric middle. */
    private static Span range(ReferenceTable.Row row, String column) {
        double low = row.number(column + "Low");
        double high = row.number(column + "High");
        return new Span(low, Math.sqrt(Math.max(low, 0.2) * high), high);
    }
}
