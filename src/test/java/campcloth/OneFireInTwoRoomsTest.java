package campcloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.comfort.model.RadiantField;
import campcloth.fire.model.PointSource;
import org.junit.jupiter.api.Test;

/** Comfort and fire may not see each other: the heat of a fire is written in both, and is the same. */
class OneFireInTwoRoomsTest {

    /** Share of a seated body that a fire before it meets. */
    private static final double SEATED_SHARE = 0.290;

    @Test
    void theFireThatWarmsIsTheFireThatBurns() {
        for (double kw = 5; kw <= 500; kw *= 1.7) {
            for (double m = 0.5; m <= 10; m *= 1.3) {
                double burns = 1000 * PointSource.fluxKwM2(PointSource.NOMINAL_FRACTION, kw, m);
                double warms = RadiantField.fireFluxWm2(kw, m, Double.MAX_VALUE, true);
                assertThat(warms).isCloseTo(SEATED_SHARE * burns, within(1e-9 * burns));
            }
        }
    }
}
