package campcloth.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import campcloth.pages.Units.Measure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Factors by the international yard and pound agreement of 1959: 1 yd = 0.9144 m, 1 lb = 0.45359237 kg, exactly. */
class UnitsTest {

    @ParameterizedTest
    @CsvSource({
        "2.54, 1 in",
        "98, 38 5/8 in",
        "3.175, 1 1/4 in",
        "0.3175, 1/8 in",
        "0, 0 in",
        "91.44, 36 in",
        "0.1, 0 in",
    })
    void lengthsInEighthsOfAnInch(double cm, String inches) {
        assertThat(Units.IMPERIAL.length(cm)).isEqualTo(inches);
    }

    @ParameterizedTest
    @CsvSource({"91.44, 1 yd", "91.45, 1 1/8 yd", "220, 2 1/2 yd", "228.6, 2 1/2 yd", "228.7, 2 5/8 yd"})
    void whatIsBoughtIsNeverRoundedDown(double cm, String yards) {
        assertThat(Units.IMPERIAL.clothLength(cm)).isEqualTo(yards);
    }

    @ParameterizedTest
    @CsvSource({"33.906, 1.0 oz/yd²", "190, 5.6 oz/yd²", "300, 8.8 oz/yd²"})
    void weightsInOuncesByTheSquareYard(double gsm, String ounces) {
        assertThat(Units.IMPERIAL.weight(gsm)).isEqualTo(ounces);
    }

    @Test
    void metricStaysAsItIs() {
        assertThat(Units.METRIC.length(98)).isEqualTo("98 cm");
        assertThat(Units.METRIC.length(98.25)).isEqualTo("98.3 cm");
        assertThat(Units.METRIC.clothLength(220)).isEqualTo("220 cm");
        assertThat(Units.METRIC.weight(189.6)).isEqualTo("190 g/m²");
        assertThat(Units.METRIC.distance(2)).isEqualTo("2.0 m");
        assertThat(Units.METRIC.keepAway(3)).isEqualTo("3.0 m");
        assertThat(Units.METRIC.keepAway(1.21)).isEqualTo("1.3 m");
        assertThat(Units.IMPERIAL.keepAway(3)).isEqualTo("9.9 ft");
        assertThat(Units.IMPERIAL.keepAway(1.524)).isEqualTo("5.0 ft");
        assertThat(Units.METRIC.price(14.5, "EUR")).isEqualTo("14.50 EUR per m");
        assertThat(Units.METRIC.mass(0.4)).isEqualTo("0.40 kg");
    }

    @Test
    void aPriceByTheYardIsLower() {
        assertThat(Units.IMPERIAL.price(10, "EUR")).isEqualTo("9.14 EUR per yd");
    }

    @ParameterizedTest
    @EnumSource
    void whatIsTypedComesBackWhateverTheUnits(Measure measure) {
        for (Units units : Units.values()) {
            assertThat(measure.fromCore(measure.toCore(12.5, units), units)).isCloseTo(12.5, offset(1e-9));
        }
    }
}
