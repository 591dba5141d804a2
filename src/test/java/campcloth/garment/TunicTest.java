package campcloth.garment;

import static campcloth.garment.Worked.WEARER;
import static campcloth.garment.Worked.piece;
import static campcloth.garment.Worked.seamCm;
import static campcloth.garment.Worked.tunic;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Finish;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** How a tunic is cut and sewn, by hand. */
class TunicTest {

    private static final Design TUNIC = Designs.named("tunic");

    @Test
    void cutsTwoHalvesAndTwoSleevesWithTheirAllowances() {
        Garment tunic = tunic(WEARER, Options.USUAL);
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
        Garment tunic = tunic(WEARER, Options.USUAL.with("flareCm", 5));
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
        Garment tunic = tunic(WEARER, Options.USUAL.with("centreSeams", true).with("flareCm", 5));
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
        Garment plain = tunic(WEARER, Options.USUAL);
        Garment split = tunic(WEARER, Options.of(Map.of("sideSplits", true, "splitLengthCm", 25)));
        assertThat(seamCm(plain, "sides and sleeves") - seamCm(split, "sides and sleeves"))
                .isCloseTo(50, within(1e-9));
        assertThat(split.sewing().hems()).extracting(Hem::edge).contains("side split");
        assertThat(plain.sewing().hems()).extracting(Hem::edge).doesNotContain("side split");
    }

    @Test
    void sumsItsSeams() {
        Garment tunic = tunic(WEARER, Options.USUAL);
        // sides: armhole 20 cm deep, so 75 cm each, and 53 cm of sleeve
        assertThat(seamCm(tunic, "sides and sleeves")).isEqualTo(2 * (75 + 53));
        assertThat(tunic.sewing().seams().get(0).lengthCm()).isEqualTo(63 - 15);
    }

    @Test
    void aNarrowerSeamAllowanceIsCutAndHemmed() {
        Garment tunic = tunic(WEARER, Options.of(Map.of("seamAllowanceCm", 1.5, "sideSplits", true)));
        assertThat(tunic.sewing().seamAllowanceCm()).isEqualTo(1.5);
        assertThat(piece(tunic, "front").outline().widthCm()).isEqualTo(63 + 2 * 1.5);
        assertThat(tunic.sewing().hems())
                .filteredOn(hem -> hem.edge().equals("side split"))
                .singleElement()
                .satisfies(hem -> assertThat(hem.foldsCm()).containsExactly(0.75, 0.75));
    }

    @Test
    void narrowerHemsMakeShorterPieces() {
        Garment tunic = tunic(WEARER, Options.of(Map.of("hemAllowanceCm", 3, "cuffAllowanceCm", 2)));
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
        Garment plain = tunic(WEARER, Options.USUAL);
        assertThat(SewingThread.metres(tunic.sewing().seams(), tunic.sewing().hems(), fulled))
                .isLessThan(0.5
                        * SewingThread.metres(
                                plain.sewing().seams(), plain.sewing().hems(), fulled));
    }

    @Test
    void ruleOfThumbCountsTheRowsOfPanels() {
        LengthRule rule = tunic(WEARER, Options.USUAL).lengthRule();
        assertThat(rule.lengthOnCm(133)).isEqualTo(2 * 95 + 53);
        assertThat(rule.lengthOnCm(134)).isEqualTo(95 + 53);
        assertThat(rule.words(134)).isEqualTo("1 x 95 + 53 cm");
        assertThat(rule.shortOfOneMoreCm(132)).isCloseTo(2, within(1e-9));
        LengthRule flared = tunic(WEARER, Options.USUAL.with("flareCm", 5)).lengthRule();
        assertThat(flared.rows(153)).isEqualTo(2);
        assertThat(flared.rows(154)).isEqualTo(1);
    }

    private static SewnCloth unwashed(double warp, double weft) {
        return new SewnCloth(
                200, 0.5, Surface.PLAIN, Optional.empty(), Optional.empty(), Optional.empty(), warp, weft, 140);
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
