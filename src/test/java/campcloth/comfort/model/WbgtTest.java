package campcloth.comfort.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.comfort.Reading;
import campcloth.figure.ReferenceTable.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WbgtTest {

    private static final double MET_PER_WATT = 1 / (58.2 * 1.8);

    @Test
    void theSumOfTheThermometersAgrees() {
        for (Row row : CheckRows.of("agreement/wbgt.csv")) {
            double wick = row.number("naturalWetBulbC");
            double globe = row.number("globeC");
            double wbgt = row.text("sun").equals("yes")
                    ? Wbgt.inSun(wick, globe, row.number("airC"))
                    : Wbgt.inShade(wick, globe);
            assertThat(wbgt).as("line %d", row.line()).isCloseTo(row.number("wbgtC"), within(0.1));
        }
    }

    @Test
    void theThermometersAgree() {
        for (Row row : CheckRows.of("agreement/wbgt-thermometers.csv")) {
            double airC = row.number("airC");
            double humidity = row.number("humidityPercent");
            Air air = new Air(airC, Wbgt.openSurroundingsC(airC, humidity), row.number("speedMs"), humidity);
            Sunlight sun =
                    new Sunlight(row.number("globalWm2"), row.number("directShare"), row.number("altitudeDegrees"));
            assertThat(Wbgt.naturalWetBulbC(air, sun))
                    .as("line %d", row.line())
                    .isCloseTo(row.number("naturalWetBulbC"), within(0.05));
            assertThat(Wbgt.globeC(air, sun)).as("line %d", row.line()).isCloseTo(row.number("globeC"), within(0.05));
        }
    }

    /** Nothing evaporates into saturated air: both thermometers show the air, and so does their sum. */
    @Test
    void inSaturatedShadeItIsTheAir() {
        assertThat(value(Wbgt.temperatureC(new Air(31, 31, 1, 100), Sunlight.NONE)))
                .isCloseTo(31, within(1e-3));
    }

    /**
     * Rows of ISO 7243 (second-hand, {@code published/wbgt-reference.csv}), which are rounded to whole degrees: the curves stay
     * within a degree of them.
     */
    @Test
    void theReferenceFollowsTheRowsOfTheStandard() {
        for (Row row : CheckRows.of("published/wbgt-reference.csv")) {
            double met = row.number("watts") * MET_PER_WATT;
            assertThat(value(Wbgt.referenceC(met, true)))
                    .as("line %d", row.line())
                    .isCloseTo(row.number("acclimatisedC"), within(1.0));
            assertThat(value(Wbgt.referenceC(met, false)))
                    .as("line %d", row.line())
                    .isCloseTo(row.number("otherC"), within(1.3));
        }
    }

    @Test
    void workIsSharedWithRestSoThatTheHourKeepsToTheReference() {
        double work = 400 * MET_PER_WATT;
        double wbgt = value(Wbgt.referenceC(250 * MET_PER_WATT, false));
        double share = Wbgt.workShare(work, wbgt);
        assertThat(share * 400 + (1 - share) * 115).isCloseTo(250, within(0.1));
        assertThat(Wbgt.workShare(work, 20)).isEqualTo(1);
        assertThat(Wbgt.workShare(work, 36)).isZero();
        assertThat(Wbgt.workShare(0.8, 36)).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "9.9, 20, 1, air temperature",
        "50.1, 50, 1, air temperature",
        "30, 30, 20.1, air speed",
        "30, 101, 1, mean"
    })
    void outsideItsRangeThereIsNone(double airC, double radiantC, double speedMs, String limit) {
        assertThat(Wbgt.temperatureC(new Air(airC, radiantC, speedMs, 50), Sunlight.NONE)
                        .outOfRange())
                .hasValueSatisfying(o -> assertThat(o.because()).startsWith(limit));
    }

    @Test
    void harderWorkThanTheReferenceKnowsHasNone() {
        assertThat(Wbgt.referenceC(601 * MET_PER_WATT, false).outOfRange()).isPresent();
        assertThat(value(Wbgt.referenceC(0.8, false))).isEqualTo(value(Wbgt.referenceC(115 * MET_PER_WATT, false)));
    }

    private static double value(Reading reading) {
        return reading.inRange().orElseThrow().value();
    }
}
