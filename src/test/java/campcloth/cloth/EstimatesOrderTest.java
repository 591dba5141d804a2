package campcloth.cloth;

import static campcloth.cloth.Samples.between;
import static campcloth.cloth.Samples.cloth;
import static campcloth.cloth.Samples.everyCombination;
import static campcloth.cloth.Samples.known;
import static campcloth.cloth.Samples.tries;
import static campcloth.cloth.Samples.value;
import static campcloth.cloth.Samples.words;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Figure;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which of two cloths is thicker, closer or surer: what must hold whatever the numbers are. */
class EstimatesOrderTest {

    private static final Set<Property> ESTIMATED = EnumSet.complementOf(EnumSet.of(Property.PRICE_PER_METRE));
    private static final long SEED = 20260403;
    private static final int TRIES = 4000;

    @Test
    void heavierAtTheSameWeaveIsNeverThinner() {
        tries(SEED, TRIES, random -> {
            Cloth cloth = Samples.any(random);
            double weight = between(random, 20, 1200);
            Cloth light = Estimates.complete(cloth.with(Property.WEIGHT_GSM, known(weight)));
            Cloth heavy = Estimates.complete(cloth.with(Property.WEIGHT_GSM, known(weight * between(random, 1, 1.6))));
            assertNeverLess(heavy, light, Property.THICKNESS_MM);
        });
    }

    @Test
    void heavierAtTheSameWeaveNeverLetsMoreAirThrough() {
        tries(SEED, TRIES, random -> {
            Cloth cloth = Samples.any(random);
            double weight = between(random, 20, 1200);
            Cloth light = Estimates.complete(cloth.with(Property.WEIGHT_GSM, known(weight)));
            Cloth heavy = Estimates.complete(cloth.with(Property.WEIGHT_GSM, known(weight * between(random, 1, 1.6))));
            assertNeverLess(light, heavy, Property.AIR_PERMEABILITY_MM_S);
        });
    }

    @Test
    void thickerNeverResistsVapourLess() {
        tries(SEED, TRIES, random -> {
            Cloth cloth = Samples.any(random);
            if (random.nextBoolean()) {
                cloth = cloth.with(Property.WEIGHT_GSM, known(between(random, 20, 1200)));
            }
            double thickness = between(random, 0.05, 30);
            Cloth thin = Estimates.complete(cloth.with(Property.THICKNESS_MM, known(thickness)));
            Cloth thick =
                    Estimates.complete(cloth.with(Property.THICKNESS_MM, known(thickness * between(random, 1, 1.9))));
            assertNeverLess(thick, thin, Property.VAPOUR_RESISTANCE_M2PA_W);
        });
    }

    @Test
    void aClosingFinishNeverLetsMoreAirThrough() {
        tries(SEED, TRIES, random -> {
            Cloth open = Samples.refinished(Samples.any(random), Finish.NONE);
            if (random.nextBoolean()) {
                open = open.with(Property.WEIGHT_GSM, known(between(random, 20, 1800)));
            }
            if (random.nextBoolean()) {
                open = open.with(Property.THICKNESS_MM, known(between(random, 0.05, 20)));
            }
            for (Finish closing : List.of(Finish.CALENDERED, Finish.FULLED, Finish.WAXED, Finish.COATED)) {
                if (closing != Finish.FULLED || !BulkDensity.isHair(open)) {
                    Cloth closed = Estimates.complete(Samples.refinished(open, closing));
                    assertNeverLess(Estimates.complete(open), closed, Property.AIR_PERMEABILITY_MM_S);
                }
            }
        });
    }

    @Test
    void aFilmNeverResistsVapourLessThanTheClothBelowIt() {
        everyCombination(bare -> {
            Cloth known = bare.with(Property.WEIGHT_GSM, known(250)).with(Property.THICKNESS_MM, known(0.6));
            Cloth coated = Estimates.complete(Samples.refinished(known, Finish.COATED));
            Cloth plain = Estimates.complete(Samples.refinished(known, Finish.NONE));
            assertNeverLess(coated, plain, Property.VAPOUR_RESISTANCE_M2PA_W);
        });
    }

    @Test
    void aLessCertainWeightNeverMakesSurerEstimates() {
        tries(SEED, TRIES, random -> {
            Cloth cloth = Samples.any(random);
            double weight = between(random, 60, 900);
            double less = between(random, 0.4, 1);
            double more = between(random, 1, 2);
            Cloth sure = Estimates.complete(cloth.with(Property.WEIGHT_GSM, known(weight)));
            Cloth unsure =
                    Estimates.complete(cloth.with(Property.WEIGHT_GSM, known(weight * less, weight, weight * more)));
            for (Property property : ESTIMATED) {
                assertThat(unsure.required(property).low())
                        .isLessThanOrEqualTo(sure.required(property).low());
                assertThat(unsure.required(property).high())
                        .isGreaterThanOrEqualTo(sure.required(property).high());
            }
        });
    }

    @Test
    void plainLinenBreathesMoreThanTightFilamentPolyesterOfTheSameWeight() {
        double linen = value(cloth("flax 100", Weave.PLAIN, Finish.NONE, 150), Property.AIR_PERMEABILITY_MM_S);
        for (Weave closed : List.of(Weave.SATIN, Weave.TIGHT_PLAIN)) {
            Cloth polyester = cloth("polyester 100", closed, Finish.NONE, 150);
            assertThat(linen).isGreaterThan(3 * value(polyester, Property.AIR_PERMEABILITY_MM_S));
        }
    }

    @Test
    void fulledWoolLetsFarLessAirThroughThanOpenWoolOfTheSameWeight() {
        for (double weight : List.of(250.0, 350.0, 500.0)) {
            double open =
                    value(cloth("wool 100", Weave.OPEN_PLAIN, Finish.NONE, weight), Property.AIR_PERMEABILITY_MM_S);
            for (Weave weave : List.of(Weave.OPEN_PLAIN, Weave.PLAIN, Weave.TWILL)) {
                Cloth fulled = cloth("wool 100", weave, Finish.FULLED, weight);
                assertThat(value(fulled, Property.AIR_PERMEABILITY_MM_S)).isLessThan(open / 3);
            }
        }
    }

    @Test
    void aKnownThicknessMakesTheAirPermeabilitySurer() {
        for (Weave weave : Weave.values()) {
            Cloth byWeight = cloth("flax 100", weave, Finish.NONE, 200);
            double usual = value(byWeight, Property.THICKNESS_MM);
            Cloth measured = byWeight.with(Property.THICKNESS_MM, known(usual));
            Figure guess = Estimates.complete(byWeight).required(Property.AIR_PERMEABILITY_MM_S);
            Figure surer = Estimates.complete(measured).required(Property.AIR_PERMEABILITY_MM_S);
            assertThat(surer.value()).isCloseTo(guess.value(), within(1e-9));
            assertThat(surer.high()).isLessThanOrEqualTo(guess.high() * (1 + 1e-12));
            assertThat(surer.low()).isGreaterThanOrEqualTo(guess.low() * (1 - 1e-12));
        }
    }

    @Test
    void filamentOfTheSameFinenessDensityAndThicknessLetsLessAirThrough() {
        Cloth spun = cloth("wool 100", Weave.SATIN, Finish.NONE, 150);
        Cloth filament = cloth("acetate 100", Weave.SATIN, Finish.NONE, 150);
        assertThat(airAtEqualMake(filament)).isLessThan(0.7 * airAtEqualMake(spun));
    }

    @Test
    void finerFibreLetsLessAirThrough() {
        Cloth wool = cloth("wool 100", Weave.TWILL, Finish.NONE, 250);
        assertThat(value(wool.with(Property.FIBRE_DIAMETER_UM, known(18)), Property.AIR_PERMEABILITY_MM_S))
                .isLessThan(value(wool.with(Property.FIBRE_DIAMETER_UM, known(28)), Property.AIR_PERMEABILITY_MM_S));
    }

    private static double airAtEqualMake(Cloth cloth) {
        Cloth made = cloth.with(Property.THICKNESS_MM, known(0.3)).with(Property.FIBRE_DIAMETER_UM, known(16));
        return value(made, Property.AIR_PERMEABILITY_MM_S);
    }

    private static void assertNeverLess(Cloth more, Cloth less, Property property) {
        double allowed = 1 - 1e-12;
        String words = property + " of " + words(more) + " " + more.figures() + " against " + less.figures();
        assertThat(more.required(property).value())
                .as(words)
                .isGreaterThanOrEqualTo(less.required(property).value() * allowed);
    }
}
