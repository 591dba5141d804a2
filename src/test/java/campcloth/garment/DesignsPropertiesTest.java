package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Wear;
import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import campcloth.layout.Outline;
import campcloth.layout.Piece;
import campcloth.layout.Point;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What holds of every design, whoever it is made up for. */
class DesignsPropertiesTest {

    private static final double TOUCH_CM = 1e-6;

    @Test
    void keysAreTheirOwnAndEverythingIsTold() {
        assertThat(Designs.all()).extracting(Design::key).doesNotHaveDuplicates();
        for (Design design : Designs.all()) {
            assertThat(design.measurements())
                    .as(design.key())
                    .isNotEmpty()
                    .allMatch(m -> !m.howTaken().isBlank() && m.range().least() > 0)
                    .allMatch(m -> m.usualCm().isEmpty()
                            || m.range().contains(m.usualCm().getAsDouble()));
            assertThat(Stream.concat(
                            design.measurements().stream().map(Measurement::key),
                            design.options().stream().map(Option::key)))
                    .as(design.key())
                    .doesNotHaveDuplicates();
            assertThat(design.options())
                    .as(design.key())
                    .allMatch(o -> !o.words().isBlank())
                    .allMatch(o ->
                            !(o.value() instanceof Option.Cm cm) || cm.range().contains(cm.usualCm()));
        }
    }

    @Test
    void isWornWithoutAnyMeasurement() {
        for (Design design : Designs.all()) {
            for (boolean skin : new boolean[] {true, false}) {
                Wear wear = design.wear(skin, Measurements.of(Map.of()));
                assertThat(wear.coveredPercent()).as(design.key()).isBetween(1.0, 100.0);
                assertThat(wear.clothAreaM2()).as(design.key()).isPositive();
            }
            assertThat(design.assumptions(Measurements.of(Map.of())))
                    .as(design.key())
                    .isNotEmpty();
        }
    }

    @Test
    void piecesLieAtTheOriginAndTheirFlagsAreTrue() {
        DesignDraw.alwaysMadeUp(1_000, (made, garment) -> {
            assertThat(garment.design()).isEqualTo(made.design().key());
            assertThat(garment.pieces()).isNotEmpty();
            assertThat(garment.pieces()).extracting(GarmentPiece::name).doesNotHaveDuplicates();
            Stream.concat(garment.pieces().stream(), garment.smallPieces().stream())
                    .forEach(DesignsPropertiesTest::checkPiece);
        });
    }

    private static void checkPiece(GarmentPiece piece) {
        Outline outline = piece.outline();
        assertThat(outline.areaCm2()).as(piece.name()).isPositive();
        assertThat(outline.leftCm()).as(piece.name()).isCloseTo(0, within(TOUCH_CM));
        assertThat(outline.lowCm()).as(piece.name()).isCloseTo(0, within(TOUCH_CM));
        assertThat(piece.count()).as(piece.name()).isPositive();
        Piece matched = new Piece(piece.name(), outline, 1, true, false, false, Optional.of(piece.match()));
        assertThat(matched.match()).contains(piece.match());
        if (piece.foldable()) {
            assertThat(isSymmetrical(outline))
                    .as(piece.name() + " is cut on a fold")
                    .isTrue();
        }
        if (piece.pair()) {
            assertThat(isSymmetrical(outline)).as(piece.name() + " is mirrored").isFalse();
            assertThat(piece.count() % 2).as(piece.name()).isZero();
        }
    }

    /** About its lengthwise axis. */
    private static boolean isSymmetrical(Outline outline) {
        List<Point> mirrored = outline.mirrored().points();
        return outline.points().stream()
                .allMatch(p -> mirrored.stream()
                        .anyMatch(
                                m -> Math.abs(m.xCm() - p.xCm()) < TOUCH_CM && Math.abs(m.yCm() - p.yCm()) < TOUCH_CM));
    }

    @Test
    void everySeamAndHemIsSewn() {
        DesignDraw.alwaysMadeUp(2_000, (made, garment) -> {
            Sewing sewing = garment.sewing();
            assertThat(sewing.seamAllowanceCm()).isNotNegative();
            assertThat(sewing.seams()).allMatch(seam -> seam.lengthCm() > 0 && Double.isFinite(seam.lengthCm()));
            assertThat(sewing.hems())
                    .allMatch(hem -> hem.edgeLengthCm() > 0 && Double.isFinite(hem.edgeLengthCm()))
                    .allMatch(hem -> hem.allowanceCm() >= 0 && hem.spareCm() > -TOUCH_CM);
            assertThat(sewing.steps())
                    .isNotEmpty()
                    .noneMatch(step -> step.what().isBlank());
            assertThat(sewing.notions()).noneMatch(String::isBlank);
            boolean sewn = !sewing.seams().isEmpty() || !sewing.hems().isEmpty();
            double threadM = SewingThread.metres(sewing.seams(), sewing.hems(), made.cloth());
            assertThat(threadM).isFinite().isNotNegative();
            assertThat(threadM > 0).isEqualTo(sewn);
        });
    }

    @Test
    void whatDoesNotPassIsCautionedOf() {
        DesignDraw.alwaysMadeUp(3_000, (made, garment) -> {
            garment.fitting()
                    .opening()
                    .filter(opening -> !opening.passes())
                    .ifPresent(opening -> assertThat(garment.cautions()).isNotEmpty());
            assertThat(garment.fitting().rooms())
                    .allMatch(room -> room.letOutCm() >= 0 && room.takeInCm().orElse(0) >= 0);
        });
    }

    @Test
    void whatCanBeCutDownIsAMeasurementOfTheDesign() {
        DesignDraw.alwaysMadeUp(4_000, (made, garment) -> {
            List<String> keys =
                    made.design().measurements().stream().map(Measurement::key).toList();
            assertThat(garment.savings())
                    .allMatch(saving -> keys.contains(saving.measurement()) && saving.sizeCm() > 0);
            LengthRule rule = garment.lengthRule();
            assertThat(rule.panels()).isPositive();
            assertThat(rule.panelWidthCm()).isPositive();
            assertThat(rule.lengthCm()).isPositive();
            assertThat(rule.extraCm()).isNotNegative();
        });
    }

    @Test
    void aLargerWearerTakesNoLessCloth() {
        DesignDraw.alwaysMadeUp(5_000, (made, garment) -> {
            Map<String, Double> larger = new HashMap<>();
            for (Measurement m : made.design().measurements()) {
                Double cm = made.wearer().get(m.key());
                if (cm != null && cm * 1.1 <= m.range().most()) {
                    larger.put(m.key(), cm * 1.1);
                } else if (cm != null) {
                    return;
                }
            }
            new DesignDraw.Made(made.design(), larger, made.options(), made.cloth())
                    .unlessRefused()
                    .ifPresent(more ->
                            assertThat(areaCm2(more)).as("for " + larger).isGreaterThanOrEqualTo(areaCm2(garment)));
        });
    }

    private static double areaCm2(Garment garment) {
        return garment.pieces().stream()
                .mapToDouble(p -> p.count() * p.outline().areaCm2())
                .sum();
    }

    @Test
    void clothThatWillShrinkIsCutNoSmaller() {
        DesignDraw.alwaysMadeUp(6_000, (made, garment) -> {
            SewnCloth cloth = made.cloth();
            SewnCloth shrinks = new SewnCloth(
                    cloth.weightGsm(),
                    cloth.thicknessMm(),
                    cloth.surface(),
                    cloth.weave(),
                    cloth.finish(),
                    cloth.mainFibre(),
                    cloth.residualWarpPercent() + 5,
                    cloth.residualWeftPercent() + 5,
                    cloth.usableWidthCm());
            new DesignDraw.Made(made.design(), made.wearer(), made.options(), shrinks)
                    .unlessRefused()
                    .ifPresent(more -> assertThat(areaCm2(more)).isGreaterThan(areaCm2(garment)));
        });
    }

    @Test
    void whatIsRefusedIsNamed() {
        DesignDraw.always(7_000, made -> {
            try {
                made.garment();
            } catch (Refused refused) {
                checkRefusal(made.design(), refused);
            }
        });
    }

    @Test
    void theEndsOfEveryRangeAreMadeUpOrRefused() {
        for (Design design : Designs.all()) {
            for (Measurement first : design.measurements()) {
                for (Measurement second : design.measurements()) {
                    for (int ends = 0; ends < 4; ends++) {
                        Map<String, Double> wearer = new HashMap<>();
                        wearer.put(second.key(), end(second, ends < 2));
                        wearer.put(first.key(), end(first, ends % 2 == 0));
                        makesUpOrRefuses(design, wearer, Options.USUAL);
                    }
                }
            }
        }
    }

    @Test
    void theEndsOfEveryOptionAreMadeUpOrRefused() {
        for (Design design : Designs.all()) {
            Map<String, Double> wearer = new HashMap<>();
            design.measurements().stream()
                    .filter(m -> m.usualCm().isEmpty())
                    .findFirst()
                    .ifPresent(m ->
                            wearer.put(m.key(), (m.range().least() + m.range().most()) / 2));
            for (Option option : design.options()) {
                for (Object value : ends(option.value())) {
                    for (Option other : design.options()) {
                        for (Object otherValue : ends(other.value())) {
                            Options options =
                                    Options.USUAL.with(other.key(), otherValue).with(option.key(), value);
                            makesUpOrRefuses(design, wearer, options);
                        }
                    }
                }
            }
        }
    }

    private static double end(Measurement measurement, boolean least) {
        return least ? measurement.range().least() : measurement.range().most();
    }

    private static List<Object> ends(Option.Value value) {
        if (value instanceof Option.Cm cm) {
            return List.of(cm.range().least(), cm.range().most());
        }
        return value instanceof Option.Count count
                ? List.of(count.range().least(), count.range().most())
                : List.of(true, false);
    }

    private static void makesUpOrRefuses(Design design, Map<String, Double> wearer, Options options) {
        try {
            Garment garment = design.madeUp(Measurements.of(wearer), options, SewnCloth.usual());
            garment.pieces().forEach(DesignsPropertiesTest::checkPiece);
            assertThat(garment.sewing().seams()).as(design.key() + wearer).allMatch(seam -> seam.lengthCm() > 0);
        } catch (Refused refused) {
            checkRefusal(design, refused);
        }
        try {
            design.wear(true, Measurements.of(wearer));
        } catch (Refused refused) {
            checkRefusal(design, refused);
        }
    }

    private static void checkRefusal(Design design, Refused refused) {
        List<String> fields = Stream.of(
                        design.measurements().stream().map(m -> "wearer." + m.key()),
                        design.options().stream().map(o -> "options." + o.key()),
                        Stream.of("cloth.widthCm"))
                .flatMap(s -> s)
                .toList();
        for (Refusal refusal : refused.refusals()) {
            assertThat(fields).as(design.key() + ": " + refused.getMessage()).contains(refusal.field());
        }
    }

    @Test
    void whatItDoesNotKnowIsToldOrRefused() {
        for (Design design : Designs.all()) {
            Map<String, Double> wearer = new HashMap<>();
            design.measurements().stream()
                    .filter(m -> m.usualCm().isEmpty())
                    .findFirst()
                    .ifPresent(m ->
                            wearer.put(m.key(), (m.range().least() + m.range().most()) / 2));
            wearer.put("wingspanCm", 170.0);
            assertThat(design.madeUp(Measurements.of(wearer), Options.USUAL, SewnCloth.usual())
                            .notes())
                    .as(design.key())
                    .anyMatch(note -> note.startsWith("wingspanCm is not used"));
            assertThatThrownBy(() ->
                            design.madeUp(Measurements.of(wearer), Options.of(Map.of("wings", 2)), SewnCloth.usual()))
                    .as(design.key())
                    .isInstanceOfSatisfying(
                            Refused.class,
                            refused -> assertThat(refused.refusals().get(0).field())
                                    .isEqualTo("options.wings"));
        }
    }

    @Test
    void aNarrowerCutIsNoWider() {
        DesignDraw.alwaysMadeUp(
                8_000,
                (made, garment) -> made.design()
                        .narrower(Options.of(made.options()))
                        .ifPresent(way -> {
                            Garment narrow =
                                    made.design().madeUp(Measurements.of(made.wearer()), way.options(), made.cloth());
                            assertThat(widestCm(narrow)).isLessThanOrEqualTo(widestCm(garment) + TOUCH_CM);
                        }));
    }

    private static double widestCm(Garment garment) {
        return garment.pieces().stream()
                .mapToDouble(p -> p.outline().widthCm())
                .max()
                .orElseThrow();
    }
}
