package campcloth.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class UnitTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/published/units-of-lists.csv", numLinesToSkip = 1, commentCharacter = '#')
    void unitsConvertAsTheyAreDefined(
            Property property, String spelling, double written, double value, double high, double tolerance) {
        Unit unit = Unit.of(property, spelling).orElseThrow();
        assertThat(unit.convert(written)).isCloseTo(value, within(tolerance));
        assertThat(unit.convertHigh(written)).isCloseTo(high, within(tolerance));
    }
}
