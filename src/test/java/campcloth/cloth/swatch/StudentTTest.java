package campcloth.cloth.swatch;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class StudentTTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/published/student-t.csv", numLinesToSkip = 1, commentCharacter = '#')
    void quantilesAreThePublishedOnes(int degreesOfFreedom, double quantile) {
        assertThat(StudentT.of95Percent(degreesOfFreedom)).isEqualTo(quantile);
    }
}
