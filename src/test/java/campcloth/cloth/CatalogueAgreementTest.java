package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.figure.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A cloth of which only blend, weave, surface, finish and weight are known must not come out better or worse than its kin whose
 * figures are known: every figure of the catalogue against the estimate that its own row would get without it. Both sides are
 * from memory; what is tested is that they speak with one voice. Prints what is off.
 */
class CatalogueAgreementTest {

    private static final ShippedCatalogue CATALOGUE = ShippedCatalogue.get();

    private static final double NEAR = 2.5;
    private static final double SHARE_THAT_AGREES = 0.8;
    /** A median over fewer says nothing. */
    private static final int LEAST_OF_A_FAMILY = 3;

    private record Pair(String id, String family, Figure known, Figure estimate) {

        double ratio() {
            return estimate.value() / known.value();
        }

        boolean agrees() {
            boolean within = known.low() <= estimate.value() && estimate.value() <= known.high();
            return within || (ratio() <= NEAR && ratio() >= 1 / NEAR);
        }

        String line() {
            return String.format(
                    Locale.ROOT,
                    "%-34s known %8.2f (%8.2f..%8.2f) estimate %8.2f ratio %5.2f%s",
                    id,
                    known.value(),
                    known.low(),
                    known.high(),
                    estimate.value(),
                    ratio(),
                    agrees() ? "" : " MISS");
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"THICKNESS_MM", "AIR_PERMEABILITY_MM_S", "VAPOUR_RESISTANCE_M2PA_W"})
    void anEstimateAgreesWithWhatIsKnownOfItsKin(Property property) {
        List<Pair> pairs = pairs(property);
        Map<String, List<Pair>> families =
                pairs.stream().collect(Collectors.groupingBy(Pair::family, TreeMap::new, Collectors.toList()));
        long agreeing = pairs.stream().filter(Pair::agrees).count();
        System.out.println(property + ": " + agreeing + " of " + pairs.size() + " agree");
        pairs.stream().filter(pair -> !pair.agrees()).map(Pair::line).forEach(System.out::println);
        families.forEach((family, members) -> System.out.printf(
                Locale.ROOT, "  %-24s %3d rows, median ratio %4.2f%n", family, members.size(), medianRatio(members)));
        assertThat((double) agreeing / pairs.size()).isGreaterThanOrEqualTo(SHARE_THAT_AGREES);
        families.forEach((family, members) -> {
            if (members.size() >= LEAST_OF_A_FAMILY) {
                assertThat(medianRatio(members))
                        .as("%s of %s", property, family)
                        .isBetween(0.7, 1.4);
            }
        });
    }

    private static List<Pair> pairs(Property property) {
        List<Pair> pairs = new ArrayList<>();
        CATALOGUE
                .cloths()
                .forEach((id, cloth) -> cloth.figure(property).ifPresent(known -> {
                    if (!cloth.finish().closesPores()) {
                        pairs.add(new Pair(
                                id, family(cloth), known, byWeightAlone(cloth).required(property)));
                    }
                }));
        return pairs;
    }

    private static Cloth byWeightAlone(Cloth cloth) {
        return Estimates.complete(new Cloth(
                cloth.name(),
                cloth.blend(),
                cloth.weave(),
                cloth.surface(),
                cloth.finish(),
                cloth.nap(),
                cloth.stretch(),
                Map.of(Property.WEIGHT_GSM, cloth.required(Property.WEIGHT_GSM)),
                ""));
    }

    /** What a maker would call one kind of cloth: the greatest fibre, and the make where that says more. */
    private static String family(Cloth cloth) {
        String fibre = FibreKind.of(Fineness.leading(cloth.blend())).name().toLowerCase(Locale.ROOT);
        String make = BulkDensity.isFulled(cloth)
                ? "fulled"
                : BulkDensity.isLifted(cloth) && cloth.weave() != Weave.FUR
                        ? "raised"
                        : cloth.weave().name().toLowerCase(Locale.ROOT);
        return fibre + " " + make;
    }

    private static double medianRatio(List<Pair> pairs) {
        double[] ratios = pairs.stream().mapToDouble(Pair::ratio).sorted().toArray();
        return ratios[ratios.length / 2];
    }

    /** Rare fibres of which hardly anything is known must not lead in heat by a kind guess. */
    @Test
    void aRareBastClothIsGuessedCloseToLinenOfItsWeight() {
        for (double weight : List.of(140.0, 200.0, 280.0)) {
            double linen = air("flax 100", weight);
            for (String rare : List.of("ramie 100", "nettle 100", "hemp 100")) {
                assertThat(air(rare, weight) / linen).as(rare).isBetween(0.7, 1.5);
            }
        }
    }

    @Test
    void spunSilkIsGuessedFarMoreOpenThanSilkSatin() {
        double noil = air("silk 100", 170);
        double satin =
                Samples.value(Samples.cloth("silk 100", Weave.SATIN, Finish.NONE, 170), Property.AIR_PERMEABILITY_MM_S);
        assertThat(noil).isGreaterThan(2 * satin).isBetween(150.0, 400.0);
    }

    private static double air(String blend, double weightGsm) {
        Cloth cloth = Samples.cloth(CATALOGUE.fibres().blend(blend), Weave.PLAIN, Surface.PLAIN, Finish.NONE);
        return Samples.value(cloth.with(Property.WEIGHT_GSM, Samples.known(weightGsm)), Property.AIR_PERMEABILITY_MM_S);
    }
}
