package campcloth.comfort.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.ReferenceTable.Row;
import org.junit.jupiter.api.Test;

class WeatherIndexTest {

    @Test
    void windChillAgrees() {
        for (Row row : CheckRows.of("agreement/wind-chill.csv")) {
            assertThat(WindChill.temperatureC(row.number("airC"), row.number("windKmh") / 3.6)
                            .inRange()
                            .orElseThrow()
                            .value())
                    .as("line %d", row.line())
                    .isCloseTo(row.number("chillC"), within(0.06));
        }
    }

    @Test
    void inAirSoCalmThatTheFormulaPromisesWarmthThereIsNoWindChill() {
        for (Row row : CheckRows.of("agreement/wind-chill-refused.csv")) {
            assertThat(WindChill.temperatureC(row.number("airC"), row.number("windKmh") / 3.6)
                            .outOfRange())
                    .as("line %d", row.line())
                    .isPresent();
        }
    }

    @Test
    void inCalmOrWarmAirThereIsNoWindChill() {
        assertThat(WindChill.temperatureC(0, 0.1).outOfRange()).isPresent();
        assertThat(WindChill.temperatureC(10.1, 5).outOfRange()).isPresent();
    }

    @Test
    void heatIndexAgrees() {
        for (Row row : CheckRows.of("agreement/heat-index.csv")) {
            assertThat(HeatIndex.fahrenheit(row.number("airF"), row.number("humidityPercent")))
                    .as("line %d", row.line())
                    .isCloseTo(row.number("indexF"), within(0.01));
        }
    }

    @Test
    void theRegressionAloneAgreesAndGivesWayWhereItDoesNotHold() {
        for (Row row : CheckRows.of("agreement/heat-index-regression.csv")) {
            double airC = row.number("airC");
            double humidity = row.number("humidityPercent");
            assertThat((HeatIndex.regression(airC * 1.8 + 32, humidity) - 32) / 1.8)
                    .as("line %d", row.line())
                    .isCloseTo(row.number("regressionC"), within(0.1));
            assertThat(HeatIndex.temperatureC(airC, humidity)
                            .inRange()
                            .orElseThrow()
                            .value())
                    .as("line %d", row.line())
                    .isCloseTo(row.number("indexC"), within(0.1));
        }
    }

    @Test
    void inCoolAirThereIsNoHeatIndex() {
        assertThat(HeatIndex.temperatureC(19.9, 50).outOfRange()).isPresent();
    }

    /** Arithmetic of the point source done elsewhere: 30 kW at 2 m, seated, surroundings at 5 degrees: 10.1 K more. */
    @Test
    void aFireWarmsWhoeverSitsBeforeIt() {
        double flux = RadiantField.fireFluxWm2(30, 2, 1000, true);
        assertThat(RadiantField.radiantC(5, flux) - 5).isCloseTo(10.1, within(0.1));
    }
}
