package campcloth.comfort.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.comfort.Reading;
import campcloth.figure.ReferenceTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PmvTest {

    @Test
    void tableD1OfTheStandardIsMetToItsLastDigit() {
        for (ReferenceTable.Row row : CheckRows.of("published/pmv-table-d1.csv")) {
            Air air = new Air(
                    row.number("airC"), row.number("radiantC"), row.number("speedMs"), row.number("humidityPercent"));
            double vote = vote(air, row.number("met"), row.number("clo"));
            assertThat(vote).as("line %d", row.line()).isCloseTo(row.number("vote"), within(0.01));
            assertThat(Pmv.dissatisfiedPercent(vote))
                    .as("line %d", row.line())
                    .isCloseTo(row.number("dissatisfiedPercent"), within(1.0));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"published/pmv.csv", "agreement/pmv.csv"})
    void quotedRowsAreMet(String file) {
        for (ReferenceTable.Row row : CheckRows.of(file)) {
            boolean ip = row.text("units").equals("ip");
            Air air = new Air(
                    ip ? celsius(row.number("air")) : row.number("air"),
                    ip ? celsius(row.number("radiant")) : row.number("radiant"),
                    ip ? row.number("speed") * 0.3048 : row.number("speed"),
                    row.number("humidityPercent"));
            double vote = vote(air, row.number("met"), row.number("clo"));
            assertThat(vote).as("line %d", row.line()).isCloseTo(row.number("vote"), within(0.1));
            assertThat(Pmv.dissatisfiedPercent(vote))
                    .as("line %d", row.line())
                    .isCloseTo(row.number("dissatisfiedPercent"), within(1.0));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "9.9, 20, 0.1, 50, 1.2, 1, air temperature",
        "30.1, 20, 0.1, 50, 1.2, 1, air temperature",
        "20, 40.1, 0.1, 50, 1.2, 1, mean radiant temperature",
        "20, 20, 1.01, 50, 1.2, 1, air speed",
        "20, 20, 0.1, 50, 0.7, 1, metabolic rate",
        "20, 20, 0.1, 50, 1.2, 2.1, clothing insulation",
        "30, 30, 0.1, 100, 1.2, 0.5, vapour pressure",
        "10, 10, 0.9, 50, 1.0, 0.2, predicted mean vote"
    })
    void outsideTheRangeThereIsNoVote(
            double airC, double radiantC, double speedMs, double humidity, double met, double clo, String limit) {
        Reading reading = Pmv.vote(new Air(airC, radiantC, speedMs, humidity), met, clo);
        assertThat(reading.outOfRange())
                .hasValueSatisfying(o -> assertThat(o.because()).startsWith(limit));
    }

    @Test
    void rowsOfAnotherProgramOutsideTheStandardsRangeAreRefused() {
        for (ReferenceTable.Row row : CheckRows.of("agreement/pmv-refused.csv")) {
            Air air = new Air(
                    row.number("airC"), row.number("radiantC"), row.number("speedMs"), row.number("humidityPercent"));
            assertThat(Pmv.vote(air, row.number("met"), row.number("clo")).outOfRange())
                    .as("line %d", row.line())
                    .hasValueSatisfying(o -> assertThat(o.because()).startsWith(row.text("limit")));
        }
    }

    @Test
    void aNeutralVoteLeavesFivePercentDissatisfied() {
        assertThat(Pmv.dissatisfiedPercent(0)).isCloseTo(5, within(1e-12));
    }

    private static double vote(Air air, double met, double clo) {
        return Pmv.vote(air, met, clo).inRange().orElseThrow().value();
    }

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }
}
