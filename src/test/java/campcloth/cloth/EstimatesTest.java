package campcloth.cloth;

import static campcloth.cloth.Samples.between;
import static campcloth.cloth.Samples.cloth;
import static campcloth.cloth.Samples.known;
import static campcloth.cloth.Samples.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.fibre.Blend;
import campcloth.figure.Basis;
import campcloth.figure.Fault;
import campcloth.figure.Figure;
import campcloth.figure.Source;
import campcloth.figure.Sources;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class EstimatesTest {

    private static final Set<Property> ESTIMATED = EnumSet.complementOf(EnumSet.of(Property.PRICE_PER_METRE));
    private static final long SEED = 20260401;
    private static final int TRIES = 4000;

    @Test
    void everyWeaveFinishAndBlendIsCompletedWithCitedEstimatesButNoPrice() throws IOException {
        Set<String> cited = citedSources();
        everyCombination(bare -> {
            Cloth completed = Estimates.complete(bare);
            assertThat(completed.figures().keySet()).as(words(bare)).isEqualTo(ESTIMATED);
            for (Figure figure : completed.figures().values()) {
                assertThat(figure.basis()).isEqualTo(Basis.ESTIMATED);
                assertThat(cited).contains(figure.source());
                assertThat(figure.low()).isLessThanOrEqualTo(figure.value());
                assertThat(figure.high()).as(words(bare)).isGreaterThan(figure.low());
            }
        });
    }

    @Test
    void completingTwiceChangesNothing() {
        everyCombination(bare -> {
            Cloth once = Estimates.complete(bare);
            assertThat(Estimates.complete(once)).isEqualTo(once);
        });
    }

    @Test
    void whatIsKnownStays() {
        tries(random -> {
            Cloth given = Samples.any(random);
            for (Property property : Property.values()) {
                if (random.nextBoolean()) {
                    given = given.with(property, plausible(property, random));
                }
            }
            assertThat(Estimates.complete(given).figures()).as(words(given)).containsAllEntriesOf(given.figures());
        });
    }

    @Test
    void anyPlausibleFiguresCanBeCompleted() {
        tries(random -> {
            Cloth given = Samples.any(random);
            for (Property property : Property.values()) {
                if (random.nextInt(3) == 0) {
                    double value = between(
                            random, property.range().least(), property.range().most());
                    given = given.with(property, known(value));
                }
            }
            assertThat(Estimates.complete(given).figures().keySet()).containsAll(ESTIMATED);
        });
    }

    @Test
    void heavierAtTheSameWeaveIsNeverThinner() {
        tries(random -> {
            Cloth cloth = Samples.any(random);
            double weight = between(random, 20, 1200);
            Cloth light = Estimates.complete(cloth.with(Property.WEIGHT_GSM, known(weight)));
            Cloth heavy = Estimates.complete(cloth.with(Property.WEIGHT_GSM, known(weight * between(random, 1, 1.6))));
            assertNeverLess(heavy, light, Property.THICKNESS_MM);
        });
    }

    @Test
    void heavierAtTheSameWeaveNeverLetsMoreAirThrough() {
        tries(random -> {
            Cloth cloth = Samples.any(random);
            double weight = between(random, 20, 1200);
            Cloth light = Estimates.complete(cloth.with(Property.WEIGHT_GSM, known(weight)));
            Cloth heavy = Estimates.complete(cloth.with(Property.WEIGHT_GSM, known(weight * between(random, 1, 1.6))));
            assertNeverLess(light, heavy, Property.AIR_PERMEABILITY_MM_S);
        });
    }

    @Test
    void thickerNeverResistsVapourLess() {
        tries(random -> {
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
        tries(random -> {
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
        tries(random -> {
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
    void filmOrWaxLeavesAtMostFiveMillimetresPerSecond() {
        everyCombination(bare -> {
            if (bare.finish().closesPores()) {
                Figure air = Estimates.complete(bare).required(Property.AIR_PERMEABILITY_MM_S);
                assertThat(air.low()).isZero();
                assertThat(air.high()).isLessThanOrEqualTo(5);
            }
        });
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

    @Test
    void widthIsGuessedFromNinetyToOneHundredAndFifty() {
        Figure width =
                Estimates.complete(cloth("flax 100", Weave.PLAIN, Finish.NONE)).required(Property.WIDTH_CM);
        assertThat(width.value()).isEqualTo(140);
        assertThat(width.low()).isEqualTo(90);
        assertThat(width.high()).isEqualTo(150);
    }

    @Test
    void unnamedFibresWidenTheEstimates() {
        for (Weave weave : Weave.values()) {
            Cloth cotton = Estimates.complete(cloth("cotton 100", weave, Finish.NONE, 200));
            Cloth unknown = Estimates.complete(cloth("unknown 100", weave, Finish.NONE, 200));
            for (Property property :
                    List.of(Property.THICKNESS_MM, Property.SHRINK_WARP_PERCENT, Property.FIBRE_DIAMETER_UM)) {
                assertThat(width(unknown.required(property)))
                        .as("%s %s", weave, property)
                        .isGreaterThan(width(cotton.required(property)));
            }
        }
    }

    @Test
    void aWeightFollowsFromAKnownThickness() {
        Cloth cloth = cloth("flax 100", Weave.PLAIN, Finish.NONE).with(Property.THICKNESS_MM, known(0.45));
        Figure weight = Estimates.complete(cloth).required(Property.WEIGHT_GSM);
        assertThat(weight.value()).isBetween(160.0, 210.0);
        assertThat(weight.source()).isEqualTo(BulkDensity.SOURCE);
    }

    private static double airAtEqualMake(Cloth cloth) {
        Cloth made = cloth.with(Property.THICKNESS_MM, known(0.3)).with(Property.FIBRE_DIAMETER_UM, known(16));
        return value(made, Property.AIR_PERMEABILITY_MM_S);
    }

    private static double width(Figure figure) {
        return figure.high() - figure.low();
    }

    private static Figure plausible(Property property, SplittableRandom random) {
        double low = between(random, property.range().least(), property.range().most());
        double high = between(random, low, property.range().most());
        Basis basis = Samples.pick(random, List.of(Basis.values()));
        return new Figure(between(random, low, high), low, high, basis, "test");
    }

    private static void assertNeverLess(Cloth more, Cloth less, Property property) {
        double allowed = 1 - 1e-12;
        String words = property + " of " + words(more) + " " + more.figures() + " against " + less.figures();
        assertThat(more.required(property).value())
                .as(words)
                .isGreaterThanOrEqualTo(less.required(property).value() * allowed);
    }

    private static void everyCombination(Consumer<Cloth> check) {
        for (Weave weave : Weave.values()) {
            for (Finish finish : Finish.values()) {
                for (Surface surface : Surface.values()) {
                    for (Blend blend : Samples.BLENDS) {
                        check.accept(cloth(blend, weave, surface, finish));
                    }
                }
            }
        }
    }

    private static void tries(Consumer<SplittableRandom> check) {
        for (int i = 0; i < TRIES; i++) {
            long seed = SEED + i;
            try {
                check.accept(new SplittableRandom(seed));
            } catch (AssertionError | RuntimeException failure) {
                throw new AssertionError("seed " + seed + ": " + failure.getMessage(), failure);
            }
        }
    }

    private static String words(Cloth cloth) {
        return cloth.blend().words() + ", " + cloth.weave() + ", " + cloth.surface() + ", " + cloth.finish();
    }

    private static Set<String> citedSources() throws IOException {
        List<Fault> faults = new ArrayList<>();
        try (Reader text = new InputStreamReader(
                Objects.requireNonNull(EstimatesTest.class.getResourceAsStream("/catalogue/sources.csv")),
                StandardCharsets.UTF_8)) {
            Set<String> ids =
                    Sources.read(text, faults).all().stream().map(Source::id).collect(Collectors.toSet());
            assertThat(faults).isEmpty();
            return ids;
        }
    }
}
