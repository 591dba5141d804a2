package campcloth.pages.shop;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Property;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.pages.Units;
import org.junit.jupiter.api.Test;

class ShopFiguresTest {

    private static final ShopFigures METRIC = new ShopFigures(Units.METRIC);

    @Test
    void anEstimateHasNoMoreFiguresThanItIsWorth() {
        Figure thickness = new Figure(0.48776, 0.36232, 0.66671, Basis.ESTIMATED, "estimate");
        assertThat(METRIC.shown(Property.THICKNESS_MM, thickness)).isEqualTo("0.488 (0.362 to 0.667) mm");
        Figure air = new Figure(118.62, 26.951, 521.84, Basis.ESTIMATED, "estimate");
        assertThat(METRIC.shown(Property.AIR_PERMEABILITY_MM_S, air)).startsWith("119 (27 to 522) mm/s");
    }

    @Test
    void whatWasToldStaysAsItWasTold() {
        assertThat(METRIC.shown(Property.WIDTH_CM, Figure.exact(150.5, Basis.DECLARED, "the shop")))
                .isEqualTo("150.5 cm");
    }
}
