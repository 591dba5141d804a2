package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.garment.Measurements;
import campcloth.garment.Options;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** On 140 cm, 6 % along and 4 % across, a tunic 126 cm round and 95 cm long takes 204 cm washed, 217.03 cm unwashed. */
class RemnantAnswerTest {

    private static final CuttingOrder ORDER = CuttingOrder.of(Orders.washed(140, 6, 4), Orders.tunic(126));

    @Test
    void fitsFromTheLengthThatItTakesBeforeTheWash() {
        assertThat(answer(217.1).fits()).isTrue();
        assertThat(answer(217.0).fits()).isFalse();
    }

    @Test
    void saysHowMuchIsMissingAndThatNoLayoutDoes() {
        CuttingPlan.Remnant remnant = answer(200);
        assertThat(remnant.lengthCm()).isCloseTo(188, within(1e-9));
        assertThat(remnant.shortCm()).isCloseTo(16, within(0.05));
        assertThat(remnant.because()).contains("no layout can take less than 204.0 cm");
    }

    @Test
    void namesTheLeastShorteningThatHelps() {
        // 188 cm hold two bodies of 94 cm: 8 cm shorter than 102
        assertThat(answer(200).wouldHelp()).contains("Make the body 8 cm shorter.");
        assertThat(answer(216).wouldHelp()).contains("Make the body 2 cm shorter.");
    }

    @Test
    void triesNarrowerAllowancesBeforeAShorterBody() {
        // seams of 1.5 cm lay both halves on 132 cm; 216 cm are 203 washed, hems of 4 cm make two bodies of 101
        assertThat(answer(216).wouldHelp())
                .containsSubsequence(
                        "Leave 1.5 cm at the seams (option seamAllowanceCm).",
                        "Leave 4 cm at hem and cuffs (options hemAllowanceCm and cuffAllowanceCm).",
                        "Make the body 2 cm shorter.");
        assertThat(fits(Map.of("seamAllowanceCm", 1.5), 216)).isTrue();
        assertThat(fits(Map.of("seamAllowanceCm", 1.8), 216)).isFalse();
        assertThat(fits(Map.of("hemAllowanceCm", 4, "cuffAllowanceCm", 4), 216)).isTrue();
    }

    private static boolean fits(Map<String, ?> options, double lengthCm) {
        CuttingOrder order = CuttingOrder.of(ORDER.cloth(), Orders.tunic(126).with(Options.of(options)));
        return Orders.PLANNER
                .plan(Orders.withRemnant(order, lengthCm))
                .remnant()
                .orElseThrow()
                .fits();
    }

    @Test
    void saysWhatIsLeftToSquareTheEnds() {
        // 217.1 x 0.94 = 204.07; 230 x 0.94 = 216.2
        assertThat(answer(217.1).because()).contains("0.1 cm are left").contains("which is little");
        assertThat(answer(230).because()).contains("12.2 cm are left").doesNotContain("little");
    }

    @Test
    void everyHelpNamedFits() {
        CuttingOrder shorter = CuttingOrder.of(ORDER.cloth(), Orders.tunic(126, 87));
        assertThat(Orders.PLANNER
                        .plan(Orders.withRemnant(shorter, 200))
                        .remnant()
                        .orElseThrow()
                        .fits())
                .isTrue();
    }

    @Test
    void namesTheSeamsThatHelpAndTheyDo() {
        // 110 cm usable: beside a body of 68 cm no sleeve of 44 cm lies; of halves of 36 cm three lie abreast
        ClothToCut cloth = Orders.washed(112, 0, 0);
        CuttingOrder whole = CuttingOrder.of(cloth, Orders.tunic(128));
        CuttingOrder.Line halves = Orders.tunic(128).with(Options.of(Map.of("centreSeams", true)));
        double inHalvesCm = Orders.PLANNER.plan(CuttingOrder.of(cloth, halves)).netLengthCm();
        assertThat(inHalvesCm).isLessThan(Orders.PLANNER.plan(whole).netLengthCm() - 5);
        assertThat(Orders.PLANNER
                        .plan(Orders.withRemnant(whole, inHalvesCm + 1))
                        .remnant()
                        .orElseThrow()
                        .wouldHelp())
                .anyMatch(help -> help.startsWith("Cut front and back in halves"));
    }

    @Test
    void shortPieceHasNoHelp() {
        CuttingPlan.Remnant remnant = answer(40);
        assertThat(remnant.fits()).isFalse();
        assertThat(remnant.wouldHelp()).isEmpty();
    }

    @Test
    void cuffsAreNotNamedWhereThereAreNone() {
        // two panels of 92 + 2 + 5 cm make 198 cm, 2 x 96 with hems of 2 cm
        List<String> help = help("wrapped-skirt", 205);
        assertThat(help)
                .contains("Leave 2 cm at the hem (option hemAllowanceCm).")
                .noneMatch(h -> h.contains("cuff"));
        assertThat(help).contains("Make the skirt 3 cm shorter.");
    }

    @Test
    void bandsAreCutInPiecesOnShortCloth() {
        // 367 + 3 cm washed; 300 cm are 282 washed
        List<String> help = help("leg-wraps", 300);
        assertThat(help).contains("Cut the bands in pieces of at most 282 cm (option longestPieceCm).");
        assertThat(help).noneMatch(h -> h.contains("calf"));
        CuttingOrder pieced =
                CuttingOrder.of(ORDER.cloth(), line("leg-wraps").with(Options.of(Map.of("longestPieceCm", 282))));
        assertThat(Orders.PLANNER
                        .plan(Orders.withRemnant(pieced, 300))
                        .remnant()
                        .orElseThrow()
                        .fits())
                .isTrue();
        // wraps of 42 cm are not made 30 cm shorter
        assertThat(help("leg-wraps", 200)).noneMatch(h -> h.startsWith("Make the wraps 30"));
    }

    private static List<String> help(String design, double lengthCm) {
        return Orders.PLANNER
                .plan(Orders.withRemnant(CuttingOrder.of(ORDER.cloth(), line(design)), lengthCm))
                .remnant()
                .orElseThrow()
                .wouldHelp();
    }

    private static CuttingOrder.Line line(String design) {
        return new CuttingOrder.Line(design, 1, Measurements.of(Map.of()), Options.USUAL);
    }

    private static CuttingPlan.Remnant answer(double lengthCm) {
        return Orders.PLANNER
                .plan(Orders.withRemnant(ORDER, lengthCm))
                .remnant()
                .orElseThrow();
    }
}
