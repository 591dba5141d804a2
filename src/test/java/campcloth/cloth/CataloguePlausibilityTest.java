package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.fibre.FibreFamily;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The cloths that the program ships with: generic, honest about what is not known, and physically possible. */
class CataloguePlausibilityTest {

    private static final ShippedCatalogue CATALOGUE = ShippedCatalogue.get();

    @Test
    void noGenericClothPretendsToBeMeasuredOrCertain() {
        CATALOGUE
                .cloths()
                .forEach((id, cloth) -> cloth.figures().forEach((property, figure) -> {
                    assertThat(figure.basis()).as("%s %s", id, property).isIn(Basis.TYPICAL, Basis.ESTIMATED);
                    assertThat(figure.high() - figure.low())
                            .as("%s %s", id, property)
                            .isPositive();
                    assertThat(figure.value()).as("%s %s", id, property).isBetween(figure.low(), figure.high());
                }));
        assertThat(CATALOGUE.cloths().values())
                .allSatisfy(cloth -> cloth.figure(Property.PRICE_PER_METRE)
                        .ifPresent(price ->
                                assertThat(price.basis()).as(cloth.name()).isEqualTo(Basis.ESTIMATED)));
    }

    /** Generic cloth is named with words of the trade, which are common nouns. */
    @Test
    void namesAreCommonNouns() {
        Set<String> properNouns = Set.of("Shetland-type", "Chine,", "PVC");
        assertThat(CATALOGUE.cloths().values())
                .allSatisfy(cloth -> assertThat(cloth.name().split(" "))
                        .as(cloth.name())
                        .allSatisfy(word -> assertThat(
                                        properNouns.contains(word) || word.equals(word.toLowerCase(Locale.ROOT)))
                                .isTrue()));
    }

    @Test
    void noTwoClothsHaveTheSameName() {
        assertThat(CATALOGUE.cloths().values()).extracting(Cloth::name).doesNotHaveDuplicates();
    }

    /** Porosity is 1 - m/(rho d): cloth is mostly air, but never all. */
    @Test
    void weightThicknessAndFibreDensityLeaveRoomForAir() {
        CATALOGUE
                .cloths()
                .forEach((id, cloth) -> cloth.figure(Property.THICKNESS_MM).ifPresent(thickness -> {
                    double weight = cloth.required(Property.WEIGHT_GSM).value();
                    for (double mm : new double[] {thickness.low(), thickness.value(), thickness.high()}) {
                        double porosity =
                                1 - weight / (1000 * mm * cloth.blend().densityGCm3());
                        assertThat(porosity)
                                .as("porosity of %s at %s mm", id, mm)
                                .isBetween(0.3, 0.99);
                    }
                }));
    }

    @Test
    void aFilmOrWaxClosesTheCloth() {
        assertThat(CATALOGUE.cloths().values())
                .filteredOn(cloth -> cloth.finish().closesPores())
                .allSatisfy(cloth -> assertThat(
                                cloth.required(Property.AIR_PERMEABILITY_MM_S).value())
                        .as(cloth.name())
                        .isLessThan(5));
    }

    @Test
    void pileAndFurHaveADirectionAndARaisedFace() {
        assertThat(CATALOGUE.cloths().values())
                .filteredOn(cloth -> cloth.weave() == Weave.FUR || cloth.weave() == Weave.PILE)
                .allSatisfy(cloth -> {
                    assertThat(cloth.surface()).as(cloth.name()).isEqualTo(Surface.RAISED);
                    assertThat(cloth.nap() || cloth.name().contains("terry"))
                            .as(cloth.name())
                            .isTrue();
                });
        assertThat(CATALOGUE.cloths().values())
                .filteredOn(cloth -> cloth.finish() == Finish.BRUSHED)
                .allSatisfy(
                        cloth -> assertThat(cloth.surface()).as(cloth.name()).isEqualTo(Surface.RAISED));
    }

    @Test
    void woolAndHairTellTheirDiameter() {
        assertThat(CATALOGUE.cloths().values())
                .filteredOn(cloth -> cloth.blend().percentOf(FibreFamily.PROTEIN)
                                - cloth.blend().percentOf("silk")
                        > 0)
                .hasSizeGreaterThan(50)
                .allSatisfy(cloth -> {
                    Figure diameter = cloth.required(Property.FIBRE_DIAMETER_UM);
                    Figure spread = cloth.required(Property.FIBRE_DIAMETER_CV_PERCENT);
                    assertThat(diameter.value()).as(cloth.name()).isBetween(14.0, 40.0);
                    assertThat(spread.value()).as(cloth.name()).isBetween(15.0, 45.0);
                });
    }

    @Test
    void washedAndPreshrunkClothShrinksLessThanTheSameClothUnwashed() {
        Map<String, String> washedBesideNew = Map.of(
                "linen-plain-150-washed", "linen-plain-150",
                "linen-plain-185-washed", "linen-plain-185",
                "linen-plain-230-washed", "linen-plain-230",
                "cotton-denim-400-washed", "cotton-denim-410",
                "cotton-poplin-140", "cotton-poplin-115");
        washedBesideNew.forEach((washed, unwashed) -> assertThat(CATALOGUE.figure(washed, Property.SHRINK_WARP_PERCENT))
                .as("%s beside %s", washed, unwashed)
                .isLessThan(CATALOGUE.figure(unwashed, Property.SHRINK_WARP_PERCENT)));
    }

    @Test
    void fullingClosesClothOfTheSameWeight() {
        assertThat(CATALOGUE.figure("wool-fulled-350", Property.WEIGHT_GSM))
                .isEqualTo(CATALOGUE.figure("wool-open-plain-350", Property.WEIGHT_GSM));
        assertThat(CATALOGUE
                        .cloth("wool-fulled-350")
                        .required(Property.AIR_PERMEABILITY_MM_S)
                        .high())
                .isLessThan(CATALOGUE
                        .cloth("wool-open-plain-350")
                        .required(Property.AIR_PERMEABILITY_MM_S)
                        .low());
    }

    /** Ids of one kind of cloth differ in the weight alone: wool-melton-400, wool-melton-500. */
    @Test
    void heavierClothOfTheSameKindIsThickerAndNotMoreOpen() {
        int pairs = 0;
        for (var light : CATALOGUE.cloths().entrySet()) {
            for (var heavy : CATALOGUE.cloths().entrySet()) {
                if (kind(light.getKey()).equals(kind(heavy.getKey()))
                        && weight(light.getValue()) < weight(heavy.getValue())) {
                    String beside = heavy.getKey() + " beside " + light.getKey();
                    pairs++;
                    rises(light.getValue(), heavy.getValue(), Property.THICKNESS_MM, beside);
                    rises(light.getValue(), heavy.getValue(), Property.VAPOUR_RESISTANCE_M2PA_W, beside);
                    rises(heavy.getValue(), light.getValue(), Property.AIR_PERMEABILITY_MM_S, beside);
                }
            }
        }
        assertThat(pairs).isGreaterThan(40);
    }

    private static String kind(String id) {
        return id.replaceFirst("-[0-9]+(-|$)", "-*$1");
    }

    private static double weight(Cloth cloth) {
        return cloth.required(Property.WEIGHT_GSM).value();
    }

    private static void rises(Cloth lesser, Cloth greater, Property property, String beside) {
        lesser.figure(property)
                .ifPresent(low -> greater.figure(property)
                        .ifPresent(high -> assertThat(high.value())
                                .as("%s of %s", property, beside)
                                .isGreaterThanOrEqualTo(low.value())));
    }
}
