package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.fibre.FlameFinding.Melting;
import campcloth.fibre.FlameFinding.OfThread;
import campcloth.fibre.FlameFinding.Speaks;
import campcloth.fibre.FlameFinding.Verdict;
import campcloth.figure.Refused;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FlameKeyTest {

    private static final String WOOL =
            "approach shrinks; flame slow; removed goes-out; odour hair; residue black-crushable";
    private static final String POLYAMIDE =
            "approach melts; flame slow; molten melts; removed goes-out; odour celery; residue hard-bead";
    private static final String COTTON =
            "approach stays; flame steady; removed burns-on; ember afterglow; odour paper; residue soft-ash";

    @Test
    void bayesByHandForTwoAnswersOfFullWeight() {
        double cotton = 0.80 * 0.78;
        double otherCelluloses = 0.80 * 0.74 + 0.78 * 0.72 + 0.80 * 0.50;
        double silk = 0.02 * 0.04;
        double acetate = 0.06 * 0.02;
        double treated = 0.48 * 0.06;
        double twelveMore = 12 * 0.02 * 0.02;
        double sum = cotton + otherCelluloses + silk + acetate + treated + twelveMore;
        OfThread thread = FlameFixture.thread("odour paper; residue soft-ash");
        assertThat(thread.first().key()).isEqualTo("cotton");
        assertThat(thread.ranking().get(0).probability()).isCloseTo(0.95 * cotton / sum, within(1e-9));
    }

    @Test
    void aPlainCaseIsAClass() {
        FlameFinding finding = FlameFixture.finding(POLYAMIDE);
        assertThat(finding.verdict()).isEqualTo(Verdict.CLASS);
        assertThat(finding.threads().get(0).first().key()).isEqualTo("polyamide");
        assertThat(finding.melting()).isEqualTo(Melting.SHOWN);
        assertThat(finding.sentence()).contains("polyamide");
    }

    @Test
    void plantFibresAreAFamilyOnly() {
        FlameFinding finding = FlameFixture.finding(COTTON);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAMILY);
        assertThat(finding.sentence()).contains("cotton").contains("flax");
        assertThat(finding.melting()).isEqualTo(Melting.NOT_SHOWN);
    }

    @Test
    void hairWithABeadFitsNothingAndMeltsAllTheSame() {
        FlameFinding finding =
                FlameFixture.finding("approach melts; flame slow; odour hair; residue hard-bead; smoke pale");
        assertThat(finding.verdict()).isEqualTo(Verdict.FITS_NOTHING);
        assertThat(finding.sentence()).contains("blend");
        assertThat(finding.melting()).isEqualTo(Melting.SHOWN);
    }

    @Test
    void aBeadMakesItMeltWhereTheRankingSaysWool() {
        FlameFinding finding = FlameFixture.finding(
                "approach stays; flame slow; molten none; removed goes-out; odour hair; residue sticky");
        assertThat(finding.threads().get(0).first().melts()).isFalse();
        assertThat(finding.melting()).isEqualTo(Melting.SHOWN);
        assertThat(finding.threads().get(0).meltingSeen())
                .extracting(FlameAnswer::title)
                .containsExactly("residue sticky");
    }

    @Test
    void unionClothIsToldThreadByThread() {
        FlameFinding finding = FlameFixture.KEY.finding(List.of(
                new ThreadSeen("warp", FlameFixture.seen(COTTON)), new ThreadSeen("weft", FlameFixture.seen(WOOL))));
        assertThat(finding.verdict()).isEqualTo(Verdict.THREADS_DIFFER);
        assertThat(finding.sentence()).contains("warp likely one of cotton").contains("weft likely one of wool");
    }

    @Test
    void oneThreadThatMeltsMakesTheClothMelt() {
        FlameFinding finding = FlameFixture.finding(COTTON, POLYAMIDE);
        assertThat(finding.threads().get(0).melting()).isEqualTo(Melting.NOT_SHOWN);
        assertThat(finding.melting()).isEqualTo(Melting.SHOWN);
    }

    @Test
    void anUnsureThreadLeavesAllUnsure() {
        assertThat(FlameFixture.finding(POLYAMIDE, "smoke pale").verdict()).isEqualTo(Verdict.UNSURE);
    }

    @Test
    void reasonsSayWhichWay() {
        OfThread thread = FlameFixture.thread("odour hair; residue black-crushable");
        assertThat(thread.ranking().get(0).because())
                .extracting(FlameFinding.Because::speaks)
                .containsExactly(Speaks.FOR, Speaks.FOR);
        assertThat(thread.ranking().get(18).because())
                .extracting(FlameFinding.Because::speaks)
                .contains(Speaks.AGAINST);
    }

    @Test
    void theEmberIsAskedForWhereCottonAndViscoseAreLeft() {
        OfThread thread = FlameFixture.thread("odour paper; residue soft-ash; removed burns-on; approach stays");
        assertThat(thread.next().orElseThrow().feature()).isEqualTo(FlameFeature.EMBER);
    }

    @Test
    void theSmellOrTheResidueTellsMostAtFirst() {
        FlameFinding.Next next = FlameFixture.thread(Map.of()).next().orElseThrow();
        assertThat(next.feature()).isIn(FlameFeature.ODOUR, FlameFeature.RESIDUE);
        assertThat(next.expectedBits()).isGreaterThan(0.5);
    }

    @Test
    void anAnswerThatThereIsNotIsRefusedByItsPlace() {
        assertThatThrownBy(() -> FlameFixture.finding(COTTON, "odour roses"))
                .isInstanceOfSatisfying(Refused.class, refused -> {
                    assertThat(refused.refusals().get(0).field()).isEqualTo("threads[1].observations.odour");
                    assertThat(refused.refusals().get(0).remedy()).contains("celery");
                });
    }

    @Test
    void notSureIsNoEvidenceAndIsNotAskedAgain() {
        OfThread leftOut = FlameFixture.thread("odour hair; smoke pale");
        OfThread notSure = FlameFixture.thread("odour hair; smoke pale; residue not-sure");
        assertThat(notSure.ranking()).isEqualTo(leftOut.ranking());
        assertThat(notSure.answered()).isEqualTo(2);
        assertThat(leftOut.next().orElseThrow().feature()).isEqualTo(FlameFeature.RESIDUE);
        assertThat(notSure.next().orElseThrow().feature()).isNotEqualTo(FlameFeature.RESIDUE);
    }

    @Test
    void theWarningsOfASuggestedClothSayWhetherItMelted() {
        assertThat(FlameKey.warnings(FlameFixture.finding(POLYAMIDE)))
                .anyMatch(w -> w.startsWith("It was seen to melt"));
        assertThat(FlameKey.warnings(FlameFixture.finding(COTTON)))
                .anyMatch(w -> w.startsWith("It was not seen to melt. That does not show"));
    }

    @Test
    void threadsOfOneNameNoThreadsAndTooManyAreRefused() {
        ThreadSeen warp = new ThreadSeen("warp", Map.of());
        assertThatThrownBy(() -> FlameFixture.KEY.finding(List.of(warp, new ThreadSeen("Warp", Map.of()))))
                .hasMessageContaining("threads[1].thread");
        assertThatThrownBy(() -> FlameFixture.KEY.finding(List.of())).hasMessageContaining("threads");
        assertThatThrownBy(() -> FlameFixture.KEY.finding(Collections.nCopies(9, warp)))
                .hasMessageContaining("at most 8");
    }

    @Test
    void noSentenceCallsAGarmentSafe() {
        List<String> sentences = new ArrayList<>(FlameKey.CAUTIONS);
        sentences.addAll(FlameSafety.SAFETY);
        sentences.addAll(FlameSafety.INSTRUCTIONS);
        assertThat(sentences)
                .allSatisfy(sentence ->
                        assertThat(sentence).doesNotContainPattern("(?i)\\bsafe\\b|fireproof|compliant|certified"));
    }

    @Test
    void cottonThatDripsIsNotCalledCotton() {
        String cotton = "flame fast; removed burns-on; ember afterglow; odour paper; residue soft-ash";
        assertThat(FlameFixture.finding(cotton).verdict()).isEqualTo(Verdict.FAMILY);
        FlameFinding drips = FlameFixture.finding(cotton + "; molten flaming-drips");
        assertThat(drips.verdict()).isEqualTo(Verdict.FITS_NOTHING);
        assertThat(drips.sentence()).contains("blend").doesNotContain("cotton");
    }
}
