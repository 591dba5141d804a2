package campcloth.garment;

import static campcloth.garment.Worked.WEARER;
import static campcloth.garment.Worked.piece;
import static campcloth.garment.Worked.tunic;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Layer;
import campcloth.cloth.Wear;
import campcloth.figure.Refused;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a tunic says of itself: what it took, what will not do, how much of the body it covers. */
class TunicAdviceTest {

    private static final Design TUNIC = Designs.named("tunic");

    @Test
    void derivesWhatIsNotGivenAndSaysSo() {
        Garment tunic = tunic(Map.of("chestCm", 98.0), Options.USUAL);
        // 28 cm of ease and 2 pi x 0.05 cm for the cloth's thickness
        assertThat(2 * (piece(tunic, "front").outline().widthCm() - 4))
                .isCloseTo(98 + 28 + 2 * Math.PI * 0.05, within(1e-9));
        for (String derived : new String[] {
            "Round the finished garment",
            "From the shoulder to the hem",
            "Along the arm",
            "Round the top of the sleeve",
            "Round the end of the sleeve",
            "Across the neck opening"
        }) {
            assertThat(tunic.notes()).anyMatch(note -> note.startsWith(derived + ": not measured, "));
        }
        assertThat(tunic(WEARER, Options.USUAL).notes()).noneMatch(note -> note.contains("not measured"));
    }

    @Test
    void saysWhichMeasurementsItDoesNotUse() {
        assertThat(tunic(Map.of("chestCm", 98.0, "lenghtCm", 80.0), Options.USUAL)
                        .notes())
                .anyMatch(note -> note.startsWith("lenghtCm is not used"));
    }

    @Test
    void cautionsWhereTheHeadDoesNotPassTheNeck() {
        // pi x 15 + 2 x 8 = 63 cm: passes 58, not 64
        assertThat(tunic(WEARER, Options.USUAL).cautions()).isEmpty();
        Map<String, Double> bigHead = new HashMap<>(WEARER);
        bigHead.put("headCm", 64.0);
        assertThat(tunic(bigHead, Options.USUAL).cautions())
                .singleElement()
                .asString()
                .contains("63 cm")
                .contains("10 cm long");
        assertThat(tunic(bigHead, Options.USUAL.with("neckSlitCm", 10)).cautions())
                .isEmpty();
    }

    @Test
    void saysWhereTheHemIsNarrowForAStride() {
        Map<String, Double> narrow = new HashMap<>(WEARER);
        narrow.put("finishedChestCm", 90.0);
        narrow.put("lengthCm", 110.0);
        assertThat(tunic(narrow, Options.USUAL).notes()).anyMatch(n -> n.contains("take side splits"));
        assertThat(tunic(WEARER, Options.USUAL).notes()).anyMatch(n -> n.contains("room enough to stride"));
    }

    @Test
    void whatIsEnoughAtTheKneeIsNotAtTheAnkle() {
        Map<String, Double> long145 = new HashMap<>(WEARER);
        long145.put("lengthCm", 145.0);
        // wanted: 98 at 97 cm, 170 at 137 cm and below; 126 cm round do down to 97 + 28 / 1.8 = 112.6 cm
        assertThat(tunic(long145, Options.USUAL).notes())
                .anyMatch(n -> n.contains("about 170 cm are usual")
                        && n.contains("side splits 33 cm long")
                        && n.contains("a flare of 11 cm"));
        assertThat(tunic(long145, Options.of(Map.of("sideSplits", true, "splitLengthCm", 33)))
                        .notes())
                .anyMatch(n -> n.contains("the side splits give the room"));
        assertThat(tunic(long145, Options.of(Map.of("sideSplits", true, "splitLengthCm", 32)))
                        .notes())
                .anyMatch(n -> n.contains("make the side splits 33 cm long"));
        assertThat(tunic(long145, Options.USUAL.with("flareCm", 11)).notes())
                .anyMatch(n -> n.contains("170 cm round: room enough to stride"));
    }

    @Test
    void refusesWithThePathOfTheMeasurementAtFault() {
        assertRefused(Map.of(), Options.USUAL, "wearer.finishedChestCm");
        assertRefused(Map.of("finishedChestCm", 126.0, "lengthCm", -1.0), Options.USUAL, "wearer.lengthCm");
        assertRefused(Map.of("finishedChestCm", Double.NaN), Options.USUAL, "wearer.finishedChestCm");
        assertRefused(Map.of("finishedChestCm", 100.0, "chestCm", 98.0), Options.USUAL, "wearer.finishedChestCm");
        assertRefused(
                Map.of("finishedChestCm", 126.0, "lengthCm", 40.0, "sleeveTopWidthCm", 90.0),
                Options.USUAL,
                "wearer.sleeveTopWidthCm");
        assertRefused(WEARER, Options.USUAL.with("seamAllowanceCm", 1), "options.seamAllowanceCm");
        assertRefused(WEARER, Options.of(Map.of("hood", true)), "options.hood");
        assertRefused(WEARER, Options.of(Map.of("flareCm", true)), "options.flareCm");
        assertRefused(WEARER, Options.of(Map.of("sideSplits", true, "splitLengthCm", 80)), "options.splitLengthCm");
    }

    @Test
    void coversTwoThirdsOfTheBodyToTheKnee() {
        Wear wear = TUNIC.wear(true, Measurements.of(WEARER));
        assertThat(wear.coveredPercent()).isCloseTo(65, within(0.01));
        assertThat(wear.clothAreaM2()).isCloseTo((126 * 95 + 70 * 53) / 1e4, within(1e-9));
        assertThat(wear.nextToSkin()).isTrue();
        assertThat(wear.layer()).isEqualTo(Layer.OUTER);
        assertThat(wear.stretchAllowed()).isFalse();
    }

    @Test
    void advisesWithoutMeasurementsButSaysWhatItTook() {
        assertThat(TUNIC.wear(true, Measurements.of(Map.of()))).isEqualTo(TUNIC.wear(true, Measurements.of(WEARER)));
        assertThat(TUNIC.assumptions(Measurements.of(Map.of())))
                .hasSize(6)
                .allMatch(note -> note.contains(": not measured, "));
        assertThat(TUNIC.assumptions(Measurements.of(WEARER))).isEmpty();
    }

    @Test
    void longerTunicCoversNoLess() {
        double before = 0;
        for (double length = 45; length <= 180; length++) {
            double covered = TUNIC.wear(false, Measurements.of(Map.of("chestCm", 98.0, "lengthCm", length)))
                    .coveredPercent();
            assertThat(covered).isBetween(before, 100.0);
            before = covered;
        }
    }

    private static void assertRefused(Map<String, Double> wearer, Options options, String field) {
        assertThatThrownBy(() -> tunic(wearer, options))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.refusals().get(0).field()).isEqualTo(field));
    }
}
