package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.MeasuredCloth.Comparison;
import campcloth.figure.Figure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Cloth that others measured, against what we say of it from blend, weave, surface, finish and weight. Prints what is off. */
class MeasuredClothTest {

    private static final double LEAST_COVERAGE = 0.9;
    private static final double FAR_OFF = 20;

    @ParameterizedTest
    @EnumSource(names = {"THICKNESS_MM", "AIR_PERMEABILITY_MM_S"})
    void nineOfTenMeasuredFiguresLieInOurInterval(Property property) {
        List<Comparison> rows = MeasuredCloth.comparisons(property);
        rows.stream().filter(row -> !row.inside()).map(MeasuredClothTest::line).forEach(System.out::println);
        assertThat(MeasuredTable.coverage(rows)).as(property.name()).isGreaterThanOrEqualTo(LEAST_COVERAGE);
        assertThat(MeasuredTable.ratioAt(0.5, rows)).as(property.name()).isBetween(0.7, 1.4);
    }

    /** An interval that held everything would say nothing. */
    @ParameterizedTest
    @EnumSource(names = {"THICKNESS_MM", "AIR_PERMEABILITY_MM_S"})
    void theIntervalsAreNoWiderThanTheSpreadOfTheErrorsAsksFor(Property property) {
        List<Comparison> rows = MeasuredCloth.comparisons(property);
        double spread = MeasuredTable.ratioAt(0.95, rows) / MeasuredTable.ratioAt(0.05, rows);
        double[] widths = rows.stream()
                .map(Comparison::estimate)
                .mapToDouble(figure -> figure.high() / figure.low())
                .sorted()
                .toArray();
        assertThat(widths[widths.length / 2]).as(property.name()).isLessThan(1.5 * spread);
    }

    @ParameterizedTest
    @EnumSource(names = {"THICKNESS_MM", "AIR_PERMEABILITY_MM_S"})
    void aFigureFarOffLiesOutside(Property property) {
        List<Comparison> rows = MeasuredCloth.comparisons(property);
        for (double factor : List.of(1 / FAR_OFF, FAR_OFF)) {
            assertThat(rows.stream().filter(row -> times(factor, row).inside()).count())
                    .as("%s times %s", property, factor)
                    .isLessThan(rows.size() / 4);
        }
    }

    private static Comparison times(double factor, Comparison row) {
        return new Comparison(row.cloth(), row.property(), factor * row.measured(), row.estimate());
    }

    private static String line(Comparison row) {
        return String.format(
                Locale.ROOT,
                "%s %s: measured %.3g, estimate %.3g (%.3g..%.3g), %s",
                row.cloth().code(),
                row.property().field(),
                row.measured(),
                row.estimate().value(),
                row.estimate().low(),
                row.estimate().high(),
                Samples.words(row.cloth().told()));
    }

    @Test
    void theGuideShowsTheTable() throws IOException {
        String table = MeasuredTable.markdown();
        assertThat(Files.readString(Path.of("DEVELOPERS.md")).contains("\n" + table + "\n"))
                .as("DEVELOPERS.md should show%n%s%n", table)
                .isTrue();
    }

    @Test
    void everyRowNamesASourceOnFileAndMeasuresSomething() {
        List<MeasuredCloth> cloths = MeasuredCloth.all();
        assertThat(cloths).hasSizeGreaterThanOrEqualTo(30);
        assertThat(cloths).extracting(MeasuredCloth::source).allSatisfy(MeasuredClothTest::isOnFile);
        assertThat(cloths.stream().map(MeasuredCloth::source).distinct().count())
                .isGreaterThanOrEqualTo(2);
        assertThat(cloths).extracting(MeasuredCloth::measured).noneMatch(measured -> measured.isEmpty());
        assertThat(cloths).extracting(cloth -> cloth.source() + cloth.code()).doesNotHaveDuplicates();
    }

    /** Of these only the span over several cloths was seen. */
    @Test
    void publishedSpansLieInTheIntervalForClothOfUnknownWeight() {
        Samples.rows("/published/measured-cloth-ranges.csv", row -> {
            isOnFile(row.text("source"));
            Cloth cloth = Samples.cloth(
                    ShippedCatalogue.get().fibres().blend(row.text("blend")),
                    row.word("weave", Weave.class),
                    Surface.PLAIN,
                    Finish.NONE);
            Figure estimate = Estimates.complete(cloth).required(row.word("property", Property.class));
            assertThat(estimate.low()).as(row.text("source")).isLessThanOrEqualTo(row.number("low"));
            assertThat(estimate.high()).as(row.text("source")).isGreaterThanOrEqualTo(row.number("high"));
        });
    }

    /** Thickness and weight are told, the weave is not known. */
    @Test
    void measuredVapourResistanceLiesInTheIntervalWhateverTheWeave() {
        Samples.rows("/published/measured-vapour-resistance.csv", row -> {
            isOnFile(row.text("source"));
            for (String weave : row.text("weaves").split(" ")) {
                Cloth cloth = Samples.cloth(
                                ShippedCatalogue.get().fibres().blend(row.text("blend")),
                                Weave.valueOf(weave),
                                Surface.PLAIN,
                                Finish.NONE)
                        .with(Property.WEIGHT_GSM, Samples.known(row.number("weightGsm")))
                        .with(Property.THICKNESS_MM, Samples.known(row.number("thicknessMm")));
                Figure estimate = Estimates.complete(cloth).required(Property.VAPOUR_RESISTANCE_M2PA_W);
                System.out.printf(
                        Locale.ROOT,
                        "%s as %s: measured %s..%s, estimate %.1f (%.1f..%.1f)%n",
                        row.text("source"),
                        weave,
                        row.text("low"),
                        row.text("high"),
                        estimate.value(),
                        estimate.low(),
                        estimate.high());
                assertThat(estimate.low()).as(weave).isLessThanOrEqualTo(row.number("low"));
                assertThat(estimate.high()).as(weave).isGreaterThanOrEqualTo(row.number("high"));
                assertThat(estimate.value() / row.number("high")).as(weave).isBetween(0.5, 2.0);
            }
        });
    }

    private static void isOnFile(String source) {
        assertThat(ShippedCatalogue.get().sources().all())
                .extracting(known -> known.id())
                .contains(source);
    }
}
