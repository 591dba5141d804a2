package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Finish;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.figure.Refused;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a maker would stumble over in a garment: edges, openings and rooms that do not suit it. */
class MakersEyeTest {

    private static final SewnCloth FULLED = new SewnCloth(
            500,
            2,
            Surface.RAISED,
            Optional.of(Weave.TWILL),
            Optional.of(Finish.FULLED),
            Optional.of("wool"),
            0,
            0,
            148);

    @Test
    void hemOfFullCircleIsNarrowBecauseItFlares() {
        // 1 + 1 cm is all that is left; 1 cm deep brings pi cm of fullness a half, crisp cloth eases 0.5 % of 382 cm
        Garment crisp = made("cloak", Map.of(), Map.of("quarters", 4), crispCloth());
        assertThat(crisp.sewing().hems().get(0).because())
                .contains("fullness a panel")
                .doesNotContain("can be eased in");
    }

    @Test
    void facingIsAsWideAsItIsCut() {
        Garment cloak = made("cloak", Map.of(), Map.of("hemFacing", true));
        assertThat(cloak.sewing().hems().get(0).because()).contains("5 cm wide").doesNotContain("4 cm");
        Garment square = made("gown", Map.of("chestCm", 98.0), Map.of("squareNeck", true));
        assertThat(hem(square, "neck").because()).contains("corner").doesNotContain("round edge");
    }

    @Test
    void endOfTubeIsNotWidenedByCuttingItAway() {
        for (String design : new String[] {"trousers", "hood", "gored-skirt"}) {
            Opening opening =
                    made(design, Map.of(), Map.of()).fitting().opening().orElseThrow();
            assertThat(opening.halfCmGivesCm()).as(design).isEmpty();
            assertThat(opening.words()).as(design).endsWith("of ease.");
        }
        Opening round = made("tabard", Map.of(), Map.of()).fitting().opening().orElseThrow();
        assertThat(round.halfCmGivesCm().orElseThrow()).isCloseTo(Math.PI, within(1e-9));
        Opening square = made("tabard", Map.of(), Map.of("squareNeck", true))
                .fitting()
                .opening()
                .orElseThrow();
        assertThat(square.halfCmGivesCm()).contains(4.0);
    }

    @Test
    void neckOfHoodIsNotTakenInBelowTheHead() {
        Garment hood = made("hood", Map.of("headCm", 58.0, "neckCm", 38.0), Map.of());
        assertThat(hood.fitting().rooms().get(0).takeInCm()).hasValue(0);
    }

    @Test
    void seatIsNotTakenInBelowTheThigh() {
        // seat 102 + 20, leg 61 + 14 = 75 cm; over a thigh of 66 cm and 6 to move in 3 cm are left in each leg
        Garment trousers = made("trousers", Map.of("hipCm", 102.0, "thighCm", 66.0), Map.of());
        assertThat(trousers.fitting().rooms().get(0).takeInCm().orElseThrow()).isCloseTo(6, within(1e-9));
        assertThat(trousers.sewing().hems()).extracting(Hem::edge).containsExactly("leg end");
    }

    @Test
    void feltedBandsAreCutToTheirWidth() {
        Garment wraps = made("leg-wraps", Map.of(), Map.of(), FULLED);
        assertThat(wraps.sewing().hems()).isEmpty();
        assertThat(wraps.pieces().get(0).outline().widthCm()).isCloseTo(10, within(1e-9));
    }

    @Test
    void bodyMeasuresAreNotCutDown() {
        assertThat(made("leg-wraps", Map.of(), Map.of()).savings())
                .extracting(Saving::measurement)
                .containsExactly("wrapHeightCm");
    }

    @Test
    void bibIsNoWiderThanItsBand() {
        assertThatThrownBy(() -> made("apron", Map.of(), Map.of("bib", true, "bibWidthCm", 50, "widthCm", 40)))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("options.bibWidthCm");
    }

    @Test
    void apronTellsHowWideOnePanelIs() {
        // 60 cm usable less 2 x 2 cm at the sides
        SewnCloth narrow =
                new SewnCloth(200, 0.5, Surface.PLAIN, Optional.empty(), Optional.empty(), Optional.empty(), 0, 0, 60);
        assertThat(made("apron", Map.of(), Map.of(), narrow).notes())
                .anyMatch(note -> note.contains("One at most 56 cm wide is cut in 1 panel (option widthCm)"));
        assertThat(made("apron", Map.of(), Map.of("widthCm", 56), narrow)
                        .pieces()
                        .get(0)
                        .count())
                .isEqualTo(1);
    }

    @Test
    void cloakThatIsTooLongDragsOnTheGround() {
        assertThat(made("cloak", Map.of("lengthCm", 150.0, "napeToGroundCm", 145.0), Map.of())
                        .notes())
                .anyMatch(note -> note.contains("drags 5 cm on the ground"));
    }

    private static SewnCloth crispCloth() {
        return new SewnCloth(
                150, 0.4, Surface.PLAIN, Optional.of(Weave.PLAIN), Optional.empty(), Optional.of("flax"), 0, 0, 140);
    }

    private static Hem hem(Garment garment, String edge) {
        return garment.sewing().hems().stream()
                .filter(hem -> hem.edge().equals(edge))
                .findFirst()
                .orElseThrow();
    }

    private static Garment made(String design, Map<String, Double> wearer, Map<String, ?> options) {
        return made(design, wearer, options, SewnCloth.usual());
    }

    private static Garment made(String design, Map<String, Double> wearer, Map<String, ?> options, SewnCloth cloth) {
        return Designs.named(design).madeUp(Measurements.of(wearer), Options.of(options), cloth);
    }
}
