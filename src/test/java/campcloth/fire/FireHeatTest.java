package campcloth.fire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.event.FireRole;
import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import campcloth.figure.ReferenceTable.Row;
import campcloth.fire.model.HeatBalance;
import campcloth.fire.model.PointSource;
import campcloth.fire.model.SkinTimes;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Radiant heat, skin and cloth in it. */
class FireHeatTest {

    @Test
    void radiantFluxAgreesWithThePublishedRows() throws IOException {
        each(
                "/published/fire-radiant-flux.csv",
                5,
                row -> assertThat(PointSource.fluxKwM2(
                                row.number("radiativeFraction"), row.number("fireKw"), row.number("distanceM")))
                        .as(row.text("name"))
                        .isCloseTo(row.number("fluxKwM2"), within(row.number("toleranceKwM2"))));
    }

    @Test
    void skinTimesAgreeWithThePublishedTable() throws IOException {
        each("/published/skin-times.csv", 9, row -> {
            assertThat(SkinTimes.painS(row.number("fluxKwM2")).orElseThrow())
                    .isCloseTo(row.number("painS"), within(1e-9));
            assertThat(SkinTimes.secondDegreeS(row.number("fluxKwM2")).orElseThrow())
                    .isCloseTo(row.number("secondDegreeS"), within(1e-9));
        });
    }

    @Test
    void skinTimesAreNotGivenOutsideTheTable() {
        assertThat(SkinTimes.painS(0.99)).isEmpty();
        assertThat(SkinTimes.painS(12.01)).isEmpty();
        assertThat(SkinTimes.painS(2.5).orElseThrow()).isBetween(27.0, 45.0);
    }

    @Test
    void steadyTemperatureAgreesWithTheWorkedRows() throws IOException {
        each("/agreement/steady-cloth.csv", 6, row -> {
            double celsius = HeatBalance.ONE_SIDE.steadyC(row.number("fluxKwM2"));
            assertThat(celsius).isCloseTo(row.number("clothC"), within(row.number("toleranceC")));
            assertThat(HeatBalance.ONE_SIDE.fluxKwM2(celsius)).isCloseTo(row.number("fluxKwM2"), within(0.001));
        });
    }

    @Test
    void fluxIsShownWhereTheFormulaHoldsAndNotInTheNearField() {
        assertThat(FireFixtures.at(FireRole.SEATED, 1).fluxKwM2().orElseThrow()).isCloseTo(2.39, within(0.005));
        assertThat(FireFixtures.at(FireRole.SEATED, 0.9).fluxKwM2()).isEmpty();
        assertThat(FireFixtures.at(FireRole.SEATED).fluxKwM2()).isEmpty();
        assertThat(PointSource.nearFieldM(100)).isCloseTo(1, within(0.01));
    }

    @Test
    void distanceToKeepGrowsWithTheFireAndForClothThatSoftensEarly() {
        Exposure ring = FireFixtures.at(FireRole.SEATED);
        Exposure bonfire = new Exposure(FireRole.SEATED, Optional.empty(), Optional.of(500.0));
        double wool = standBackM("wool 100", ring);
        assertThat(wool).isCloseTo(1.41, within(0.01)); // 1.6 kW/m2 at radiative fraction 0.40
        assertThat(standBackM("polyester 100", ring)).isEqualTo(3); // where sparks land often
        assertThat(standBackM("cotton 95; polyester 5", ring)).isEqualTo(wool);
        assertThat(standBackM("cotton 95; polylactide 5", ring)).isGreaterThan(2 * wool);
        assertThat(standBackM("wool 100", bonfire)).isGreaterThan(2 * wool);
        assertThat(standBackM("wool 100", new Exposure(FireRole.SEATED, Optional.empty(), Optional.of(5.0))))
                .isEqualTo(Exposure.RING_M);
    }

    @Test
    void heatThatNobodyBearsIsOnlyFoundWhereDistanceAndSizeAreStated() {
        Exposure stated = new Exposure(FireRole.COOKING, Optional.of(0.5), Optional.of(100.0));
        assertThat(stated.reach()).isEqualTo(ExposureClass.UNBEARABLE);
        assertThat(FireGrading.grade(FireFixtures.plain("wool 100", 450), stated)
                        .grade())
                .isEqualTo(FireGrade.SEVERE);
        assertThat(FireFixtures.at(FireRole.COOKING, 0.5).reach()).isEqualTo(ExposureClass.CONTACT);
    }

    private static double standBackM(String blend, Exposure exposure) {
        return FireGrading.grade(FireFixtures.plain(blend, 300), exposure).standBackM();
    }

    private static void each(String path, int rows, Consumer<Row> check) throws IOException {
        List<Fault> faults = new ArrayList<>();
        try (Reader text = FireFixtures.resource(path)) {
            List<Row> read = ReferenceTable.read(path, text, List.of(), faults).map(row -> row);
            assertThat(faults).isEmpty();
            assertThat(read).hasSize(rows);
            read.forEach(check);
        }
    }
}
