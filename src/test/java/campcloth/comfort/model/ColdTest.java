package campcloth.comfort.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.comfort.Reading;
import campcloth.figure.ReferenceTable.Row;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class ColdTest {

    private static final Offset<Double> CLO = within(0.005);
    private static final Offset<Double> HOURS = within(0.02);

    @Test
    void tableF1OfTheStandardIsMet() {
        for (Row row : CheckRows.of("published/ireq.csv")) {
            assertThat(required(row, motion(row, 0), ColdCriterion.NEUTRAL))
                    .as("line %d", row.line())
                    .isCloseTo(row.number("neutralClo"), within(0.1));
        }
    }

    @Test
    void anotherSolutionOfTheSameEquationsAgrees() {
        for (Row row : CheckRows.of("agreement/ireq.csv")) {
            Motion motion = motion(row, 0);
            double neutral = required(row, motion, ColdCriterion.NEUTRAL);
            assertThat(neutral).as("line %d", row.line()).isCloseTo(row.number("neutralClo"), within(0.006));
            assertThat(required(row, motion, ColdCriterion.MINIMAL))
                    .as("line %d", row.line())
                    .isCloseTo(row.number("minimalClo"), within(0.006));
            assertThat(basic(neutral, motion, row.number("permeability")))
                    .as("line %d", row.line())
                    .isCloseTo(row.number("staticNeutralClo"), within(0.02));
        }
    }

    @Test
    void theWholeChainFromClothingToHoursAgrees() {
        for (Row row : CheckRows.of("agreement/cold.csv")) {
            Motion motion = motion(row, row.number("walkingMs"));
            double p = row.number("permeability");
            double neutral = required(row, motion, ColdCriterion.NEUTRAL);
            double minimal = required(row, motion, ColdCriterion.MINIMAL);
            double resultant = ResultantInsulation.m2KW(row.number("basicClo") * Worn.M2KW_PER_CLO, motion, p);
            String line = "line " + row.line();
            assertThat(neutral).as(line).isCloseTo(row.number("neutralClo"), CLO);
            assertThat(minimal).as(line).isCloseTo(row.number("minimalClo"), CLO);
            assertThat(basic(neutral, motion, p)).as(line).isCloseTo(row.number("staticNeutralClo"), CLO);
            assertThat(basic(minimal, motion, p)).as(line).isCloseTo(row.number("staticMinimalClo"), CLO);
            assertThat(resultant / Worn.M2KW_PER_CLO).as(line).isCloseTo(row.number("resultantClo"), CLO);
            assertThat(hours(row, motion, ColdCriterion.NEUTRAL, resultant))
                    .as(line)
                    .isCloseTo(row.number("neutralHours"), HOURS);
            assertThat(hours(row, motion, ColdCriterion.MINIMAL, resultant))
                    .as(line)
                    .isCloseTo(row.number("minimalHours"), HOURS);
        }
    }

    @Test
    void clothingThatJustSufficesLastsTheWholeDay() {
        Air air = new Air(-5, -5, 2, 85);
        Motion motion = Motion.conditioned(2, 0, 116);
        double needed = value(RequiredInsulation.clo(air, 116, motion, ColdCriterion.MINIMAL)) * Worn.M2KW_PER_CLO;
        assertThat(value(DurationLimit.hours(air, 116, motion, ColdCriterion.MINIMAL, needed)))
                .isEqualTo(DurationLimit.LONGEST_HOURS);
        assertThat(value(DurationLimit.hours(air, 116, motion, ColdCriterion.MINIMAL, needed * 0.6)))
                .isLessThan(4);
    }

    @Test
    void theStaticNeedGivesTheResultantOneBack() {
        Motion motion = Motion.conditioned(5, 0.5, 115);
        double basic = ResultantInsulation.basicFor(0.25, motion, 30);
        assertThat(ResultantInsulation.m2KW(basic, motion, 30)).isCloseTo(0.25, within(1e-9));
    }

    @Test
    void aboveTenDegreesOrBelowRestingHeatThereIsNoRequirement() {
        assertThat(RequiredInsulation.clo(
                                new Air(10.1, 10, 1, 50), 70, Motion.conditioned(1, 0, 70), ColdCriterion.NEUTRAL)
                        .outOfRange())
                .hasValueSatisfying(o -> assertThat(o.because()).startsWith("air temperature"));
        assertThat(RequiredInsulation.clo(
                                new Air(5, 5, 1, 50), 40.7, Motion.conditioned(1, 0, 40.7), ColdCriterion.NEUTRAL)
                        .outOfRange())
                .hasValueSatisfying(o -> assertThat(o.because()).startsWith("metabolic rate"));
        assertThat(RequiredInsulation.clo(
                                new Air(5, 5, 18.1, 50), 70, Motion.conditioned(18.1, 0, 70), ColdCriterion.NEUTRAL)
                        .outOfRange())
                .hasValueSatisfying(o -> assertThat(o.because()).startsWith("relative air speed"));
    }

    @Test
    void nobodyNeedsClothingInAFurnace() {
        assertThat(value(RequiredInsulation.clo(
                        new Air(10, 90, 0.4, 50), 300, Motion.conditioned(0.4, 0, 300), ColdCriterion.NEUTRAL)))
                .isZero();
    }

    @Test
    void permeabilityIsUsedFromOneToAThousand() {
        Motion motion = Motion.conditioned(6, 0.9, 100);
        assertThat(ResultantInsulation.factor(motion, 0)).isEqualTo(ResultantInsulation.factor(motion, 1));
        assertThat(ResultantInsulation.factor(motion, 9000)).isEqualTo(ResultantInsulation.factor(motion, 1000));
    }

    private static Motion motion(Row row, double walkingMs) {
        return Motion.conditioned(row.number("speedMs"), walkingMs, row.number("metabolicWm2"));
    }

    private static Air air(Row row) {
        return new Air(
                row.number("airC"), row.number("radiantC"), row.number("speedMs"), row.number("humidityPercent"));
    }

    private static double required(Row row, Motion motion, ColdCriterion criterion) {
        return value(RequiredInsulation.clo(air(row), row.number("metabolicWm2"), motion, criterion));
    }

    private static double hours(Row row, Motion motion, ColdCriterion criterion, double resultantM2KW) {
        return value(DurationLimit.hours(air(row), row.number("metabolicWm2"), motion, criterion, resultantM2KW));
    }

    private static double basic(double resultantClo, Motion motion, double p) {
        return ResultantInsulation.basicFor(resultantClo * Worn.M2KW_PER_CLO, motion, p) / Worn.M2KW_PER_CLO;
    }

    private static double value(Reading reading) {
        return reading.inRange().orElseThrow().value();
    }
}
