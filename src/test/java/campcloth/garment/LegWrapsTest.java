package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Refused;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LegWrapsTest {

    private static final Measurements WEARER =
            Measurements.of(Map.of("calfCm", 38.0, "ankleCm", 24.0, "wrapHeightCm", 42.0));

    /** 42 / (10 - 5) + 2 = 10.4 turns of sqrt(31^2 + 5^2) = 31.40 cm, and 40 to tuck in. */
    private static final double BAND_CM = 10.4 * Math.hypot(31, 5) + 40;

    @Test
    void bandIsAsLongAsItsTurns() {
        Garment garment = made(Options.USUAL);
        assertThat(garment.pieces()).hasSize(1);
        GarmentPiece band = garment.pieces().get(0);
        assertThat(band.count()).isEqualTo(2);
        // 1.5 cm for the hem or seam at each end and edge
        assertThat(band.outline().heightCm()).isCloseTo(BAND_CM + 3, within(1e-9));
        assertThat(band.outline().widthCm()).isCloseTo(10 + 3, within(1e-9));
        assertThat(garment.notes()).anyMatch(n -> n.contains("367 cm long: 10.4 turns"));
    }

    @Test
    void shortClothPiecesTheBandsWithSeams() {
        Garment pieced = made(Options.USUAL.with("longestPieceCm", 130));
        // 366.6 / (130 - 3) = 2.9: three pieces to a band
        assertThat(pieced.pieces().get(0).count()).isEqualTo(6);
        assertThat(pieced.pieces().get(0).outline().heightCm()).isCloseTo(BAND_CM / 3 + 3, within(1e-9));
        assertThat(pieced.sewing().seams().get(0).lengthCm()).isEqualTo(2 * 2 * 10);
    }

    @Test
    void acrossTheClothThePiecesAreNoWiderThanIt() {
        Garment across = made(Options.USUAL.with("acrossTheCloth", true));
        GarmentPiece band = across.pieces().get(0);
        assertThat(band.count()).isEqualTo(2 * 3);
        assertThat(band.outline().widthCm())
                .isLessThanOrEqualTo(SewnCloth.usual().usableWidthCm());
        assertThat(band.outline().heightCm()).isCloseTo(13, within(1e-9));
    }

    @Test
    void turnsMustClimb() {
        assertThatThrownBy(() -> made(Options.USUAL.with("overlapCm", 9)))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("options.overlapCm");
    }

    private static Garment made(Options options) {
        return Designs.named("leg-wraps").madeUp(WEARER, options, SewnCloth.usual());
    }
}
