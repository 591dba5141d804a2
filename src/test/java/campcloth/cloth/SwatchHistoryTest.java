package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which figure stands: the newest swatch's, then what was known before. */
class SwatchHistoryTest {

    private static final Figure DECLARED = Figure.exact(3, Basis.DECLARED, "label");
    private static final Figure WIDTH = Figure.exact(140, Basis.DECLARED, "label");

    private final SwatchHistory history = SwatchHistory.of(
            List.of(kept(1, 24, 47.5), kept(2, 25, 47.0), kept(3, 23, 46.0)),
            Map.of(Property.SHRINK_WARP_PERCENT, DECLARED, Property.WIDTH_CM, WIDTH));

    @Test
    void theSwatchOfTheNewestDayStands() {
        assertThat(history.newestFirst()).extracting(KeptSwatch::number).containsExactly(2L, 1L, 3L);
        assertThat(stands(history)).isEqualTo(6);
        assertThat(history.figures()).containsEntry(Property.WIDTH_CM, WIDTH);
    }

    @Test
    void withoutItTheOneBeforeStandsAndAtLastWhatWasKnown() {
        SwatchHistory less = SwatchHistory.of(history.newestFirst().subList(1, 3), history.before());
        assertThat(stands(less)).isEqualTo(5);
        assertThat(stands(SwatchHistory.of(List.of(), history.before()))).isEqualTo(3);
    }

    @Test
    void aWeakerFigureToldLaterWaitsBehindTheSwatch() {
        Figure four = Figure.exact(4, Basis.DECLARED, "shop");
        SwatchHistory told = history.told(Map.of(Property.SHRINK_WARP_PERCENT, four, Property.WIDTH_CM, WIDTH));
        assertThat(stands(told)).isEqualTo(6);
        assertThat(told.before()).containsEntry(Property.SHRINK_WARP_PERCENT, four);
    }

    @Test
    void whatIsSentBackUnchangedChangesNothing() {
        assertThat(history.told(history.figures())).isEqualTo(history);
    }

    @Test
    void anotherMeasuredFigureBesideASwatchIsRefused() {
        Figure other = Figure.exact(9, Basis.MEASURED, "own ruler");
        assertThatThrownBy(() -> history.told(Map.of(Property.SHRINK_WARP_PERCENT, other)))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("figures.shrinkWarpPercent")
                .hasMessageContaining("remove that swatch");
    }

    @Test
    void aSlipOfUnitsIsDoubtedAndStandsAllTheSame() {
        Figure known = new Figure(190, 180, 200, Basis.DECLARED, "label");
        KeptSwatch slip = weighed(1, 0.19);
        SwatchHistory history = SwatchHistory.of(List.of(slip), Map.of(Property.WEIGHT_GSM, known));
        assertThat(history.doubts(slip))
                .singleElement()
                .asString()
                .contains("19 g/m2 measured", "190 g/m2 before (label)", "cm2");
        assertThat(history.figures().get(Property.WEIGHT_GSM))
                .extracting(Figure::value)
                .isEqualTo(19.0);
        KeptSwatch plain = weighed(2, 1.5);
        assertThat(SwatchHistory.of(List.of(plain), Map.of(Property.WEIGHT_GSM, known))
                        .doubts(plain))
                .isEmpty();
    }

    @Test
    void aSwatchIsHeldAgainstTheOneBeforeIt() {
        KeptSwatch first = weighed(1, 1.9);
        KeptSwatch slip = weighed(2, 19);
        SwatchHistory history = SwatchHistory.of(List.of(first, slip), Map.of());
        assertThat(history.doubts(first)).isEmpty();
        assertThat(history.doubts(slip)).hasSize(1);
        KeptSwatch shrunk = kept(3, 26, 40);
        assertThat(SwatchHistory.of(List.of(shrunk), Map.of(Property.SHRINK_WARP_PERCENT, DECLARED))
                        .doubts(shrunk))
                .singleElement()
                .asString()
                .contains("20 % measured, 3 % before");
    }

    private static KeptSwatch weighed(long number, double massG) {
        return new KeptSwatch(
                "id-" + number,
                "cloth",
                number,
                Instant.EPOCH,
                SwatchSamples.weighed(0.01, new WeighedPieces.Piece(10, 10, massG)));
    }

    private static double stands(SwatchHistory history) {
        return java.util.Objects.requireNonNull(history.figures().get(Property.SHRINK_WARP_PERCENT))
                .value();
    }

    private static KeptSwatch kept(long number, int day, double afterCm) {
        return new KeptSwatch(
                "id-" + number,
                "cloth",
                number,
                Instant.EPOCH,
                SwatchSamples.warp(LocalDate.of(2026, 11, day), new MarkPair(50, List.of(afterCm))));
    }
}
