package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.figure.Refused;
import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Worked figures of the designs of the upper body, by hand. */
class BodiesTest {

    private static final Map<String, Double> WEARER = Map.of(
            "finishedChestCm", 126.0,
            "lengthCm", 95.0,
            "sleeveLengthCm", 53.0,
            "sleeveTopWidthCm", 40.0,
            "cuffWidthCm", 30.0,
            "neckDiameterCm", 15.0);
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

    private static Garment tunic(Map<String, Double> wearer, Map<String, Object> options) {
        return madeUp("tunic", wearer, options);
    }

    private static GarmentPiece tunicNeck(String design, Map<String, Object> options) {
        return madeUp(design, WEARER, options).smallPieces().get(0);
    }

    private static Garment madeUp(String design, Map<String, Double> wearer, Map<String, Object> options) {
        return Designs.named(design).madeUp(Measurements.of(wearer), Options.of(options), SewnCloth.usual());
    }

    private static GarmentPiece piece(Garment garment, String name) {
        return garment.pieces().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double seamCm(Garment garment, String name) {
        return garment.sewing().seams().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow()
                .lengthCm();
    }
}
