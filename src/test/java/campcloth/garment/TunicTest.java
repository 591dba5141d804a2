package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Finish;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Wear;
import campcloth.cloth.Weave;
import campcloth.figure.Refused;
import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class TunicTest {

    private static final Design TUNIC = Designs.named("tunic");
    private static final Map<String, Double> WEARER = Map.of(
            "finishedChestCm", 126.0,
            "lengthCm", 95.0,
            "sleeveLengthCm", 53.0,
            "sleeveTopWidthCm", 40.0,
            "cuffWidthCm", 30.0,
            "neckDiameterCm", 15.0);

    @Test
    void cutsTwoHalvesAndTwoSleevesWithTheirAllowances() {
        Garment tunic = madeUp(WEARER, Options.USUAL);
        assertThat(tunic.pieces()).extracting(GarmentPiece::name).containsExactly("front", "back", "sleeve");
        Outline front = piece(tunic, "front").outline();
        assertThat(front.widthCm()).isEqualTo(63 + 2 * 2);
        assertThat(front.heightCm()).isEqualTo(95 + 2 + 5);
        assertThat(front.points()).hasSize(4);
        GarmentPiece sleeve = piece(tunic, "sleeve");
        assertThat(sleeve.count()).isEqualTo(2);
        assertThat(sleeve.outline().widthCm()).isEqualTo(40 + 2 * 2);
        assertThat(sleeve.outline().heightCm()).isEqualTo(53 + 2 + 5);
        assertThat(widthAt(sleeve.outline(), 0.5)).isCloseTo(30 + 2 * 2, within(1e-9));
        assertThat(tunic.sewing().seamAllowanceCm()).isEqualTo(2);
    }

    @Test
    void flareWidensTheFinishedHemOnBothSides() {
        Garment tunic = madeUp(WEARER, Options.USUAL.with("flareCm", 5));
        Outline front = piece(tunic, "front").outline();
        assertThat(widthAt(front, 5)).isCloseTo(67 + 2 * 5, within(1e-6));
        assertThat(widthAt(front, 95 + 5 - 20)).isCloseTo(67, within(1e-6));
        assertThat(widthAt(front, (75 / 2.0) + 5)).isCloseTo(67 + 5, within(1e-6));
    }

    @Test
    void finishedSizesRemainAfterAllowancesAndTheFirstWash() {
        SplittableRandom random = new SplittableRandom(7);
        for (int round = 0; round < 200; round++) {
            double warp = random.nextDouble(0, 15);
            double weft = random.nextDouble(0, 10);
            Map<String, Double> wearer = Map.of(
                    "finishedChestCm", random.nextDouble(80, 180),
                    "lengthCm", random.nextDouble(60, 140),
                    "sleeveLengthCm", random.nextDouble(10, 70),
                    "sleeveTopWidthCm", random.nextDouble(30, 60),
                    "cuffWidthCm", random.nextDouble(20, 40),
                    "neckDiameterCm", 15.0);
            Garment tunic = TUNIC.madeUp(Measurements.of(wearer), Options.USUAL, unwashed(warp, weft));
            Outline front = piece(tunic, "front").outline();
            Outline sleeve = piece(tunic, "sleeve").outline();
            double seam = tunic.sewing().seamAllowanceCm();
            double bodyHem = tunic.sewing().hems().get(0).washedAllowanceCm();
            double cuffHem = tunic.sewing().hems().get(1).washedAllowanceCm();
            String which = "round " + round + " of seed 7: " + wearer;
            assertThat(2 * (front.widthCm() - 2 * seam) * (1 - weft / 100))
                    .as(which)
                    .isCloseTo(wearer.get("finishedChestCm"), within(1e-6));
            assertThat((front.heightCm() - seam - bodyHem) * (1 - warp / 100))
                    .as(which)
                    .isCloseTo(wearer.get("lengthCm"), within(1e-6));
            assertThat((sleeve.heightCm() - seam - cuffHem) * (1 - warp / 100))
                    .as(which)
                    .isCloseTo(wearer.get("sleeveLengthCm"), within(1e-6));
            assertThat((widthAt(sleeve, cuffHem / 2) - 2 * seam) * (1 - weft / 100))
                    .as(which)
                    .isCloseTo(wearer.get("cuffWidthCm"), within(1e-6));
        }
    }

    @Test
    void centreSeamsCutNarrowPanels() {
        Garment tunic = madeUp(WEARER, Options.USUAL.with("centreSeams", true).with("flareCm", 5));
        GarmentPiece front = piece(tunic, "front");
        assertThat(front.count()).isEqualTo(2);
        assertThat(front.pair()).isTrue();
        assertThat(front.outline().widthCm()).isCloseTo(126 / 4.0 + 2 * 2 + 5, within(1e-9));
        assertThat(tunic.sewing().seams()).extracting(Seam::name).contains("centre front and back");
    }

    @Test
    void frayingClothHasHalfACentimetreMoreAtTheSeams() {
        SewnCloth open = new SewnCloth(
                200, 0.5, Surface.PLAIN, Optional.of(Weave.OPEN_PLAIN), Optional.empty(), Optional.empty(), 0, 0, 140);
        Garment tunic = TUNIC.madeUp(Measurements.of(WEARER), Options.USUAL, open);
        assertThat(tunic.sewing().seamAllowanceCm()).isEqualTo(2.5);
        assertThat(piece(tunic, "front").outline().widthCm()).isEqualTo(63 + 2 * 2.5);
    }

    @Test
    void splitsShortenTheSideSeamAndAreHemmed() {
        Garment plain = madeUp(WEARER, Options.USUAL);
        Garment split = madeUp(WEARER, Options.of(Map.of("sideSplits", true, "splitLengthCm", 25)));
        assertThat(seamCm(plain) - seamCm(split)).isCloseTo(50, within(1e-9));
        assertThat(split.sewing().hems()).extracting(Hem::edge).contains("side split");
        assertThat(plain.sewing().hems()).extracting(Hem::edge).doesNotContain("side split");
    }

    @Test
    void sumsItsSeams() {
        Garment tunic = madeUp(WEARER, Options.USUAL);
        // sides: armhole 20 cm deep, so 75 cm each, and 53 cm of sleeve
        assertThat(seamCm(tunic)).isEqualTo(2 * (75 + 53));
        assertThat(tunic.sewing().seams().get(0).lengthCm()).isEqualTo(63 - 15);
    }

    @Test
    void derivesWhatIsNotGivenAndSaysSo() {
        Garment tunic = madeUp(Map.of("chestCm", 98.0), Options.USUAL);
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
        assertThat(madeUp(WEARER, Options.USUAL).notes()).noneMatch(note -> note.contains("not measured"));
    }

    @Test
    void saysWhichMeasurementsItDoesNotUse() {
        assertThat(madeUp(Map.of("chestCm", 98.0, "lenghtCm", 80.0), Options.USUAL)
                        .notes())
                .anyMatch(note -> note.startsWith("lenghtCm is not used"));
    }

    @Test
    void cautionsWhereTheHeadDoesNotPassTheNeck() {
        // pi x 15 + 2 x 8 = 63 cm: passes 58, not 64
        assertThat(madeUp(WEARER, Options.USUAL).cautions()).isEmpty();
        Map<String, Double> bigHead = new java.util.HashMap<>(WEARER);
        bigHead.put("headCm", 64.0);
        assertThat(madeUp(bigHead, Options.USUAL).cautions())
                .singleElement()
                .asString()
                .contains("63 cm")
                .contains("10 cm long");
        assertThat(madeUp(bigHead, Options.USUAL.with("neckSlitCm", 10)).cautions())
                .isEmpty();
    }

    @Test
    void saysWhereTheHemIsNarrowForAStride() {
        Map<String, Double> narrow = new java.util.HashMap<>(WEARER);
        narrow.put("finishedChestCm", 90.0);
        narrow.put("lengthCm", 110.0);
        assertThat(madeUp(narrow, Options.USUAL).notes()).anyMatch(n -> n.contains("take side splits"));
        assertThat(madeUp(WEARER, Options.USUAL).notes()).anyMatch(n -> n.contains("room enough to stride"));
    }

    @Test
    void whatIsEnoughAtTheKneeIsNotAtTheAnkle() {
        Map<String, Double> long145 = new java.util.HashMap<>(WEARER);
        long145.put("lengthCm", 145.0);
        // wanted: 98 at 97 cm, 170 at 137 cm and below; 126 cm round do down to 97 + 28 / 1.8 = 112.6 cm
        assertThat(madeUp(long145, Options.USUAL).notes())
                .anyMatch(n -> n.contains("about 170 cm are usual")
                        && n.contains("side splits 33 cm long")
                        && n.contains("a flare of 11 cm"));
        assertThat(madeUp(long145, Options.of(Map.of("sideSplits", true, "splitLengthCm", 33)))
                        .notes())
                .anyMatch(n -> n.contains("the side splits give the room"));
        assertThat(madeUp(long145, Options.of(Map.of("sideSplits", true, "splitLengthCm", 32)))
                        .notes())
                .anyMatch(n -> n.contains("make the side splits 33 cm long"));
        assertThat(madeUp(long145, Options.USUAL.with("flareCm", 11)).notes())
                .anyMatch(n -> n.contains("170 cm round: room enough to stride"));
    }

    @Test
    void aNarrowerSeamAllowanceIsCutAndHemmed() {
        Garment tunic = madeUp(WEARER, Options.of(Map.of("seamAllowanceCm", 1.5, "sideSplits", true)));
        assertThat(tunic.sewing().seamAllowanceCm()).isEqualTo(1.5);
        assertThat(piece(tunic, "front").outline().widthCm()).isEqualTo(63 + 2 * 1.5);
        assertThat(tunic.sewing().hems())
                .filteredOn(hem -> hem.edge().equals("side split"))
                .singleElement()
                .satisfies(hem -> assertThat(hem.foldsCm()).containsExactly(0.75, 0.75));
        assertRefused(WEARER, Options.USUAL.with("seamAllowanceCm", 1), "options.seamAllowanceCm");
    }

    @Test
    void narrowerHemsMakeShorterPieces() {
        Garment tunic = madeUp(WEARER, Options.of(Map.of("hemAllowanceCm", 3, "cuffAllowanceCm", 2)));
        assertThat(piece(tunic, "front").outline().heightCm()).isEqualTo(95 + 2 + 3);
        assertThat(piece(tunic, "sleeve").outline().heightCm()).isEqualTo(53 + 2 + 2);
    }

    @Test
    void fulledClothTakesNoThreadForNeatening() {
        SewnCloth fulled = new SewnCloth(
                200,
                0.5,
                Surface.PLAIN,
                Optional.of(Weave.TWILL),
                Optional.of(Finish.FULLED),
                Optional.of("wool"),
                0,
                0,
                140);
        Garment tunic = TUNIC.madeUp(Measurements.of(WEARER), Options.USUAL, fulled);
        assertThat(tunic.sewing().seams()).allMatch(seam -> seam.neatenedEdges() == 0);
        assertThat(tunic.sewing().hems()).noneMatch(Hem::neatened);
        Garment plain = madeUp(WEARER, Options.USUAL);
        assertThat(SewingThread.metres(tunic.sewing().seams(), tunic.sewing().hems(), fulled))
                .isLessThan(0.5
                        * SewingThread.metres(
                                plain.sewing().seams(), plain.sewing().hems(), fulled));
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

    @Test
    void ruleOfThumbCountsTheRowsOfPanels() {
        LengthRule rule = madeUp(WEARER, Options.USUAL).lengthRule();
        assertThat(rule.lengthOnCm(133)).isEqualTo(2 * 95 + 53);
        assertThat(rule.lengthOnCm(134)).isEqualTo(95 + 53);
        assertThat(rule.words(134)).isEqualTo("1 x 95 + 53 cm");
        assertThat(rule.shortOfOneMoreCm(132)).isCloseTo(2, within(1e-9));
        LengthRule flared = madeUp(WEARER, Options.USUAL.with("flareCm", 5)).lengthRule();
        assertThat(flared.rows(153)).isEqualTo(2);
        assertThat(flared.rows(154)).isEqualTo(1);
    }

    private static void assertRefused(Map<String, Double> wearer, Options options, String field) {
        assertThatThrownBy(() -> madeUp(wearer, options))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.refusals().get(0).field()).isEqualTo(field));
    }

    private static Garment madeUp(Map<String, Double> wearer, Options options) {
        return TUNIC.madeUp(Measurements.of(wearer), options, SewnCloth.usual());
    }

    private static SewnCloth unwashed(double warp, double weft) {
        return new SewnCloth(
                200, 0.5, Surface.PLAIN, Optional.empty(), Optional.empty(), Optional.empty(), warp, weft, 140);
    }

    private static GarmentPiece piece(Garment garment, String name) {
        return garment.pieces().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double seamCm(Garment garment) {
        return garment.sewing().seams().stream()
                .filter(s -> s.name().equals("sides and sleeves"))
                .findFirst()
                .orElseThrow()
                .lengthCm();
    }

    /** Width of the outline at a height, measured by a geometry library. */
    private static double widthAt(Outline outline, double yCm) {
        GeometryFactory factory = new GeometryFactory();
        Coordinate[] ring = new Coordinate[outline.points().size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point point = outline.points().get(i % outline.points().size());
            ring[i] = new Coordinate(point.xCm(), point.yCm());
        }
        Polygon polygon = factory.createPolygon(ring);
        return polygon.intersection(factory.createLineString(
                        new Coordinate[] {new Coordinate(-1000, yCm), new Coordinate(1000, yCm)}))
                .getLength();
    }
}
