package campcloth.fire;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.event.FireRole;
import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import campcloth.figure.ReferenceTable.Row;
import campcloth.fire.model.HazardMatrix;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Worked gradings, one by one. */
class FireGoldenCasesTest {

    @TestFactory
    Stream<DynamicTest> workedGradingsComeOutAsWritten() throws IOException {
        List<Fault> faults = new ArrayList<>();
        try (Reader text = FireFixtures.resource("/agreement/fire-golden-cases.csv")) {
            List<DynamicTest> tests = ReferenceTable.read("fire-golden-cases.csv", text, List.of("grade"), faults)
                    .map(row -> DynamicTest.dynamicTest(row.text("name"), () -> holds(row)));
            assertThat(faults).isEmpty();
            assertThat(tests).hasSize(24);
            return tests.stream();
        }
    }

    private static void holds(Row row) {
        WornCloth cloth = WornCloth.woven(
                FireFixtures.FIBRES.blend(row.text("blend")),
                row.number("weightGsm"),
                row.word("surface", Surface.class),
                row.word("fit", Fit.class),
                row.word("layer", Layer.class));
        FireHazard hazard = FireGrading.grade(
                cloth,
                new Exposure(
                        row.word("role", FireRole.class),
                        row.optionalNumber("distanceM"),
                        row.optionalNumber("fireKw")));
        assertThat(HazardMatrix.axisClass(hazard.spread())).isEqualTo((int) row.number("spreadClass"));
        assertThat(HazardMatrix.axisClass(hazard.melt())).isEqualTo((int) row.number("meltClass"));
        assertThat(hazard.reach().ordinal()).isEqualTo((int) row.number("exposureClass"));
        assertThat(hazard.grade()).isEqualTo(row.word("grade", FireGrade.class));
        assertThat(hazard.meltWarning()).isEqualTo(row.word("meltWarning", MeltWarning.class));
    }
}
