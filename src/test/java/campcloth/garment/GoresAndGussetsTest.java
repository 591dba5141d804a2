package campcloth.garment;

import static campcloth.garment.Worked.WEARER;
import static campcloth.garment.Worked.madeUp;
import static campcloth.garment.Worked.piece;
import static campcloth.garment.Worked.seamCm;
import static campcloth.garment.Worked.tunic;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Refused;
import campcloth.layout.Outline;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What is set into the seams of an upper body, by hand; and that what is sewn together is of one length. */
class GoresAndGussetsTest {

    private static final Offset<Double> TOUCH = within(1e-9);

    @Test
    void sideGoresWidenTheHemAndTakeTheirPartOfTheSideSeams() {
        Garment plain = tunic(WEARER, Map.of());
        Garment tunic = tunic(WEARER, Map.of("sideGores", true, "goreWidthCm", 30, "goreHeightCm", 40));
        GarmentPiece gore = piece(tunic, "side gore");
        // sides lean 15 in 40, so an allowance of 2 cm is 2 x sqrt(1 + (15 / 40)^2) = 2.136 cm level
        double beside = 2 * Math.sqrt(1 + 15.0 * 15 / (40 * 40));
        double hem = tunic.sewing().hems().get(0).allowanceCm();
        assertThat(gore.count()).isEqualTo(2);
        assertThat(gore.outline().widthCm()).isCloseTo(30 + 2 * beside, TOUCH);
        assertThat(gore.outline().heightCm()).isCloseTo(40 + 2 + hem, TOUCH);
        // a flared hem in cloth that eases 1 %: 0.01 x 30 / (2 x 0.375) = 0.4 cm, so the narrowest, 1 + 1 cm and 1 to
        // spare
        assertThat(tunic.sewing().hems().get(0).foldsCm()).containsExactly(1.0, 1.0);
        assertThat(tunic.sewing().hems().get(0).edgeLengthCm()).isEqualTo(126 + 2 * 30);
        assertThat(seamCm(tunic, "side gores")).isEqualTo(4 * 40);
        assertThat(seamCm(plain, "sides and sleeves") - seamCm(tunic, "sides and sleeves"))
                .isEqualTo(2 * 40);
        assertThat(tunic.notes()).anyMatch(n -> n.contains("186 cm round: room enough"));
        assertThat(tunic.lengthRule().lengthOnCm(140)).isEqualTo(95 + 53 + 40);
    }

    @Test
    void halvedGoresAreMirroredAndAddUp() {
        Map<String, Object> options = Map.of("sideGores", true, "goreWidthCm", 30, "goreHeightCm", 40);
        Outline whole = piece(tunic(WEARER, options), "side gore").outline();
        Map<String, Object> halved = new HashMap<>(options);
        halved.put("halvedGores", true);
        Garment tunic = tunic(WEARER, halved);
        GarmentPiece half = piece(tunic, "side gore half");
        assertThat(half.count()).isEqualTo(4);
        assertThat(half.pair()).isTrue();
        // two halves have two upright seam allowances of 2 cm more than the whole
        assertThat(2 * half.outline().widthCm()).isCloseTo(whole.widthCm() + 2 * 2, TOUCH);
        assertThat(2 * half.outline().areaCm2()).isCloseTo(whole.areaCm2() + 2 * 2 * whole.heightCm(), within(1e-6));
        assertThat(seamCm(tunic, "halves of the gores")).isEqualTo(2 * 40);
    }

    @Test
    void goresInSlitsAreCutWiderByTheSlitsSeams() {
        Map<String, Object> options = Map.of("frontBackGores", true, "goreWidthCm", 30, "goreHeightCm", 40);
        double inSlit =
                piece(tunic(WEARER, options), "front and back gore").outline().widthCm();
        Map<String, Object> seamed = new HashMap<>(options);
        seamed.put("centreSeams", true);
        Garment halves = tunic(WEARER, seamed);
        double inSeam = piece(halves, "front and back gore").outline().widthCm();
        assertThat(inSlit - inSeam).isBetween(4.0, 4.2);
        assertThat(seamCm(halves, "centre front and back")).isEqualTo(2 * (95 - 40) - 15);
    }

    @Test
    void gussetsAreSquaresSewnAllRound() {
        Garment plain = tunic(WEARER, Map.of());
        Garment tunic = tunic(WEARER, Map.of("gussetCm", 12));
        GarmentPiece gusset = piece(tunic, "gusset");
        assertThat(gusset.count()).isEqualTo(2);
        assertThat(gusset.outline().widthCm()).isEqualTo(16);
        assertThat(gusset.outline().heightCm()).isEqualTo(16);
        // each side of each square is sewn once: to the sleeve's two edges and to the body's two
        assertThat(seamCm(tunic, "gussets")).isEqualTo(2 * 4 * 12);
        assertThat(seamCm(plain, "sides and sleeves") - seamCm(tunic, "sides and sleeves"))
                .isEqualTo(2 * 2 * 12);
    }

    /** What is sewn together is as long on one piece as on the other, measured on the pieces as they are cut. */
    @Test
    void seamsAreAsLongAsTheEdgesOfTheirPieces() {
        for (long seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Map<String, Double> wearer = Map.of(
                    "finishedChestCm", random.nextDouble(100, 160),
                    "lengthCm", random.nextDouble(90, 140),
                    "sleeveLengthCm", random.nextDouble(30, 65),
                    "sleeveTopWidthCm", random.nextDouble(32, 60));
            boolean gores = random.nextBoolean();
            boolean onePiece = random.nextBoolean();
            double gussetCm = random.nextBoolean() ? random.nextDouble(6, 14) : 0;
            double splitCm = gores ? 0 : random.nextDouble(5, 30);
            Garment tunic = tunic(
                    wearer,
                    Map.of(
                            "onePiece",
                            onePiece,
                            "sideGores",
                            gores,
                            "goreHeightCm",
                            random.nextDouble(20, 45),
                            "goreWidthCm",
                            random.nextDouble(10, 60),
                            "gussetCm",
                            gussetCm,
                            "sideSplits",
                            !gores,
                            "splitLengthCm",
                            splitCm == 0 ? 20 : splitCm));
            double seam = tunic.sewing().seamAllowanceCm();
            double hem = tunic.sewing().hems().get(0).allowanceCm();
            double cuff = tunic.sewing().hems().get(1).allowanceCm();
            Outline sleeve = piece(tunic, "sleeve").outline();
            double armhole = (sleeve.widthCm() - 2 * seam) / 2;
            double upright = onePiece
                    ? piece(tunic, "body").outline().heightCm() / 2 - hem
                    : piece(tunic, "front").outline().heightCm() - seam - hem;
            double gore = gores ? piece(tunic, "side gore").outline().heightCm() - seam - hem : 0;
            double gusset = gussetCm > 0 ? piece(tunic, "gusset").outline().widthCm() - 2 * seam : 0;
            double side = upright - armhole - splitCm - gore - gusset;
            double underSleeve = sleeve.heightCm() - seam - cuff - gusset;
            String which = "seed " + seed + ": " + wearer;
            assertThat(seamCm(tunic, "sides and sleeves")).as(which).isCloseTo(2 * (side + underSleeve), within(1e-6));
            assertThat(seamCm(tunic, "sleeves to body")).as(which).isCloseTo(4 * armhole, within(1e-6));
            if (gores) {
                assertThat(seamCm(tunic, "side gores")).as(which).isCloseTo(4 * gore, within(1e-6));
            }
            if (gussetCm > 0) {
                assertThat(seamCm(tunic, "gussets")).as(which).isCloseTo(8 * gusset, within(1e-6));
            }
        }
    }

    @Test
    void refusesWhatDoesNotGoTogether() {
        assertRefused(Map.of("sideGores", true, "flareCm", 5), "options.flareCm");
        assertRefused(Map.of("sideGores", true, "sideSplits", true), "options.sideSplits");
        assertRefused(Map.of("sideGores", true, "goreHeightCm", 75), "options.goreHeightCm");
        assertRefused(Map.of("frontBackGores", true, "goreHeightCm", 72), "options.goreHeightCm");
        assertRefused(Map.of("sideSplits", true, "splitLengthCm", 60, "gussetCm", 15), "options.gussetCm");
        assertThatThrownBy(() -> madeUp("shirt", Map.of("finishedChestCm", 120.0, "sleeveLengthCm", 20.0), Map.of()))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.refusals().get(0).field()).isEqualTo("options.cuffBandCm"));
    }

    private static void assertRefused(Map<String, Object> options, String field) {
        assertThatThrownBy(() -> tunic(WEARER, options))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.refusals().get(0).field()).isEqualTo(field));
    }
}
