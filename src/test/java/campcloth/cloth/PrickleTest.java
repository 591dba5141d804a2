package campcloth.cloth;

import static campcloth.cloth.Samples.between;
import static campcloth.cloth.Samples.cloth;
import static campcloth.cloth.Samples.known;
import static campcloth.cloth.Samples.rows;
import static campcloth.cloth.Samples.tries;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.fibre.Blend;
import campcloth.fibre.TestFibres;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.List;
import org.junit.jupiter.api.Test;

class PrickleTest {

    private static final long SEED = 20260402;
    private static final int TRIES = 4000;

    @Test
    void aTopInTheMiddleOfGrade80sHasTheDistributionThatTheRegulationAsks() {
        double mean = (18.1 + 19.5) / 2;
        double variation = 21 + 0.5 * (mean - 21);
        rows("/published/prickle-wool-top.csv", row -> {
            double part = 100
                    * (FibreEnds.coarserThan(row.number("fromUm"), mean, variation)
                            - FibreEnds.coarserThan(row.number("toUm"), mean, variation));
            assertThat(part).isBetween(row.number("leastPercent"), row.number("mostPercent"));
        });
    }

    @Test
    void pureWoolGivesTheComputedShares() {
        rows("/agreement/coarse-fibre-share.csv", row -> {
            Cloth wool = wool(row.number("meanUm"), row.number("variationPercent"));
            assertThat(Prickle.of(wool).coarseEndsPercent().value())
                    .isCloseTo(row.number("over30Percent"), within(0.012));
        });
    }

    @Test
    void equalStiffnessPutsTheLimitOfOtherFibresWhereTheEulerStrutDoes() {
        // (64 F L^2 / (2.046 pi^3 E))^(1/4) at F = 0.75 mN, L = 1.9357 mm: 30 um for wool, 3.5 GPa
        assertThat(FibreEnds.criticalUm(TestFibres.fibre("wool"))).isEqualTo(30);
        for (String key : List.of("viscose", "polyester", "acrylic", "polyamide")) {
            double modulusPa = TestFibres.fibre(key).modulusGPa().orElseThrow().value() * 1e9;
            double strut =
                    Math.pow(64 * 0.75e-3 * 1.9357e-3 * 1.9357e-3 / (2.046 * Math.pow(Math.PI, 3) * modulusPa), 0.25);
            assertThat(FibreEnds.criticalUm(TestFibres.fibre(key))).isCloseTo(strut * 1e6, within(0.01));
        }
    }

    @Test
    void coarserWoolNeverHasFewerCoarseEnds() {
        tries(SEED, TRIES, random -> {
            double mean = between(random, 10, 60);
            double variation = between(random, 0, 50);
            Figure fine = Prickle.of(wool(mean, variation)).coarseEndsPercent();
            Figure coarse =
                    Prickle.of(wool(mean + between(random, 0, 15), variation)).coarseEndsPercent();
            assertThat(coarse.value()).isGreaterThanOrEqualTo(fine.value());
        });
    }

    @Test
    void aWiderIntervalOfTheDiameterContainsTheNarrower() {
        tries(SEED, TRIES, random -> {
            Cloth cloth = Samples.any(random);
            double mean = between(random, 12, 50);
            double off = between(random, 0, 5);
            Figure narrow = prickle(cloth, known(mean - off, mean, mean + off));
            Figure wide = prickle(cloth, known(mean - off - 3, mean, mean + off + 4));
            assertThat(wide.low()).isLessThanOrEqualTo(narrow.low() + 1e-12);
            assertThat(wide.high()).isGreaterThanOrEqualTo(narrow.high() - 1e-12);
        });
    }

    @Test
    void blendingWithAFinerFibreNeverRaisesThePureCoarseCloth() {
        tries(SEED, TRIES, random -> {
            double percent = between(random, 1, 99);
            double mean = between(random, 24, 45);
            Figure diameter = known(mean - 2, mean, mean + 2);
            for (String finer : List.of("cashmere", "cotton", "viscose", "silk", "polyester")) {
                Blend blend = new Blend(List.of(
                        new Blend.Share(TestFibres.fibre("mohair"), percent),
                        new Blend.Share(TestFibres.fibre(finer), 100 - percent)));
                if (Fineness.leading(blend).key().equals("mohair")) {
                    Figure pure = prickle(cloth("mohair 100", Weave.TWILL, Finish.NONE), diameter);
                    Figure mixed = prickle(cloth(blend, Weave.TWILL, Surface.PLAIN, Finish.NONE), diameter);
                    assertThat(mixed.value()).as(blend.words()).isLessThanOrEqualTo(pure.value() + 1e-12);
                    assertThat(mixed.high()).as(blend.words()).isLessThanOrEqualTo(pure.high() + 1e-12);
                }
            }
        });
    }

    @Test
    void everyClothHasAPercentageAndARoughness() {
        for (Weave weave : Weave.values()) {
            for (Finish finish : Finish.values()) {
                for (Blend blend : Samples.BLENDS) {
                    Prickle prickle = Prickle.of(Estimates.complete(cloth(blend, weave, Surface.PLAIN, finish)));
                    assertThat(prickle.coarseEndsPercent().low()).isNotNegative();
                    assertThat(prickle.coarseEndsPercent().high()).isLessThanOrEqualTo(100);
                    assertThat(prickle.bastRoughness()).isBetween(0.0, 1.0);
                }
            }
        }
    }

    @Test
    void endsWeighByMassOverCrossSection() {
        // 50/50 by mass, equal density, 32 um and 16 um: one coarse fibre to four fine ones
        FibreEnds coarse = new FibreEnds(Span.exactly(50 / 1.31 / (32 * 32)), Span.exactly(1));
        FibreEnds fine = new FibreEnds(Span.exactly(50 / 1.31 / (16 * 16)), Span.exactly(0));
        assertThat(Prickle.meanCoarseShare(List.of(coarse, fine)).mid()).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void filamentHasNoEndsAndMerinoHasFew() {
        assertThat(estimated("silk 100", Weave.SATIN).value()).isZero();
        assertThat(Prickle.of(wool(18, 20)).coarseEndsPercent().value()).isLessThan(0.1);
        assertThat(Prickle.of(wool(28, 25)).coarseEndsPercent().value()).isGreaterThan(30);
    }

    @Test
    void linenIsRoughNotPricklyAndSoftensInTheWash() {
        Prickle linen = Prickle.of(Estimates.complete(cloth("flax 100", Weave.PLAIN, Finish.NONE)));
        Prickle washed = Prickle.of(Estimates.complete(cloth("flax 100", Weave.PLAIN, Finish.WASHED)));
        Prickle jute = Prickle.of(Estimates.complete(cloth("jute 100", Weave.OPEN_PLAIN, Finish.NONE)));
        assertThat(linen.coarseEndsPercent().high()).isZero();
        assertThat(washed.bastRoughness()).isPositive().isLessThan(linen.bastRoughness());
        assertThat(linen.bastRoughness()).isLessThan(jute.bastRoughness());
    }

    @Test
    void bastRoughnessLiesWhereTheTradePutsIt() {
        assertThat(roughness("jute 100", Finish.NONE, 300)).isGreaterThanOrEqualTo(0.9);
        assertThat(roughness("jute 100", Finish.WASHED, 300)).isGreaterThan(0.8);
        for (String leaf : List.of("coir 100", "sisal 100", "abaca 100")) {
            assertThat(roughness(leaf, Finish.NONE, 300)).as(leaf).isGreaterThanOrEqualTo(0.9);
        }
        for (double weight : List.of(80.0, 150.0, 250.0, 400.0)) {
            assertThat(roughness("ramie 100", Finish.NONE, weight)).isBetween(0.6, 0.8);
            assertThat(roughness("hemp 100", Finish.NONE, weight)).isBetween(0.5, 0.6);
            assertThat(roughness("flax 100", Finish.NONE, weight)).isBetween(0.3, 0.5);
            assertThat(roughness("flax 100", Finish.WASHED, weight)).isBetween(0.1, 0.2);
        }
        assertThat(roughness("cotton 100", Finish.NONE, 150)).isZero();
    }

    @Test
    void heavierBastClothIsNeverSmoother() {
        for (String fibre : List.of("flax 100", "hemp 100", "ramie 100", "jute 100", "flax 55; cotton 45")) {
            for (double weight = 60; weight < 500; weight += 20) {
                assertThat(roughness(fibre, Finish.NONE, weight + 20))
                        .isGreaterThanOrEqualTo(roughness(fibre, Finish.NONE, weight));
            }
        }
    }

    private static double roughness(String blend, Finish finish, double weightGsm) {
        Cloth cloth = cloth(ShippedCatalogue.get().fibres().blend(blend), Weave.PLAIN, Surface.PLAIN, finish);
        return Prickle.of(Estimates.complete(cloth.with(Property.WEIGHT_GSM, known(weightGsm))))
                .bastRoughness();
    }

    /** 5 % is where most people begin to feel it. */
    @Test
    void coarseWoolsOfTheCatalogueScoreBadlyAndMerinoWell() {
        for (String coarse : List.of(
                "wool-tweed-320",
                "wool-tweed-420",
                "wool-shetland-tweed-380",
                "wool-homespun-250",
                "wool-homespun-330",
                "wool-vadmal-480",
                "wool-crossbred-knit-320",
                "wool-crossbred-twill-360",
                "wool-blanket-450",
                "wool-blanket-600")) {
            assertThat(coarseEnds(coarse)).as(coarse).isGreaterThan(20);
        }
        for (String fine : List.of(
                "wool-merino-jersey-150",
                "wool-merino-jersey-200",
                "wool-merino-jersey-260",
                "wool-tropical-170",
                "wool-challis-140")) {
            assertThat(coarseEnds(fine)).as(fine).isLessThan(1);
        }
    }

    private static double coarseEnds(String id) {
        return Prickle.of(Estimates.complete(ShippedCatalogue.get().cloth(id)))
                .coarseEndsPercent()
                .value();
    }

    @Test
    void cottonAndFineSyntheticsDoNotPrickle() {
        assertThat(estimated("cotton 100", Weave.PLAIN).high()).isLessThan(0.1);
        assertThat(estimated("viscose 100", Weave.PLAIN).high()).isLessThan(1);
        assertThat(estimated("polyester 65; cotton 35", Weave.TWILL).high()).isLessThan(1);
    }

    @Test
    void theGuardHairOfASyntheticLongPilePrickles() {
        assertThat(estimated("acrylic 100", Weave.FUR).value()).isGreaterThan(5);
    }

    @Test
    void woolOfUnknownFinenessMayOrMayNotPrickle() {
        Figure wool = estimated("wool 100", Weave.TWILL);
        assertThat(wool.low()).isLessThan(5);
        assertThat(wool.high()).isGreaterThan(50);
        assertThat(wool.basis()).isEqualTo(Basis.ESTIMATED);
    }

    @Test
    void aDeclaredDiameterKeepsItsBasisAndSource() {
        Figure declared = prickle(cloth("wool 100", Weave.TWILL, Finish.NONE), known(18.5, 19, 19.5));
        assertThat(declared.basis()).isEqualTo(Basis.DECLARED);
        assertThat(declared.source()).isEqualTo("test");
    }

    private static Figure estimated(String blend, Weave weave) {
        return Prickle.of(Estimates.complete(cloth(blend, weave, Finish.NONE))).coarseEndsPercent();
    }

    private static Figure prickle(Cloth cloth, Figure diameterUm) {
        return Prickle.of(Estimates.complete(cloth.with(Property.FIBRE_DIAMETER_UM, diameterUm)))
                .coarseEndsPercent();
    }

    private static Cloth wool(double meanUm, double variationPercent) {
        return Estimates.complete(cloth("wool 100", Weave.TWILL, Finish.NONE)
                .with(Property.FIBRE_DIAMETER_UM, known(meanUm))
                .with(Property.FIBRE_DIAMETER_CV_PERCENT, known(variationPercent)));
    }
}
