package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Surface;
import campcloth.figure.Refused;
import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SkirtsTest {

    private static final Design GORED = Designs.named("gored-skirt");
    private static final Design WRAPPED = Designs.named("wrapped-skirt");
    private static final Design APRON = Designs.named("apron");
    private static final Map<String, Double> WEARER =
            Map.of("waistCm", 80.0, "hipCm", 102.0, "hipDepthCm", 20.0, "lengthCm", 90.0);
    /** Cloth 0.5 mm thick lies so much outside the body all round. */
    private static final double CLOTH_CM = 2 * Math.PI * 0.05;

    @Test
    void goresMakeUpWaistHipAndHem() {
        SplittableRandom random = new SplittableRandom(51);
        for (int round = 0; round < 200; round++) {
            double warp = random.nextDouble(0, 12);
            double weft = random.nextDouble(0, 8);
            int gores = random.nextInt(4, 13);
            double sweep = random.nextDouble(150, 400);
            double waist = random.nextDouble(60, 110);
            double finished = random.nextDouble(60, 110);
            Map<String, Double> wearer =
                    Map.of("waistCm", waist, "hipCm", waist + 22, "hipDepthCm", 20.0, "lengthCm", finished);
            Garment skirt = GORED.madeUp(
                    Measurements.of(wearer),
                    Options.USUAL.with("gores", gores).with("sweepCm", sweep),
                    cloth(warp, weft, 140));
            GarmentPiece gore = skirt.pieces().get(0);
            String which = "round " + round + " of seed 51: " + wearer + ", " + gores + " gores, sweep " + sweep;
            assertThat(gore.count()).as(which).isEqualTo(gores);
            double hem = skirt.sewing().hems().get(0).washedAllowanceCm();
            double length = finished / (1 - warp / 100);
            Outline outline = gore.outline();
            assertThat(outline.heightCm()).as(which).isCloseTo(hem + length + 2, within(1e-6));
            // the seam allowance is 2 cm square to the side, so a little more across
            double atHem = gores * (widthAt(outline, hem + 0.001) - 2 * 2) * (1 - weft / 100);
            assertThat(atHem).as(which).isBetween(sweep - 0.01, sweep + gores * 1.0);
            double atHip =
                    gores * (widthAt(outline, hem + (length * (finished - 20) / finished)) - 2 * 2) * (1 - weft / 100);
            assertThat(atHip).as(which).isGreaterThan(waist + 22 + 8 - 0.01);
            double atTop = gores
                    * (outline.points().stream()
                                    .filter(p -> p.yCm() > outline.heightCm() - 1e-6)
                                    .mapToDouble(Point::xCm)
                                    .max()
                                    .orElseThrow()
                            - outline.points().stream()
                                    .filter(p -> p.yCm() > outline.heightCm() - 1e-6)
                                    .mapToDouble(Point::xCm)
                                    .min()
                                    .orElseThrow()
                            - 4)
                    * (1 - weft / 100);
            assertThat(atTop).as(which).isBetween(waist + 2, waist + 2 + CLOTH_CM + gores * 1.0);
        }
    }

    @Test
    void seamAllowanceIsSquareToTheSlantedSide() {
        // half gore: 30 cm at the hem, 15 at the top over 90 cm; the side runs 15 in 90
        Garment skirt = GORED.madeUp(
                Measurements.of(Map.of("waistCm", 88 - CLOTH_CM, "hipCm", 90.0, "hipDepthCm", 20.0, "lengthCm", 90.0)),
                Options.USUAL.with("gores", 4).with("sweepCm", 240),
                cloth(0, 0, 140));
        Outline outline = skirt.pieces().get(0).outline();
        double across = 2 * Math.sqrt(1 + Math.pow((30 - 11.25) / 90, 2));
        assertThat(outline.widthCm()).isCloseTo(60 + 2 * across, within(1e-6));
    }

    @Test
    void waistThatDoesNotPassTheHipIsToldWithThePlacketThatDoes() {
        Garment passes = gored(Options.USUAL);
        assertThat(passes.fitting().opening().orElseThrow().passes()).isTrue();
        assertThat(passes.cautions()).isEmpty();
        Garment narrow = gored(Options.USUAL.with("placketCm", 5));
        Opening waist = narrow.fitting().opening().orElseThrow();
        assertThat(waist.passes()).isFalse();
        assertThat(narrow.cautions()).anyMatch(c -> c.contains("placket 11 cm long"));
        assertThat(gored(Options.USUAL.with("placketCm", 11))
                        .fitting()
                        .opening()
                        .orElseThrow()
                        .passes())
                .isTrue();
        Garment cord = gored(Options.USUAL.with("drawstring", true));
        assertThat(cord.fitting().opening().orElseThrow().passes()).isTrue();
        assertThat(cord.smallPieces()).isEmpty();
        assertThat(cord.sewing().notions()).anyMatch(n -> n.startsWith("1 cord"));
    }

    @Test
    void saysWhetherTheHemGivesRoomToStride() {
        assertThat(gored(Options.USUAL).notes()).anyMatch(n -> n.contains("room enough to stride"));
        assertThat(gored(Options.USUAL.with("sweepCm", 120)).notes())
                .anyMatch(n -> n.contains("narrow for a full stride") && n.contains("sweepCm"));
        assertThatThrownBy(() -> gored(Options.USUAL.with("sweepCm", 90)))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("options.sweepCm");
    }

    @Test
    void wrappedSkirtTakesAsFewPanelsAsTheClothGives() {
        // round the hip 102 + 8, 30 of overlap: 140.3 cm
        double top = 110 + CLOTH_CM + 30;
        for (double usable : new double[] {150, 138, 90, 58, 40}) {
            Garment skirt = WRAPPED.madeUp(Measurements.of(WEARER), Options.USUAL, cloth(0, 0, usable));
            GarmentPiece panel = skirt.pieces().get(0);
            assertThat(panel.count() * (panel.outline().widthCm() - 4)).isCloseTo(top, within(1e-6));
            assertThat(panel.outline().widthCm()).isLessThanOrEqualTo(usable);
            assertThat(top / (panel.count() - 1) + 4).isGreaterThan(usable);
            assertThat(seamCm(skirt, "panels to panels")).isEqualTo((panel.count() - 1) * 90);
        }
    }

    @Test
    void wrappedSkirtTellsWhatTheOverlapOpens() {
        Garment straight = WRAPPED.madeUp(Measurements.of(WEARER), Options.USUAL, cloth(0, 0, 140));
        // closed 110 cm; below the shoulder 40 + 90 = 130 cm, where 98 + 33 x 1.8 = 157 cm are wanted
        assertThat(straight.notes()).anyMatch(n -> n.contains("a full stride at this length takes about 157 cm"));
        assertThat(straight.notes()).anyMatch(n -> n.contains("more than the overlap gives"));
        Garment wider = WRAPPED.madeUp(Measurements.of(WEARER), Options.USUAL.with("overlapCm", 50), cloth(0, 0, 140));
        assertThat(wider.notes()).anyMatch(n -> n.contains("the overlap opens by 47 cm"));
        Garment flared = WRAPPED.madeUp(Measurements.of(WEARER), Options.USUAL.with("flareCm", 15), cloth(0, 0, 140));
        assertThat(flared.notes()).anyMatch(n -> n.contains("room enough to stride"));
    }

    @Test
    void apronWithABibHasStrapsAndOneWithoutHasNone() {
        Garment half = APRON.madeUp(Measurements.of(Map.of()), Options.USUAL, cloth(0, 0, 140));
        assertThat(names(half.pieces())).containsExactly("apron");
        assertThat(names(half.smallPieces())).containsExactly("band", "tie");
        Garment bib = APRON.madeUp(Measurements.of(Map.of()), Options.USUAL.with("bib", true), cloth(0, 0, 140));
        assertThat(names(bib.pieces())).containsExactly("apron", "bib");
        assertThat(names(bib.smallPieces())).containsExactly("band", "tie", "strap");
        assertThat(bib.sewing().hems()).extracting(Hem::edge).containsExactly("hem", "side edges", "top edge");
        assertThat(bib.lengthRule().extraCm()).isEqualTo(28);
        // 85 cm waist: 25 round the back, 30 to the middle of the front, 45 for the bow
        assertThat(half.smallPieces().get(1).outline().heightCm()).isEqualTo(25 + 30 + 45 + 2);
    }

    @Test
    void gatheredApronOnNarrowClothIsPieced() {
        Garment apron = APRON.madeUp(Measurements.of(Map.of()), Options.USUAL.with("gatheredCm", 60), cloth(0, 0, 58));
        assertThat(apron.pieces().get(0).count()).isEqualTo(3);
        assertThat(3 * (apron.pieces().get(0).outline().widthCm() - 4)).isCloseTo(120, within(1e-9));
        assertThat(seamCm(apron, "two gathering rows")).isEqualTo(240);
    }

    @Test
    void aSkirtThatEndsAtTheHipIsRefused() {
        assertThatThrownBy(() -> GORED.madeUp(
                        Measurements.of(Map.of("lengthCm", 26.0, "hipDepthCm", 25.0)),
                        Options.USUAL,
                        SewnCloth.usual()))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("wearer.lengthCm");
    }

    private static Garment gored(Options options) {
        return GORED.madeUp(Measurements.of(WEARER), options, cloth(0, 0, 140));
    }

    private static List<String> names(List<GarmentPiece> pieces) {
        return pieces.stream().map(GarmentPiece::name).toList();
    }

    private static double seamCm(Garment garment, String name) {
        return Stream.of(garment.sewing().seams())
                .flatMap(List::stream)
                .filter(s -> s.name().equals(name))
                .mapToDouble(Seam::lengthCm)
                .sum();
    }

    /** Width of an outline that is symmetrical, at a height. */
    private static double widthAt(Outline outline, double yCm) {
        List<Point> points = outline.points();
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            if (Math.min(a.yCm(), b.yCm()) <= yCm && yCm <= Math.max(a.yCm(), b.yCm()) && a.yCm() != b.yCm()) {
                most = Math.max(most, a.xCm() + (yCm - a.yCm()) / (b.yCm() - a.yCm()) * (b.xCm() - a.xCm()));
            }
        }
        return 2 * (most - outline.leftCm() - outline.widthCm() / 2);
    }

    private static SewnCloth cloth(double warpPercent, double weftPercent, double usableCm) {
        return new SewnCloth(
                200,
                0.5,
                Surface.PLAIN,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                warpPercent,
                weftPercent,
                usableCm);
    }
}
