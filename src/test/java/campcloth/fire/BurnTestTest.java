package campcloth.fire;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.FireRole;
import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import campcloth.figure.ReferenceTable.Row;
import campcloth.fire.BurnTestScreen.Outcome;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The burning test of 16 CFR 1610: its classes, what is exempt from it, and that neither says anything about melting. */
class BurnTestTest {

    @TestFactory
    Stream<DynamicTest> exemptionsComeOutAsTheRegulationHasThem() throws IOException {
        List<Row> rows = rows("cfr-16-1610-exemptions.csv", "blend", "weightGsm", "surface", "outcome");
        assertThat(rows).hasSize(21);
        return rows.stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.text("blend") + " " + row.text("weightGsm") + " " + row.text("surface"),
                        () -> assertThat(BurnTestScreen.of(cloth(row)).outcome())
                                .isEqualTo(row.word("outcome", Outcome.class))));
    }

    @TestFactory
    Stream<DynamicTest> classesComeOutAsTheRegulationHasThem() throws IOException {
        List<Row> rows = rows("cfr-16-1610-classes.csv", "surface", "burnTimeS", "baseBurns", "class");
        assertThat(rows).hasSize(11);
        return rows.stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.text("surface") + " " + row.text("burnTimeS") + " " + row.text("baseBurns"),
                        () -> assertThat(BurnTestClass.of(
                                        row.word("surface", Surface.class),
                                        row.number("burnTimeS"),
                                        Boolean.parseBoolean(row.text("baseBurns"))))
                                .isEqualTo(row.word("class", BurnTestClass.class))));
    }

    @Test
    void whatIsExemptIsWarnedOfWhereItMelts() {
        for (String blend : List.of("polyester 100", "polyamide 100", "acrylic 100", "modacrylic 100")) {
            WornCloth cloth = FireFixtures.plain(blend, 150);
            assertThat(BurnTestScreen.of(cloth).outcome()).isEqualTo(Outcome.EXEMPT_BY_FIBRE);
            FireHazard seated = FireGrading.grade(cloth, FireFixtures.at(FireRole.SEATED, 2));
            assertThat(seated.meltWarning()).isGreaterThanOrEqualTo(MeltWarning.WARN);
            assertThat(BurnTestScreen.INFORMATION).contains("polyester is exempt and melts");
        }
    }

    @Test
    void filmIsNoExemptFibre() {
        WornCloth coated = new WornCloth(
                FireFixtures.FIBRES.blend("polyamide 100"),
                60,
                Surface.PLAIN,
                Finish.COATED,
                Weave.PLAIN,
                Fit.LOOSE,
                Layer.OUTER);
        assertThat(BurnTestScreen.of(coated).outcome()).isEqualTo(Outcome.TEST_NEEDED);
    }

    @Test
    void pieceThatMayBeLighterIsToBeWeighed() {
        WornCloth cloth = new WornCloth(
                FireFixtures.FIBRES.blend("cotton 100"),
                new ClothWeight(95, 80),
                Surface.PLAIN,
                Finish.NONE,
                Weave.PLAIN,
                Fit.LOOSE,
                Layer.OUTER);
        assertThat(BurnTestScreen.of(cloth).outcome()).isEqualTo(Outcome.NOT_KNOWN);
        assertThat(BurnTestScreen.of(cloth).because()).endsWith("weigh it.");
    }

    private static WornCloth cloth(Row row) {
        return WornCloth.woven(
                FireFixtures.FIBRES.blend(row.text("blend")),
                row.number("weightGsm"),
                row.word("surface", Surface.class),
                Fit.LOOSE,
                Layer.OUTER);
    }

    private static List<Row> rows(String file, String... columns) throws IOException {
        List<Fault> faults = new ArrayList<>();
        try (Reader text = FireFixtures.resource("/published/" + file)) {
            List<Row> rows =
                    ReferenceTable.read(file, text, List.of(columns), faults).map(row -> row);
            assertThat(faults).isEmpty();
            return rows;
        }
    }
}
