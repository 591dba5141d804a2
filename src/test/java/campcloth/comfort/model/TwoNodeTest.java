package campcloth.comfort.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.ReferenceTable.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TwoNodeTest {

    @Test
    void theStandardsTableOfEffectiveTemperaturesIsMet() {
        for (Row row : CheckRows.of("published/set.csv")) {
            TwoNode model = model(row);
            assertThat(model.standardEffectiveC(model.after(60)))
                    .as("line %d", row.line())
                    .isCloseTo(row.number("setC"), within(0.3));
        }
    }

    @Test
    void anotherProgramFindsTheSameBody() {
        for (Row row : CheckRows.of("agreement/two-node.csv")) {
            sameBody(row, model(row).after(59)); // what the other program makes of an hour
        }
    }

    @ParameterizedTest
    @CsvSource({
        "-0.1, 1, 1.2, 1, air temperature",
        "45.1, 1, 1.2, 1, air temperature",
        "20, 5.1, 1.2, 1, relative air speed",
        "20, 1, 0.7, 1, metabolic rate",
        "20, 1, 5.1, 1, metabolic rate",
        "20, 1, 1.2, 4.1, clothing insulation"
    })
    void outsideItsRangeTheModelIsRefused(double airC, double speedMs, double met, double clo, String limit) {
        Air air = new Air(airC, 20, speedMs, 50);
        assertThat(TwoNode.outside(air, met, Worn.ordinary(clo)))
                .hasValueSatisfying(o -> assertThat(o.because()).startsWith(limit));
        assertThatThrownBy(() -> new TwoNode(air, met, Worn.ordinary(clo), false))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(limit);
    }

    @Test
    void withTheNeededInsulationTheSkinIsJustWarmEnough() {
        Air air = new Air(16, 16, 0.8, 60);
        double clo = SkinNeed.clo(air, 1.6, false).inRange().orElseThrow().value();
        double comfortC = 35.7 - 0.0285 * 1.6 * TwoNode.WM2_PER_MET;
        assertThat(clo).isBetween(0.2, 3.0);
        assertThat(new TwoNode(air, 1.6, Worn.ordinary(clo), false).after(60).skinC())
                .isCloseTo(comfortC, within(0.01));
    }

    @Test
    void theStandardEnvironmentWithoutTheBodysOwnWindAgrees() {
        for (Row row : CheckRows.of("agreement/set-standing-still.csv")) {
            TwoNode model = model(row);
            assertThat(StandardEnvironment.temperatureC(
                            row.number("met"), StandardEnvironment.STILL_AIR_WM2K, model.after(60)))
                    .as("line %d", row.line())
                    .isCloseTo(row.number("setC"), within(0.3));
        }
    }

    @Test
    void aBodyThatCanSweatOrFlushLessGrowsAsHotAsElsewhere() {
        for (Row row : CheckRows.of("agreement/two-node-limited.csv")) {
            TwoNode model = new TwoNode(
                    air(row),
                    row.number("met"),
                    Worn.ordinary(row.number("clo")),
                    false,
                    HeatHabit.NONE,
                    row.number("mostBloodFlow"),
                    row.number("mostSweat"));
            sameBody(row, model.after(59));
        }
    }

    @Test
    void anHourCutInTwoIsTheSameHour() {
        for (Row row : CheckRows.of("agreement/two-node.csv")) {
            TwoNode model = model(row);
            Body cut = model.after(model.entered(model.after(25).state()), 35);
            Body whole = model.after(60);
            assertThat(cut.skinC()).as("line %d", row.line()).isCloseTo(whole.skinC(), within(1e-4));
            assertThat(cut.coreC()).as("line %d", row.line()).isCloseTo(whole.coreC(), within(1e-4));
            assertThat(cut.sweatGM2H()).as("line %d", row.line()).isCloseTo(whole.sweatGM2H(), within(0.1));
        }
    }

    @Test
    void whoComesInFromHardWorkIsStillWarmAndWet() {
        Air air = new Air(22, 22, 0.5, 60);
        Worn worn = Worn.ordinary(1);
        State worked = new TwoNode(air, 4, worn, false).after(60).state();
        TwoNode rest = new TwoNode(air, 1, worn, true);
        assertThat(worked.storedWhM2()).isPositive();
        assertThat(rest.after(rest.entered(worked), 5).skinC())
                .isGreaterThan(rest.after(5).skinC() + 0.2);
        assertThat(rest.after(rest.entered(worked), 5).sweatGM2H())
                .isGreaterThan(rest.after(5).sweatGM2H() + 10);
        assertThat(rest.after(rest.entered(worked), 480).skinC())
                .isCloseTo(rest.after(480).skinC(), within(0.05));
    }

    @Test
    void aNeutralBodyHoldsNoHeatAboveIt() {
        assertThat(State.NEUTRAL.storedWhM2()).isZero();
    }

    private static void sameBody(Row row, Body body) {
        String line = "line " + row.line();
        assertThat(body.coreC()).as(line).isCloseTo(row.number("coreC"), within(0.1));
        assertThat(body.skinC()).as(line).isCloseTo(row.number("skinC"), within(0.1));
        assertThat(body.wettedness()).as(line).isCloseTo(row.number("wettedness"), within(0.02));
        assertThat(body.evaporationWm2()).as(line).isCloseTo(row.number("evaporationWm2"), within(4.0));
        assertThat(body.sweatGM2H()).as(line).isCloseTo(row.number("sweatGM2H"), within(6.0));
    }

    private static TwoNode model(Row row) {
        return new TwoNode(air(row), row.number("met"), Worn.ordinary(row.number("clo")), false);
    }

    private static Air air(Row row) {
        return new Air(
                row.number("airC"), row.number("radiantC"), row.number("speedMs"), row.number("humidityPercent"));
    }
}
