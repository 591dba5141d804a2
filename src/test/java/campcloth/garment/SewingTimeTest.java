package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.layout.Point;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SewingTimeTest {

    private static final Garment TUNIC = tunic(95, SewnCloth.usual());

    @Test
    void metresAreThoseOfPiecesSeamsAndHems() {
        SewingTime time = SewingTime.of(TUNIC, SewnBy.MACHINE);
        // two bodies 67 x 102, two sleeves that taper by 5 cm on each side over 53 cm, the facing round its box
        double sleeve = 44 + 34 + 2 * (5 + 2) + 2 * Math.hypot(5, 53);
        double facing = TUNIC.smallPieces().stream()
                .mapToDouble(p -> roundCm(p.outline().points()))
                .sum();
        assertThat(metres(time, "chalk and cut"))
                .isCloseTo((2 * 2 * (67 + 102) + 2 * sleeve + facing) / 100.0, within(1e-9));
        double seamsCm =
                TUNIC.sewing().seams().stream().mapToDouble(Seam::lengthCm).sum();
        assertThat(metres(time, "sew and press the seams")).isCloseTo(seamsCm / 100, within(1e-9));
        assertThat(metres(time, "fold, press and sew the hems"))
                .isCloseTo(
                        TUNIC.sewing().hems().stream()
                                        .mapToDouble(Hem::edgeLengthCm)
                                        .sum()
                                / 100,
                        within(1e-9));
    }

    @Test
    void handTakesLongerThanMachineAndTheRangeIsARange() {
        SewingTime machine = SewingTime.of(TUNIC, SewnBy.MACHINE);
        SewingTime hand = SewingTime.of(TUNIC, SewnBy.HAND);
        assertThat(machine.leastHours()).isPositive().isLessThan(machine.mostHours());
        assertThat(hand.leastHours()).isGreaterThan(machine.mostHours());
        assertThat(hand.parts()).allMatch(part -> part.leastMinutes() < part.mostMinutes());
    }

    @Test
    void longerTunicTakesLongerAndFeltIsNotNeatened() {
        assertThat(SewingTime.of(tunic(130, SewnCloth.usual()), SewnBy.HAND).leastHours())
                .isGreaterThan(SewingTime.of(TUNIC, SewnBy.HAND).leastHours());
        SewnCloth felt = new SewnCloth(
                400,
                2,
                campcloth.cloth.Surface.PLAIN,
                java.util.Optional.of(campcloth.cloth.Weave.FELT),
                java.util.Optional.empty(),
                java.util.Optional.of("wool"),
                0,
                0,
                150);
        assertThat(metres(SewingTime.of(tunic(95, felt), SewnBy.HAND), "neaten the raw edges"))
                .isZero();
    }

    @Test
    void threadByHandIsBackstitchOvercastAndHemmingWithItsOwnWaste() {
        Seam seam = new Seam("seam", 100, Stitch.LOCK_301, 2);
        Sewing sewing = new Sewing(
                List.of(seam), List.of(), 2, List.of(SewingStep.seams(SewingStage.BODY, "Sew it.", "seam")), List.of());
        // layers of 0.35 mm: 3 + 2 x 0.7 / 2.5; edges 2 (sqrt(25 + 16) + 0.35) / 4 each
        double ratio = 3.56 + 2 * 2 * (Math.sqrt(41) + 0.35) / 4;
        assertThat(SewingThread.metres(sewing, SewnCloth.usual(), SewnBy.HAND)).isCloseTo(ratio * 1.35, within(1e-9));
        assertThat(SewingThread.metres(sewing, SewnCloth.usual(), SewnBy.MACHINE))
                .isEqualTo(SewingThread.metres(List.of(seam), List.of(), SewnCloth.usual()));
    }

    private static double roundCm(List<Point> corners) {
        double cm = 0;
        Point last = corners.get(corners.size() - 1);
        for (Point corner : corners) {
            cm += Math.hypot(corner.xCm() - last.xCm(), corner.yCm() - last.yCm());
            last = corner;
        }
        return cm;
    }

    private static double metres(SewingTime time, String work) {
        return time.parts().stream()
                .filter(part -> part.work().equals(work))
                .findFirst()
                .orElseThrow()
                .metres();
    }

    private static Garment tunic(double lengthCm, SewnCloth cloth) {
        Measurements wearer = Measurements.of(Map.of(
                "finishedChestCm", 126.0,
                "lengthCm", lengthCm,
                "sleeveLengthCm", 53.0,
                "sleeveTopWidthCm", 40.0,
                "cuffWidthCm", 30.0,
                "neckDiameterCm", 15.0));
        return Designs.named("tunic").madeUp(wearer, Options.USUAL, cloth);
    }
}
