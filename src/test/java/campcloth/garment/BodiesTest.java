package campcloth.garment;

import static campcloth.garment.Worked.WEARER;
import static campcloth.garment.Worked.madeUp;
import static campcloth.garment.Worked.piece;
import static campcloth.garment.Worked.seamCm;
import static campcloth.garment.Worked.tunic;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Worked figures of the designs of the upper body, by hand. */
class BodiesTest {

    private static final Offset<Double> TOUCH = within(1e-9);

    @Test
    void onePieceIsTwiceTheLengthTheRiseAndTheHem() {
        Garment tunic = tunic(WEARER, Map.of("onePiece", true));
        assertThat(tunic.pieces()).extracting(GarmentPiece::name).containsExactly("body", "sleeve");
        Outline body = piece(tunic, "body").outline();
        assertThat(body.widthCm()).isEqualTo(63 + 2 * 2);
        assertThat(body.heightCm()).isEqualTo(2 * (95 + 7 + 5));
        assertThat(tunic.sewing().seams()).extracting(Seam::name).doesNotContain("shoulders");
        assertThat(tunic.lengthRule().panels()).isEqualTo(1);
        assertThat(tunic.lengthRule().lengthOnCm(140)).isEqualTo(2 * 102 + 53);
        assertThat(piece(tunic(WEARER, Map.of("onePiece", true, "shoulderRiseCm", 0)), "body")
                        .outline()
                        .heightCm())
                .isEqualTo(200);
    }

    @Test
    void onePieceFlaresToBothHems() {
        Garment tunic = tunic(WEARER, Map.of("onePiece", true, "flareCm", 5));
        GarmentPiece body = piece(tunic, "body");
        assertThat(body.outline().widthCm()).isEqualTo(67 + 2 * 5);
        assertThat(body.foldable()).isTrue();
        // upper and lower half alike, the armholes 20 cm either side of the fold
        assertThat(body.outline().points()).contains(new Point(5, 107 - 20), new Point(5, 107 + 20));
        Garment halves = tunic(WEARER, Map.of("onePiece", true, "flareCm", 5, "centreSeams", true));
        assertThat(piece(halves, "body").count()).isEqualTo(2);
        assertThat(piece(halves, "body").pair()).isTrue();
        assertThat(piece(halves, "body").outline().widthCm()).isEqualTo(31.5 + 2 * 2 + 5);
        // front and back from hem to hem over the fold, without the neck
        assertThat(seamCm(halves, "centre front and back")).isEqualTo(2 * 102 - 15);
    }

    @Test
    void takesInByTheTrueEase() {
        Map<String, Double> known = new HashMap<>(WEARER);
        known.put("chestCm", 104.0);
        // 126 - 104 = 22 cm of ease, 10 of which must stay
        SeamRoom room = tunic(known, Map.of()).fitting().rooms().get(0);
        assertThat(room.takeInCm()).hasValue(12);
        assertThat(room.letOutCm()).isEqualTo(2 * 2 * (2 - 1));
        SeamRoom unknown = tunic(WEARER, Map.of()).fitting().rooms().get(0);
        assertThat(unknown.takeInCm()).isEmpty();
        assertThat(unknown.words()).contains("not known");
        assertThat(tunic(WEARER, Map.of("centreSeams", true)).fitting().rooms()).hasSize(2);
    }

    @Test
    void theFacingIsFourCentimetresWideRoundNeckAndSlit() {
        GarmentPiece facing = tunic(WEARER, Map.of()).smallPieces().get(0);
        assertThat(facing.outline().widthCm()).isCloseTo(15 + 2 * 4, within(0.1));
        assertThat(facing.outline().heightCm()).isCloseTo(15 + 2 * 4 + 8, within(0.1));
        // circle of 23 cm and a tongue of 8 x 8, which overlaps the circle's rounding by a little
        assertThat(facing.outline().areaCm2()).isBetween(Math.PI * 11.5 * 11.5 + 60, Math.PI * 11.5 * 11.5 + 70);
        Outline square = tunicNeck("gown", Map.of("squareNeck", true, "neckSlitCm", 8, "goreHeightCm", 40))
                .outline();
        assertThat(square.areaCm2()).isCloseTo(23 * 23 + 8 * 8, TOUCH);
    }

    @Test
    void aSquareNeckOpensByItsFourSides() {
        Opening square = madeUp("shirt", WEARER_SHIRT, Map.of("squareNeck", true, "neckSlitCm", 5))
                .fitting()
                .opening()
                .orElseThrow();
        assertThat(square.edgeCm()).isCloseTo(4 * 15 + 2 * 5, TOUCH);
        Opening round = madeUp("shirt", WEARER_SHIRT, Map.of("neckSlitCm", 8))
                .fitting()
                .opening()
                .orElseThrow();
        // pi x 15 + 2 x 8
        assertThat(round.edgeCm()).isCloseTo(63.12, within(0.01));
    }

    private static final Map<String, Double> WEARER_SHIRT = Map.of(
            "finishedChestCm", 120.0,
            "lengthCm", 85.0,
            "sleeveLengthCm", 60.0,
            "sleeveTopWidthCm", 42.0,
            "cuffWidthCm", 22.0,
            "neckDiameterCm", 15.0);

    @Test
    void theShirtIsRectangles() {
        Garment shirt = madeUp("shirt", WEARER_SHIRT, Map.of());
        assertThat(shirt.pieces())
                .extracting(GarmentPiece::name)
                .containsExactly("body", "sleeve", "gusset", "cuff band");
        assertThat(shirt.pieces()).allMatch(p -> p.outline().points().size() == 4);
        Outline body = piece(shirt, "body").outline();
        assertThat(body.widthCm()).isEqualTo(60 + 2 * 1.5);
        assertThat(body.heightCm()).isEqualTo(2 * (85 + 7 + 2));
        Outline sleeve = piece(shirt, "sleeve").outline();
        assertThat(sleeve.widthCm()).isEqualTo(42 + 3);
        // 60 cm less the band of 5, a seam at either end
        assertThat(sleeve.heightCm()).isEqualTo(55 + 3);
        Outline band = piece(shirt, "cuff band").outline();
        assertThat(band.widthCm()).isEqualTo(22 + 2 + 3);
        assertThat(band.heightCm()).isEqualTo(2 * 5 + 3);
        assertThat(shirt.sewing().hems()).extracting(Hem::edge).doesNotContain("cuff");
        assertThat(shirt.sewing().hems().get(0).foldsCm()).containsExactly(1.0, 1.0);
        assertThat(shirt.sewing().notions()).singleElement().asString().startsWith("2 buttons");
        // side: 92 - 21 - 20 split - 12 gusset = 39; sleeve: 55 - 12 gusset - 8 open = 35
        assertThat(seamCm(shirt, "sides and sleeves")).isEqualTo(2 * (39 + 35));
        assertThat(Designs.named("shirt").wear(true, Measurements.of(Map.of())).layer())
                .isEqualTo(Layer.SKIN);
    }

    @Test
    void theGownHasRoomToStrideAndSaysWhereNot() {
        Garment gown = madeUp("gown", Map.of("chestCm", 98.0), Map.of());
        // 98 + 22 + 0.3 round, two gores of 40 cm; at 137 cm 170 are wanted, and 57 above it 98 - 30.6
        assertThat(gown.notes()).anyMatch(n -> n.contains("200.3 cm round: room enough to stride"));
        Garment narrow = madeUp("gown", Map.of("chestCm", 98.0), Map.of("goreWidthCm", 10));
        // 170 - 120.3 over two gores: 25 cm each
        assertThat(narrow.notes()).anyMatch(n -> n.contains("make the gores 25 cm wide"));
        Garment flared = madeUp("gown", Map.of("chestCm", 98.0), Map.of("sideGores", false, "flareCm", 15));
        assertThat(flared.notes()).anyMatch(n -> n.contains("180.3 cm round: room enough"));
    }

    @Test
    void cautionsWhereTheHandDoesNotPassTheCuff() {
        Map<String, Double> narrow = new HashMap<>(WEARER);
        narrow.put("cuffWidthCm", 18.0);
        assertThat(tunic(narrow, Map.of()).cautions())
                .singleElement()
                .asString()
                .contains("18 cm");
        assertThat(tunic(WEARER, Map.of()).cautions()).isEmpty();
        // a band opens
        assertThat(madeUp("shirt", narrow, Map.of()).cautions()).noneMatch(c -> c.contains("hand"));
    }

    @Test
    void narrowClothHalvesPanelsAndGores() {
        Design gown = Designs.named("gown");
        Design.Narrower way = gown.narrower(Options.USUAL).orElseThrow();
        assertThat(way.how()).contains("centreSeams").contains("halvedGores");
        Garment narrow =
                gown.madeUp(Measurements.of(WEARER), way.options().with("goreHeightCm", 40), SewnCloth.usual());
        assertThat(narrow.pieces()).extracting(GarmentPiece::name).contains("side gore half");
        assertThat(narrow.pieces()).allMatch(p -> p.outline().widthCm() < 50);
        assertThat(gown.narrower(way.options())).isEmpty();
    }

    @Test
    void theTabardHangsOpen() {
        Garment tabard = madeUp("tabard", Map.of("widthCm", 50.0, "lengthCm", 90.0), Map.of());
        Outline front = piece(tabard, "front").outline();
        assertThat(front.widthCm()).isEqualTo(50 + 2 * 2);
        assertThat(front.heightCm()).isEqualTo(90 + 2 + 5);
        assertThat(tabard.sewing().hems())
                .filteredOn(h -> h.edge().equals("side edges"))
                .singleElement()
                .satisfies(h -> assertThat(h.edgeLengthCm()).isEqualTo(4 * 90));
        assertThat(seamCm(tabard, "shoulders")).isEqualTo(50 - 15);
        assertThat(tabard.smallPieces()).extracting(GarmentPiece::name).containsExactly("facing", "tie");
        Garment belted = madeUp("tabard", Map.of("waistCm", 80.0), Map.of("ties", false, "belt", true));
        assertThat(piece(belted, "belt half").count()).isEqualTo(2);
        assertThat(piece(belted, "belt half").outline().heightCm()).isEqualTo((80 + 60) / 2 + 4);
        assertThat(piece(belted, "belt half").outline().widthCm()).isEqualTo(2 * 5 + 4);
        assertThat(belted.smallPieces()).extracting(GarmentPiece::name).containsExactly("facing");
        // two halves of 50 cm span 100 cm: trunk 36, legs 36 x 30 / 72
        assertThat(Designs.named("tabard")
                        .wear(false, Measurements.of(Map.of()))
                        .coveredPercent())
                .isCloseTo(36 + 15, within(0.01));
    }

    @Test
    void clothThatShrinksIsCutLargerByAsMuch() {
        SewnCloth shrinks = new SewnCloth(
                200, 0.5, Surface.PLAIN, Optional.empty(), Optional.empty(), Optional.empty(), 10, 5, 140);
        Garment shirt = Designs.named("shirt").madeUp(Measurements.of(WEARER_SHIRT), Options.USUAL, shrinks);
        assertThat(piece(shirt, "body").outline().widthCm()).isCloseTo(60 / 0.95 + 3, TOUCH);
        assertThat(piece(shirt, "body").outline().heightCm()).isCloseTo(2 * (92 / 0.9 + 2), TOUCH);
        assertThat(piece(shirt, "sleeve").outline().heightCm()).isCloseTo(55 / 0.9 + 3, TOUCH);
        assertThat(piece(shirt, "gusset").outline().widthCm()).isCloseTo(12 / 0.95 + 3, TOUCH);
        Garment gown =
                Designs.named("gown").madeUp(Measurements.of(Map.of("finishedChestCm", 120.0)), Options.USUAL, shrinks);
        double hem = gown.sewing().hems().get(0).washedAllowanceCm();
        assertThat(piece(gown, "side gore").outline().heightCm()).isCloseTo(80 / 0.9 + 2 + hem, TOUCH);
    }

    private static GarmentPiece tunicNeck(String design, Map<String, Object> options) {
        return madeUp(design, WEARER, options).smallPieces().get(0);
    }
}
