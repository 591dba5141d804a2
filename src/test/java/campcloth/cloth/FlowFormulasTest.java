package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Worked examples of the formulas behind air and vapour; the numbers follow by arithmetic from the stated constants. */
class FlowFormulasTest {

    @Test
    void kozenyCarmanGivesTheWorkedExampleOfLinen() {
        // e^3 = 0.3717, d^2 = 2.89e-10, 80 (1-e)^2 = 6.317: K = 1.700e-11 m2; K 100 / (1.81e-5 0.45e-3) = 0.2088 m/s
        assertThat(KozenyCarman.velocityMmS(0.719, 17, 0.45)).isCloseTo(208.8, within(0.3));
    }

    @Test
    void halfTheThicknessAtTheSamePorosityLetsTwiceTheAirThrough() {
        assertThat(KozenyCarman.velocityMmS(0.7, 15, 0.25))
                .isCloseTo(2 * KozenyCarman.velocityMmS(0.7, 15, 0.5), within(1e-9));
    }

    @Test
    void oneMillimetreOfStillAirCostsWhatDiffusionSays() {
        double gasConstant = 461.5;
        double kelvin = 308;
        double diffusionM2S = 2.7e-5;
        double latentJKg = 0.672 * 3600 * 1000;
        assertThat(VapourResistance.throughAir(1, 1))
                .isCloseTo(0.001 * gasConstant * kelvin / (diffusionM2S * latentJKg), within(0.01));
    }

    @Test
    void diffusionGivesTheWorkedExampleOfLinen() {
        assertThat(VapourResistance.throughAir(0.45, 0.719)).isCloseTo(1.61, within(0.005));
    }

    @Test
    void porosityOfLinenFollowsFromWeightThicknessAndDensity() {
        // 190 g/m2 over 0.45 mm is 0.422 g/cm3
        assertThat(Structure.porosity(190, 0.45, 1.50)).isCloseTo(0.7185, within(0.0001));
    }

    @Test
    void independentFactorsOfTwoEachWayCombineInQuadrature() {
        Span two = Span.factor(1, 2);
        Span product = Span.propagated(in -> in[0] * in[1], two, two);
        assertThat(product.high()).isCloseTo(Math.exp(Math.sqrt(2) * Math.log(2)), within(1e-12));
        assertThat(product.low()).isCloseTo(1 / product.high(), within(1e-12));
    }
}
