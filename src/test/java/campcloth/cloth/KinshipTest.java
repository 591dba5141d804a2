package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** How alike two cloths are; the scales are project choices. */
class KinshipTest {

    private static final int CASES = 5_000;

    @Test
    void distancesAreAsDocumented() {
        Cloth flax = Samples.cloth("flax 100", Weave.PLAIN, Finish.NONE, 200);
        assertThat(distance(flax, Samples.cloth("hemp 100", Weave.PLAIN, Finish.NONE, 200)))
                .isEqualTo(0.5);
        assertThat(distance(flax, Samples.cloth("cotton 100", Weave.PLAIN, Finish.NONE, 200)))
                .isEqualTo(1);
        assertThat(distance(flax, Samples.cloth("wool 100", Weave.PLAIN, Finish.NONE, 200)))
                .isEqualTo(2);
        assertThat(distance(flax, Samples.cloth("flax 55; cotton 45", Weave.PLAIN, Finish.NONE, 200)))
                .isCloseTo(0.45, within(1e-9));
        assertThat(distance(flax, Samples.cloth("flax 100", Weave.PLAIN, Finish.NONE, 100)))
                .isCloseTo(1, within(1e-9));
        assertThat(distance(flax, Samples.cloth("flax 100", Weave.PLAIN, Finish.NONE, 1900)))
                .isEqualTo(2);
        assertThat(distance(flax, Samples.cloth("flax 100", Weave.PLAIN, Finish.NONE)))
                .isEqualTo(0.25);
        assertThat(distance(flax, Samples.cloth("flax 100", Weave.TIGHT_PLAIN, Finish.NONE, 200)))
                .isEqualTo(0.2);
        assertThat(distance(flax, Samples.cloth("flax 100", Weave.TWILL, Finish.NONE, 200)))
                .isEqualTo(0.3);
        assertThat(distance(flax, Samples.cloth("flax 100", Weave.JERSEY, Finish.NONE, 200)))
                .isEqualTo(1);
        assertThat(distance(flax, Samples.cloth("flax 100", Weave.PLAIN, Finish.WASHED, 200)))
                .isEqualTo(0.2);
        assertThat(distance(flax, Samples.cloth("flax 100", Weave.PLAIN, Finish.WAXED, 200)))
                .isEqualTo(0.6);
        assertThat(distance(flax, Samples.stretching(flax, true))).isEqualTo(0.4);
    }

    @Test
    void weightThatIsAnEstimateIsNotKnown() {
        Cloth flax = Samples.cloth("flax 100", Weave.PLAIN, Finish.NONE);
        Cloth guessed = flax.with(Property.WEIGHT_GSM, new Figure(180, 90, 400, Basis.ESTIMATED, "test"));
        assertThat(distance(flax, guessed)).isZero();
    }

    @Test
    void aClothIsAtNoDistanceFromItself() {
        Samples.tries(41, CASES, random -> {
            Cloth cloth = Samples.drawn(random);
            assertThat(distance(cloth, cloth)).isZero();
            assertThat(distance(cloth, Samples.drawn(random))).isNotNegative().isLessThan(8);
        });
    }

    @Test
    void likenessIsTheSameBothWays() {
        Samples.tries(42, CASES, random -> {
            Cloth one = Samples.drawn(random);
            Cloth other = Samples.drawn(random);
            assertThat(distance(one, other)).as(Samples.words(one)).isEqualTo(distance(other, one));
        });
    }

    /** Whatever two cloths share already, making the one unlike itself in one trait adds just that trait's part. */
    @Test
    void changingOneThingNeverBringsAClothNearerToItself() {
        Samples.tries(43, CASES, random -> {
            Cloth cloth = Samples.drawn(random);
            Cloth changed = changed(cloth, random);
            Kinship kinship = Kinship.between(cloth, changed);
            assertThat(kinship.distance()).isNotNegative();
            assertThat(kinship.differs().size())
                    .as(Samples.words(cloth) + " beside " + Samples.words(changed))
                    .isLessThanOrEqualTo(1);
            assertThat(kinship.distance() == 0).isEqualTo(kinship.differs().isEmpty());
        });
    }

    /** The further the weight moves off, the further the cloth. */
    @Test
    void fartherWeightIsNeverNearer() {
        Samples.tries(44, CASES, random -> {
            Cloth cloth =
                    Samples.drawn(random).with(Property.WEIGHT_GSM, Samples.known(Samples.between(random, 50, 400)));
            double gsm = cloth.required(Property.WEIGHT_GSM).value();
            double factor = Samples.between(random, 1, 2);
            double more = factor * Samples.between(random, 1, 2);
            assertThat(distance(cloth, cloth.with(Property.WEIGHT_GSM, Samples.known(gsm * more))))
                    .isGreaterThanOrEqualTo(
                            distance(cloth, cloth.with(Property.WEIGHT_GSM, Samples.known(gsm * factor))));
        });
    }

    private static Cloth changed(Cloth cloth, SplittableRandom random) {
        return switch (random.nextInt(5)) {
            case 0 -> Samples.stretching(cloth, !cloth.stretch());
            case 1 -> cloth.with(Property.WEIGHT_GSM, Samples.known(Samples.between(random, 20, 900)));
            case 2 -> cloth.with(Property.THICKNESS_MM, Samples.known(Samples.between(random, 0.1, 8)));
            case 3 -> Samples.refinished(cloth, Samples.pick(random, List.of(Finish.values())));
            default ->
                new Cloth(
                        cloth.name(),
                        Samples.pick(random, Samples.BLENDS),
                        cloth.weave(),
                        cloth.surface(),
                        cloth.finish(),
                        cloth.nap(),
                        cloth.stretch(),
                        cloth.figures(),
                        cloth.note());
        };
    }

    @Test
    void itSaysWhatAgreesAndWhatDiffers() {
        Kinship kinship = Kinship.between(
                Samples.cloth("flax 100", Weave.PLAIN, Finish.NONE, 200),
                Samples.cloth("hemp 100", Weave.PLAIN, Finish.NONE, 180));
        assertThat(kinship.because())
                .containsExactly(
                        "The same in weave, surface, finish, stretch.",
                        "Fibres: 100 % hemp against 100 % flax here.",
                        "Weight: 180 g/m2 against 200 g/m2 here.");
    }

    private static double distance(Cloth one, Cloth other) {
        return Kinship.between(one, other).distance();
    }
}
