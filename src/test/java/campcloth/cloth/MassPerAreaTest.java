package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class MassPerAreaTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/published/mass-per-area.csv", numLinesToSkip = 1, commentCharacter = '#')
    void ouncesPerSquareYardAreThePublishedGramsPerSquareMetre(double ounces, double gsm, double tolerance) {
        assertThat(MassPerArea.gsmOfOuncesPerSquareYard(ounces)).isCloseTo(gsm, within(tolerance));
    }
}
