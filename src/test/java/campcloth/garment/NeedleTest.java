package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NeedleTest {

    /** Common practice, no source: the sizes used for very light, light, medium, heavy and very heavy cloth. */
    @ParameterizedTest
    @CsvSource({
        "40, 60, 60",
        "59, 60, 60",
        "60, 70, 80",
        "129, 70, 80",
        "131, 80, 90",
        "200, 80, 90",
        "249, 80, 90",
        "251, 90, 100",
        "349, 90, 100",
        "351, 100, 110",
        "700, 100, 110"
    })
    void liesWithinTheBandOfItsWeight(double weightGsm, int least, int most) {
        assertThat(Needle.forWeight(weightGsm).nm()).isBetween(least, most);
    }

    @Test
    void heavierClothNeverTakesAFinerNeedleOrAShorterStitch() {
        Needle before = Needle.forWeight(10);
        for (int gsm = 11; gsm <= 2000; gsm++) {
            Needle needle = Needle.forWeight(gsm);
            assertThat(needle.nm()).as("%d g/m2", gsm).isGreaterThanOrEqualTo(before.nm());
            assertThat(needle.stitchLengthMm()).as("%d g/m2", gsm).isGreaterThanOrEqualTo(before.stitchLengthMm());
            before = needle;
        }
    }

    @Test
    void mediumClothIsSewnTwoAndAHalfMillimetresLong() {
        assertThat(Needle.forWeight(200).stitchLengthMm()).isEqualTo(2.5);
    }
}
