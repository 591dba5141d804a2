package campcloth.pages.cloths;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Property;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.pages.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How figures of cloths are read: the unit once, an estimate with no more digits than it deserves. */
class AmountsTest {

    @ParameterizedTest
    @CsvSource({
        "THICKNESS_MM, ESTIMATED, METRIC, 0.474 mm, 0.351 – 0.65 mm",
        "THICKNESS_MM, MEASURED, METRIC, 0.4741 mm, 0.3508 – 0.6498 mm",
        "SHRINK_WARP_PERCENT, ESTIMATED, METRIC, 0.474 %, 0.351 – 0.65 %",
        "WIDTH_CM, DECLARED, METRIC, 0.5 cm, 0.4 – 0.6 cm",
        "WIDTH_CM, DECLARED, IMPERIAL, 1/8 in, 1/8 – 1/4 in",
        "PRICE_PER_METRE, DECLARED, METRIC, 0.47 EUR per m, 0.35 – 0.65 EUR per m",
    })
    void aFigureIsReadWithItsUnitOnce(Property property, Basis basis, Units units, String value, String interval) {
        Figure figure = new Figure(0.47411, 0.35078, 0.64981, basis, "ruler");
        assertThat(Amounts.of(property.field(), property.unit(), figure, units)).isEqualTo(value);
        assertThat(Amounts.interval(property.field(), property.unit(), figure, units))
                .isEqualTo(interval);
    }
}
