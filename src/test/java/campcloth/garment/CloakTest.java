package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Finish;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.figure.Refused;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CloakTest {

    private static final Design CLOAK = Designs.named("cloak");
    /** Neckline 40 + 4 cm of ease and 2 pi x 0.05 cm for the cloth. */
    private static final double NECKLINE_CM = 44 + 2 * Math.PI * 0.05;

    private static final Measurements WEARER = Measurements.of(Map.of("neckCm", 40.0, "lengthCm", 115.0));

    @ParameterizedTest
    @CsvSource({"1, 1, 1", "2, 1, 1", "3, 2, 2", "4, 2, 2"})
    void upToAHalfCircleIsOnePieceAndMoreIsTwoMirroredHalves(int quarters, int pieces, int wedges) {
        Garment cloak = madeUp(Options.USUAL.with("quarters", quarters), 400);
        assertThat(cloak.pieces()).hasSize(1);
        assertThat(cloak.pieces().get(0).count()).isEqualTo(pieces);
        assertThat(cloak.pieces().get(0).pair()).isEqualTo(wedges > 1);
        double radius = NECKLINE_CM / (quarters * Math.PI / 2);
        Hem hem = cloak.sewing().hems().get(0);
        assertThat(hem.edgeLengthCm()).isCloseTo(quarters * Math.PI / 2 * (radius + 115), within(1e-9));
        // the ring by its definition and 2 cm along each straight edge
        double out = radius + 115 + hem.allowanceCm();
        double in = radius - 1;
        double area = quarters * Math.PI / 4 * (out * out - in * in) + 2 * wedges * 2 * (out - in);
        assertThat(area(cloak)).isBetween(area - 20, area + 40);
    }

    @Test
    void halfCircleLiesWithItsFrontsAlongTheClothOrAcrossIt() {
        double radius = NECKLINE_CM / Math.PI + 115;
        GarmentPiece along = madeUp(Options.USUAL, 400).pieces().get(0);
        assertThat(along.foldable()).isFalse();
        double hem = madeUp(Options.USUAL, 400).sewing().hems().get(0).allowanceCm();
        assertThat(along.outline().widthCm()).isCloseTo(radius + hem + 2, within(0.06));
        assertThat(along.outline().heightCm()).isCloseTo(2 * (radius + hem), within(0.12));
        GarmentPiece across =
                madeUp(Options.USUAL.with("middleOnGrain", true), 400).pieces().get(0);
        assertThat(across.foldable()).isTrue();
        assertThat(across.outline().widthCm()).isCloseTo(2 * (radius + hem), within(0.12));
        assertThat(across.outline().heightCm()).isCloseTo(radius + hem + 2, within(0.06));
    }

    @Test
    void narrowClothIsPiecedAndTheSeamsAreCounted() {
        Garment wide = madeUp(Options.USUAL, 138);
        assertThat(wide.pieces()).extracting(GarmentPiece::name).containsExactly("cloak");
        assertThat(seam(wide, "panels to panels")).isEmpty();
        Garment narrow = madeUp(Options.USUAL, 58);
        assertThat(narrow.pieces())
                .extracting(GarmentPiece::name)
                .containsExactly("cloak panel 1", "cloak panel 2", "cloak panel 3");
        // first seam 58 - 2 - 2 cm from the front edge, the next 54 cm on: chords of the hem's circle
        double radius = NECKLINE_CM / Math.PI + 115;
        double seams = 2 * Math.sqrt(radius * radius - 54 * 54) + 2 * Math.sqrt(radius * radius - 108 * 108);
        assertThat(seam(narrow, "panels to panels").orElseThrow().lengthCm()).isCloseTo(seams, within(1e-9));
        assertThat(narrow.notes()).anyMatch(note -> note.contains("pieced by seams along the grain"));
        assertThat(area(narrow)).isCloseTo(area(wide) + 4 * seams, within(250.0));
    }

    @Test
    void tellsTheLengthThatSavesAPanel() {
        // 130.1 cm and 3 cm of hem and 2 in front are wider than 132 cm
        Garment pieced = madeUp(Options.USUAL, 132);
        assertThat(pieced.pieces()).hasSize(2);
        double shorter = pieced.notes().stream()
                .map(Pattern.compile("A cloak ([0-9.]+) cm shorter")::matcher)
                .filter(Matcher::find)
                .mapToDouble(m -> Double.parseDouble(m.group(1)))
                .findFirst()
                .orElseThrow();
        assertThat(shorter).isBetween(1.5, 3.0);
        SewnCloth cloth =
                new SewnCloth(200, 0.5, Surface.PLAIN, Optional.empty(), Optional.empty(), Optional.empty(), 0, 0, 132);
        assertThat(CLOAK.madeUp(
                                Measurements.of(Map.of("neckCm", 40.0, "lengthCm", 115 - shorter)),
                                Options.USUAL,
                                cloth)
                        .pieces())
                .hasSize(1);
        assertThat(madeUp(Options.USUAL, 100).notes()).noneMatch(n -> n.contains("one panel fewer"));
    }

    @Test
    void wedgesWithTheGrainDownTheirMiddlesAreAlike() {
        Garment cloak = madeUp(
                Options.USUAL.with("quarters", 4).with("quarterWedges", true).with("middleOnGrain", true), 200);
        assertThat(cloak.pieces()).hasSize(1);
        assertThat(cloak.pieces().get(0).count()).isEqualTo(4);
        assertThat(cloak.pieces().get(0).pair()).isFalse();
        assertThat(cloak.pieces().get(0).foldable()).isTrue();
        assertThat(seam(cloak, "from neck to hem").orElseThrow().lengthCm()).isCloseTo(3 * 115, within(1e-9));
    }

    @Test
    void fullCircleTakesANarrowHemInAnyCloth() {
        Options full = Options.USUAL.with("quarters", 4);
        assertThat(madeUp(full, 200).sewing().hems().get(0).foldsCm()).containsExactly(1.0, 1.0);
        Garment wool = CLOAK.madeUp(WEARER, full, wool(Optional.empty()));
        assertThat(wool.sewing().hems().get(0).foldsCm()).containsExactly(1.0, 1.0);
    }

    @Test
    void facedHemHasOneCentimetreAndAFacing() {
        Garment cloak = madeUp(Options.USUAL.with("hemFacing", true).with("frontFacing", true), 200);
        assertThat(cloak.sewing().hems().get(0).allowanceCm()).isEqualTo(1);
        assertThat(cloak.smallPieces())
                .extracting(GarmentPiece::name)
                .containsExactly("neck facing", "front facing", "hem facing");
        assertThat(cloak.sewing().hems()).extracting(Hem::edge).doesNotContain("front edges");
        assertThat(seam(cloak, "facings to front edges")).isPresent();
        assertThat(seam(cloak, "facing to hem").orElseThrow().lengthCm())
                .isEqualTo(cloak.sewing().hems().get(0).edgeLengthCm());
    }

    @Test
    void fulledClothNeedsNoNeateningAndLinenEasesLittle() {
        Garment fulled = CLOAK.madeUp(WEARER, Options.USUAL, wool(Optional.of(Finish.FULLED)));
        assertThat(fulled.sewing().hems().get(0).neatened()).isFalse();
        SewnCloth linen = new SewnCloth(
                200, 0.5, Surface.PLAIN, Optional.empty(), Optional.empty(), Optional.of("flax"), 0, 0, 200);
        assertThat(CLOAK.madeUp(WEARER, Options.USUAL, linen)
                        .sewing()
                        .hems()
                        .get(0)
                        .foldsCm())
                .containsExactly(1.0, 1.0);
    }

    @Test
    void saysHowFarItIsOpenAndHowFarAboveTheGround() {
        Garment quarter = madeUp(Options.USUAL.with("quarters", 1), 200);
        // pi / 2 x (28.2 + 16) = 69.4 cm, 112 cm to go round
        assertThat(quarter.notes()).anyMatch(note -> note.contains("stands open by about 43 cm"));
        Garment threeQuarter = madeUp(Options.USUAL.with("quarters", 3), 200);
        assertThat(threeQuarter.notes()).anyMatch(note -> note.contains("it closes over 112 cm"));
        assertThat(quarter.cautions()).noneMatch(caution -> caution.contains("drags"));
        Garment tooLong = CLOAK.madeUp(
                Measurements.of(Map.of("lengthCm", 140.0, "napeToGroundCm", 143.0)), Options.USUAL, SewnCloth.usual());
        assertThat(tooLong.cautions()).anyMatch(caution -> caution.contains("drags"));
    }

    @Test
    void refusesWhatItCannotCut() {
        assertThatThrownBy(() -> madeUp(Options.USUAL.with("quarters", 5), 200))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("options.quarters");
        assertThatThrownBy(() -> madeUp(Options.USUAL.with("quarters", 2.5), 200))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("whole number");
        assertThatThrownBy(
                        () -> CLOAK.madeUp(Measurements.of(Map.of("neckCm", 400.0)), Options.USUAL, SewnCloth.usual()))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("wearer.neckCm");
    }

    @Test
    void coversMoreTheLongerItIs() {
        double calf = CLOAK.wear(false, WEARER).coveredPercent();
        assertThat(calf).isCloseTo(65, within(1.0)); // what the list of worn garments has for a cloak to the calf
        assertThat(CLOAK.wear(false, Measurements.of(Map.of("lengthCm", 60.0))).coveredPercent())
                .isLessThan(calf);
        double outer = NECKLINE_CM / Math.PI + 115;
        double inner = NECKLINE_CM / Math.PI;
        assertThat(CLOAK.wear(false, WEARER).clothAreaM2())
                .isCloseTo(Math.PI / 2 * (outer * outer - inner * inner) / 1e4, within(1e-9));
    }

    private static SewnCloth wool(Optional<Finish> finish) {
        return new SewnCloth(500, 2, Surface.RAISED, Optional.of(Weave.TWILL), finish, Optional.of("wool"), 0, 0, 150);
    }

    private static Garment madeUp(Options options, double usableCm) {
        return CLOAK.madeUp(
                WEARER,
                options,
                new SewnCloth(
                        200, 0.5, Surface.PLAIN, Optional.empty(), Optional.empty(), Optional.empty(), 0, 0, usableCm));
    }

    private static Optional<Seam> seam(Garment garment, String name) {
        return garment.sewing().seams().stream()
                .filter(s -> s.name().equals(name))
                .findFirst();
    }

    private static double area(Garment garment) {
        return garment.pieces().stream()
                .mapToDouble(p -> p.count() * p.outline().areaCm2())
                .sum();
    }
}
