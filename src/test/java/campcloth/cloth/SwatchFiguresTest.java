package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.MarkedShrinkage.Course;
import campcloth.cloth.WeighedPieces.Piece;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Each measurement, reckoned by hand where nothing was published. */
class SwatchFiguresTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/published/marked-shrinkage.csv", numLinesToSkip = 1, commentCharacter = '#')
    void onePairOfMarksGivesThePublishedShrinkage(double before, double after, double percent, double tolerance) {
        Figure warp = warp(new MarkPair(before, List.of(after)));
        assertThat(warp.value()).isCloseTo(percent, within(tolerance));
        // one mm before and one after, on the first length
        double misread = 0.1 / before * 100 * (1 + after / before);
        assertThat(warp.high() - warp.value()).isCloseTo(misread, within(0.002));
        assertThat(warp.basis()).isEqualTo(Basis.MEASURED);
        assertThat(warp.source()).isEqualTo("swatch of 2026-11-24, 1 pair of marks: by the river");
    }

    @Test
    void threePairsCarryStudentsT() {
        // 5, 6 and 7 %: mean 6, standard deviation 1, standard error 0.5774, t(2) = 4.303
        Figure warp = warp(pair(47.5), pair(47), pair(46.5));
        assertThat(warp.value()).isEqualTo(6);
        assertThat(warp.high() - 6).isCloseTo(4.303 / Math.sqrt(3), within(0.002));
    }

    @Test
    void pairsThatAgreeAreNoSurerThanTheRulerReads() {
        Figure one = warp(pair(47.5));
        Figure three = warp(pair(47.5), pair(47.5), pair(47.5));
        assertThat(three.high()).isEqualTo(one.high());
        assertThat(three.low()).isEqualTo(one.low());
    }

    @Test
    void theLastWashMakesTheFigureAndItsCourseIsTold() {
        MarkedShrinkage moving = marked(new MarkPair(50, List.of(48.0, 47.0)), new MarkPair(50, List.of(48.1, 47.1)));
        assertThat(moving.firstPercent()).isCloseTo(3.9, within(1e-9));
        assertThat(moving.totalPercent()).isCloseTo(5.9, within(1e-9));
        assertThat(moving.course()).isEqualTo(Course.STILL_MOVING);
        assertThat(marked(new MarkPair(50, List.of(48.0, 47.9))).course()).isEqualTo(Course.AT_REST);
        assertThat(marked(pair(48)).course()).isEqualTo(Course.ONE_WASH_ONLY);
        // one wash took 2 %, the other nothing: the mean step of 1 % is no more than its standard error
        assertThat(marked(new MarkPair(50, List.of(48.0, 47.0)), new MarkPair(50, List.of(48.0, 48.0)))
                        .course())
                .isEqualTo(Course.AT_REST);
    }

    @Test
    void massPerAreaIsMassOverArea() {
        // 1.9 g on 100 cm2: 190 g/m2; 0.01 / 1.9 of the scale and 0.1 / 10 of each side
        Figure gsm = figure(SwatchSamples.weighed(0.01, new Piece(10, 10, 1.9)), Property.WEIGHT_GSM);
        assertThat(gsm.value()).isEqualTo(190);
        assertThat(gsm.high() - 190).isCloseTo(190 * (0.01 / 1.9 + 0.02), within(0.002));
        assertThat(Piece.ofArea(100, 1.9).weightGsm()).isCloseTo(190, within(1e-9));
    }

    @Test
    void aKitchenScaleIsTooCoarseForASmallSquare() {
        Swatch swatch = SwatchSamples.weighed(1, new Piece(10, 10, 2));
        Figure gsm = figure(swatch, Property.WEIGHT_GSM);
        assertThat(gsm.low()).isCloseTo(200 * (1 - 0.52), within(0.01));
        assertThat(SwatchFigures.of(swatch).notes())
                .anySatisfy(note -> assertThat(note).contains("off by 50 %").contains("1000 cm2"));
        assertThatThrownBy(() -> SwatchSamples.weighed(1, new Piece(10, 10, 0.8)))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("pieces[0].massG");
    }

    @Test
    void aStackIsSharedByItsLayers() {
        Swatch swatch = SwatchSamples.stack(new LayerStack(4.2, 10, 200, 20, 0.1));
        Figure mm = figure(swatch, Property.THICKNESS_MM);
        assertThat(mm.value()).isEqualTo(0.42);
        assertThat(mm.low()).isEqualTo(0.41);
        // 0.2 kg x 9.80665 m/s2 / 0.002 m2
        assertThat(swatch.stack().orElseThrow().pressureKPa()).isCloseTo(0.980665, within(1e-9));
    }

    @Test
    void underTheWrongWeightThereIsAWarningThenNoFigure() {
        SwatchFigures heavy = SwatchFigures.of(SwatchSamples.stack(new LayerStack(4.2, 10, 300, 20, 0.1)));
        assertThat(heavy.figures()).containsKey(Property.THICKNESS_MM);
        assertThat(heavy.notes()).anyMatch(note -> note.contains("ISO 5084"));
        SwatchFigures crushed = SwatchFigures.of(SwatchSamples.stack(new LayerStack(4.2, 10, 3000, 20, 0.1)));
        assertThat(crushed.figures()).isEmpty();
        assertThat(crushed.notes()).anyMatch(note -> note.contains("is no figure"));
    }

    @Test
    void halfTheTimeIsTwiceTheAirWithAWideInterval() {
        Figure air = figure(SwatchSamples.wind(wind(Basis.DECLARED, 400)), Property.AIR_PERMEABILITY_MM_S);
        assertThat(air.value()).isEqualTo(600);
        // the reference's own 200..400, the times 0.5 s each way, the factor of 2
        assertThat(air.low()).isCloseTo(200 * 19.5 / 10.5 / 2, within(0.002));
        assertThat(air.high()).isCloseTo(400 * 20.5 / 9.5 * 2, within(0.002));
    }

    @Test
    void besideAClothThatIsGuessedOrUnderTheWrongPressureItIsANote() {
        assertThat(SwatchFigures.of(SwatchSamples.wind(wind(Basis.ESTIMATED, 400)))
                        .figures())
                .isEmpty();
        SwatchFigures light = SwatchFigures.of(SwatchSamples.wind(wind(Basis.DECLARED, 10_000)));
        assertThat(light.figures()).isEmpty();
        assertThat(light.windRatio()).contains(2.0);
        assertThat(light.notes()).anyMatch(note -> note.contains("makes no figure"));
    }

    @Test
    void dropsAreToldInWordsByTheirMedian() {
        assertThat(absorbency(3.0, 4.5, 60.0)).contains(Absorbency.ABSORBS);
        assertThat(absorbency(5.0, 5.1)).contains(Absorbency.SLOW);
        assertThat(absorbency(60.0, 60.0, 2.0)).contains(Absorbency.REPELS);
        assertThat(SwatchFigures.of(SwatchSamples.drip(3.0)).figures()).isEmpty();
    }

    @Test
    void whatStandardsAskForIsWarnedOf() {
        WashedMarks small = new WashedMarks(
                List.of(new MarkPair(20, List.of(19.0))),
                List.of(),
                Optional.of(30.0),
                Optional.of(60.0),
                1,
                SwatchSamples.UNTOLD);
        Swatch swatch = new Swatch(
                SwatchSamples.DAY,
                "",
                false,
                Optional.empty(),
                Optional.of(small),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        assertThat(SwatchFigures.of(swatch).notes())
                .anyMatch(note -> note.contains("at least 35 cm"))
                .anyMatch(note -> note.contains("50 x 50 cm"))
                .anyMatch(note -> note.startsWith("One pair"))
                .anyMatch(note -> note.contains("65 % humidity"))
                .anyMatch(note -> note.contains("was not told"));
    }

    @Test
    void absurdMarksAreRefusedByName() {
        refused(() -> pair(55), "afterCm[0]: is 55 cm, 10 % longer");
        refused(() -> pair(20), "afterCm[0]");
        refused(() -> pair(Double.NaN), "afterCm[0]: is not a finite number");
        refused(() -> new MarkPair(0, List.of(1.0)), "beforeCm");
        refused(() -> new MarkPair(50, List.of()), "afterCm");
        refused(() -> SwatchSamples.marks(Collections.nCopies(10_000, pair(48))), "warp: has 10000 pairs");
        refused(() -> SwatchSamples.marks(List.of(pair(48), new MarkPair(50, List.of(48.0, 47.0)))), "warp[1].afterCm");
        refused(() -> new Piece(10, 10, 0), "massG");
        refused(() -> new Piece(10, 10, 900), "massG: makes 90000 g/m2");
        refused(() -> new LayerStack(4, 0, 200, 20, 0.1), "layers");
    }

    private static void refused(Runnable making, String words) {
        assertThatThrownBy(making::run).isInstanceOf(Refused.class).hasMessageContaining(words);
    }

    private static MarkPair pair(double after) {
        return new MarkPair(50, List.of(after));
    }

    private static WindTest wind(Basis basis, double areaCm2) {
        Figure reference = new Figure(300, 200, 400, basis, "invented");
        return new WindTest("plain linen", reference, List.of(20.0), List.of(10.0), 500, areaCm2);
    }

    private static Optional<Absorbency> absorbency(Double... seconds) {
        return SwatchFigures.of(SwatchSamples.drip(seconds)).absorbency();
    }

    private static Figure warp(MarkPair... pairs) {
        return figure(SwatchSamples.warp(SwatchSamples.DAY, pairs), Property.SHRINK_WARP_PERCENT);
    }

    private static MarkedShrinkage marked(MarkPair... pairs) {
        return SwatchFigures.of(SwatchSamples.warp(SwatchSamples.DAY, pairs))
                .warp()
                .orElseThrow();
    }

    private static Figure figure(Swatch swatch, Property property) {
        return java.util.Objects.requireNonNull(
                SwatchFigures.of(swatch).figures().get(property));
    }
}
