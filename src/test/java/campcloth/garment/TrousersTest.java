package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Refused;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class TrousersTest {

    /** Hip 100 and ease 20: 120 cm round, a leg of 60 cm; crotch 27 + 2, inseam 76: 105 cm outside. */
    private static final Map<String, Double> WEARER = Map.of(
            "hipCm", 100.0,
            "waistCm", 86.0,
            "inseamCm", 76.0,
            "crotchDepthCm", 27.0,
            "thighCm", 58.0,
            "legEndCm", 46.0,
            "heelCm", 33.0);

    @Test
    void legAndGussetHaveTheirAllowances() {
        Garment garment = trousers(Options.USUAL);
        assertThat(garment.pieces()).extracting(GarmentPiece::name).containsExactly("leg", "gusset");
        GarmentPiece leg = garment.pieces().get(0);
        assertThat(leg.count()).isEqualTo(2);
        assertThat(leg.outline().widthCm()).isCloseTo(60 + 2 * 2, within(1e-9));
        // hem of 5, 105 and a casing of 4
        assertThat(leg.outline().heightCm()).isCloseTo(5 + 105 + 4, within(1e-9));
        // rectangle above the crotch 64 x 33, taper from 64 to 50 over 76, hem 50 x 5
        assertThat(leg.outline().areaCm2()).isCloseTo(64 * 33 + (64 + 50) / 2.0 * 76 + 50 * 5, within(1e-6));
        assertThat(garment.pieces().get(1).outline().widthCm()).isCloseTo(14 + 4, within(1e-9));
    }

    @Test
    void seamsMeetTheGusset() {
        Sewing sewing = trousers(Options.USUAL).sewing();
        assertThat(seam(sewing, "inseams")).isCloseTo(2 * (76 - 14), within(1e-9));
        assertThat(seam(sewing, "gusset to one leg")).isCloseTo(2 * 14, within(1e-9));
        assertThat(seam(sewing, "gusset to the other leg")).isCloseTo(2 * 14, within(1e-9));
        assertThat(seam(sewing, "centre front and back")).isCloseTo(2 * 29, within(1e-9));
        assertThat(sewing.notions()).containsExactly("cord or tape for the waist, 146 cm");
    }

    @Test
    void curveRunsOutATwentiethInFrontAndATenthBehind() {
        Garment garment = trousers(Options.USUAL.with("gusset", false));
        assertThat(garment.pieces()).extracting(GarmentPiece::name).containsExactly("leg");
        GarmentPiece leg = garment.pieces().get(0);
        assertThat(leg.pair()).isTrue();
        assertThat(leg.outline().widthCm()).isCloseTo(60 + 120 / 20.0 + 120 / 10.0 + 4, within(1e-9));
    }

    @Test
    void sideSeamsHalveTheLegAndAddTwoAllowances() {
        Garment whole = trousers(Options.USUAL);
        Garment halves = trousers(Options.USUAL.with("sideSeams", true));
        assertThat(halves.pieces()).extracting(GarmentPiece::name).containsExactly("leg front", "leg back", "gusset");
        assertThat(halves.pieces().get(0).outline().widthCm()).isCloseTo(30 + 4, within(1e-9));
        double more = areaCm2(halves) - areaCm2(whole);
        // two legs, two edges each of 114 x 2
        assertThat(more).isCloseTo(2 * 2 * 114 * 2, within(1e-6));
        assertThat(Designs.named("trousers").narrower(Options.USUAL)).isPresent();
    }

    @Test
    void legTooNarrowForTheThighIsRefusedAndTheHeelIsCautionedOf() {
        Map<String, Double> thick = new TreeMap<>(WEARER);
        thick.put("thighCm", 80.0);
        assertThatThrownBy(() -> made(thick, Options.USUAL))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("wearer.thighCm")
                .hasMessageContaining("larger gusset");
        Map<String, Double> narrow = new TreeMap<>(WEARER);
        narrow.put("legEndCm", 30.0);
        assertThat(made(narrow, Options.USUAL).cautions()).anyMatch(c -> c.contains("heel of 33 cm"));
        assertThat(made(WEARER, Options.USUAL).cautions()).isEmpty();
    }

    private static double seam(Sewing sewing, String name) {
        return sewing.seams().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow()
                .lengthCm();
    }

    private static double areaCm2(Garment garment) {
        return garment.pieces().stream()
                .mapToDouble(p -> p.count() * p.outline().areaCm2())
                .sum();
    }

    private static Garment trousers(Options options) {
        return made(WEARER, options);
    }

    private static Garment made(Map<String, Double> wearer, Options options) {
        return Designs.named("trousers").madeUp(Measurements.of(wearer), options, SewnCloth.usual());
    }
}
