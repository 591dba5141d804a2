package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Wear;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
                    .forEach(PieceRules::hold);
        });
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
