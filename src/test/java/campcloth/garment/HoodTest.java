package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Refused;
import java.util.Map;
import org.junit.jupiter.api.Test;

class HoodTest {

    private static final Design HOOD = Designs.named("hood");
    private static final Map<String, Double> WEARER =
            Map.of("headCm", 58.0, "overHeadCm", 68.0, "neckCm", 38.0, "shoulderRoundCm", 112.0, "capeLengthCm", 20.0);
    private static final double CLOTH_CM = 2 * Math.PI * 0.05;

    @Test
    void twoHalvesAreMirroredAndOnePieceLiesOnAFold() {
        Garment halves = hood(Options.USUAL);
        assertThat(halves.pieces()).extracting(GarmentPiece::name).containsExactly("hood half", "shoulder gore");
        assertThat(halves.pieces().get(0).pair()).isTrue();
        assertThat(halves.pieces().get(0).count()).isEqualTo(2);
        Garment one = hood(Options.USUAL.with("backOnFold", true));
        assertThat(one.pieces().get(0).foldable()).isTrue();
        assertThat(one.pieces().get(0).count()).isEqualTo(1);
        // a half 32.2 cm deep, 1.5 cm at each face edge; crown 37.2 cm up, cape 20 cm down
        double depth = (58 + 6 + CLOTH_CM) / 2;
        assertThat(one.pieces().get(0).outline().widthCm()).isCloseTo(2 * depth + 3, within(1e-9));
        double hem = one.sewing().hems().get(0).allowanceCm();
        assertThat(one.pieces().get(0).outline().heightCm())
                .isCloseTo((68 + 6 + CLOTH_CM) / 2 + 20 + 1.5 + hem, within(1e-9));
    }

    @Test
    void closedNeckPassesTheHeadAndAButtonedOneGoesCloseRoundTheNeck() {
        Opening closed = hood(Options.USUAL).fitting().opening().orElseThrow();
        assertThat(closed.edgeCm()).isCloseTo(60, within(1e-9));
        assertThat(closed.passes()).isTrue();
        Garment shortSlit = hood(Options.USUAL.with("frontSlitCm", 4));
        Opening neck = shortSlit.fitting().opening().orElseThrow();
        assertThat(neck.acrossCm() * Math.PI).isCloseTo(38 + 6 + CLOTH_CM, within(1e-9));
        assertThat(neck.passes()).isFalse();
        // 60 - 44.3 = 15.7 cm are wanted of two edges
        assertThat(shortSlit.cautions()).anyMatch(c -> c.contains("make the slit 8 cm long"));
        Garment buttoned = hood(Options.USUAL.with("frontSlitCm", 8));
        assertThat(buttoned.fitting().opening().orElseThrow().passes()).isTrue();
        assertThat(buttoned.sewing().notions()).containsExactly("2 buttons with loops");
        assertThat(buttoned.sewing().hems()).extracting(Hem::edge).contains("front edges");
    }

    @Test
    void capeGoesOverTheShoulders() {
        // neck 60 cm; 16 cm down 112 + 4 cm and the cloth, so at 20 cm 60 + 56.3 x 20 / 16
        double round = 60 + (116 + CLOTH_CM - 60) * 20 / 16;
        Garment gored = hood(Options.USUAL);
        assertThat(gored.sewing().hems().get(0).edgeLengthCm()).isCloseTo(round, within(1e-9));
        // two gores make up what the two straight halves lack, each 2 cm wider at its own seams and 2 more for the slit
        GarmentPiece gore = gored.pieces().get(1);
        double across = 1.5 * Math.hypot(1, ((round - 60) / 2 + 3) / 2 / 20);
        assertThat(gore.outline().widthCm()).isCloseTo((round - 60) / 2 + 3 + 2 * across, within(1e-9));
        Garment flared = hood(Options.USUAL.with("gores", false));
        assertThat(flared.pieces()).hasSize(1);
        assertThat(flared.sewing().hems().get(0).edgeLengthCm()).isCloseTo(round, within(1e-9));
        assertThat(flared.pieces().get(0).outline().widthCm())
                .isGreaterThan(gored.pieces().get(0).outline().widthCm());
    }

    @Test
    void shortCapeIsTold() {
        Measurements shortCape = Measurements.of(Map.of("capeLengthCm", 12.0));
        assertThat(HOOD.madeUp(shortCape, Options.USUAL, SewnCloth.usual()).notes())
                .anyMatch(note -> note.contains("in wind it lifts"));
        assertThat(hood(Options.USUAL).notes()).noneMatch(note -> note.contains("in wind it lifts"));
    }

    @Test
    void slitNoLongerThanTheFront() {
        assertThatThrownBy(() -> hood(Options.USUAL.with("frontSlitCm", 27)))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("options.frontSlitCm");
        assertThat(hood(Options.USUAL.with("frontSlitCm", 26)).sewing().seams())
                .extracting(Seam::name)
                .doesNotContain("front");
    }

    private static Garment hood(Options options) {
        return HOOD.madeUp(Measurements.of(WEARER), options, SewnCloth.usual());
    }
}
