package campcloth.cloth;

import static campcloth.cloth.Samples.between;
import static campcloth.cloth.Samples.cloth;
import static campcloth.cloth.Samples.everyCombination;
import static campcloth.cloth.Samples.known;
import static campcloth.cloth.Samples.tries;
import static campcloth.cloth.Samples.value;
import static campcloth.cloth.Samples.words;
import static org.assertj.core.api.Assertions.assertThat;

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
        tries(SEED, TRIES, random -> {
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
        tries(SEED, TRIES, random -> {
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

    private static double width(Figure figure) {
        return figure.high() - figure.low();
    }

    private static Figure plausible(Property property, SplittableRandom random) {
        double low = between(random, property.range().least(), property.range().most());
        double high = between(random, low, property.range().most());
        Basis basis = Samples.pick(random, List.of(Basis.values()));
        return new Figure(between(random, low, high), low, high, basis, "test");
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
