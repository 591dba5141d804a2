package campcloth.fire;

import static campcloth.fire.FireFixtures.event;
import static campcloth.fire.FireFixtures.fire;
import static campcloth.fire.FireFixtures.plain;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.MassPerArea;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.FireRole;
import campcloth.figure.Refused;
import campcloth.fire.BurnTestScreen.Outcome;
import campcloth.fire.FireJudgement.Gate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class BurnTestTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/published/cfr-16-1610.csv", numLinesToSkip = 1)
    void classesAsInTheRegulation(Surface surface, double burnTimeS, boolean baseBurns, BurnTestClass expected) {
        assertThat(BurnTestClass.of(surface, burnTimeS, baseBurns)).isEqualTo(expected);
    }

    @Test
    void aTimeThatIsNoneIsRefused() {
        assertThatThrownBy(() -> BurnTestClass.of(Surface.PLAIN, -1, false)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> BurnTestClass.of(Surface.PLAIN, Double.NaN, false))
                .isInstanceOf(Refused.class);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/cfr-16-1610-exempt.csv", numLinesToSkip = 1)
    void exemptionsAsInTheRegulation(String blend, double weightOzYd2, Surface surface, Outcome expected) {
        WornCloth cloth = WornCloth.woven(
                FireFixtures.FIBRES.blend(blend),
                MassPerArea.gsmOfOuncesPerSquareYard(weightOzYd2),
                surface,
                Fit.CLOSE,
                Layer.OUTER);
        assertThat(BurnTestScreen.of(cloth).outcome()).isEqualTo(expected);
    }

    @Test
    void anExemptPolyesterIsWarnedOfAllTheSame() {
        WornCloth polyester = plain("polyester 100", 200);
        assertThat(BurnTestScreen.of(polyester).outcome()).isEqualTo(Outcome.EXEMPT_BY_FIBRE);
        FireJudgement judgement = new FireAdvice(new FireRules(FireFixtures.FIBRES))
                .judge(polyester, event(List.of(), fire(FireRole.COOKING, 0.6)));
        assertThat(judgement.meltWarning()).isEqualTo(MeltWarning.STOP);
        assertThat(judgement.gate()).isEqualTo(Gate.RULED_OUT);
        assertThat(judgement.warnings()).anyMatch(w -> w.code() == FireWarning.Code.MELT);
        assertThat(BurnTestScreen.INFORMATION).contains("polyester is exempt and melts", "United States");
    }

    /** Only the fibres that the part names: silk is no wool there, elastane no polyester. */
    @Test
    void whatIsNotNamedInThePartIsNotExempt() {
        assertThat(light("wool 50; silk 50")).isEqualTo(Outcome.TEST_NEEDED);
        assertThat(light("polyester 95; elastane 5")).isEqualTo(Outcome.TEST_NEEDED);
    }

    @Test
    void unnamedFibreDecidesNothingUnlessTheRestDoes() {
        assertThat(light("polyester 90; other 10")).isEqualTo(Outcome.NOT_KNOWN);
        assertThat(light("cotton 90; other 10")).isEqualTo(Outcome.TEST_NEEDED);
        assertThat(BurnTestScreen.of(plain("unknown 100", 200)).outcome()).isEqualTo(Outcome.EXEMPT_BY_WEIGHT);
    }

    @Test
    void aWeightThatStraddlesTheLimitIsNotKnown() {
        assertThat(weighing(80, 100)).isEqualTo(Outcome.NOT_KNOWN);
        assertThat(weighing(88.2, 100)).isEqualTo(Outcome.EXEMPT_BY_WEIGHT);
        assertThat(weighing(80, 88.1)).isEqualTo(Outcome.TEST_NEEDED);
    }

    @Test
    void aFaceThatNobodyToldIsNotKnown() {
        WornCloth cotton = plain("cotton 100", 200);
        BurnTestScreen screen = BurnTestScreen.of(cotton, Optional.empty());
        assertThat(screen.outcome()).isEqualTo(Outcome.NOT_KNOWN);
        assertThat(screen.because()).contains("Nobody said whether its face is raised");
        assertThat(BurnTestScreen.of(plain("wool 100", 60), Optional.empty()).outcome())
                .isEqualTo(Outcome.EXEMPT_BY_FIBRE);
        assertThat(BurnTestScreen.of(plain("cotton 100", 60), Optional.empty()).outcome())
                .isEqualTo(Outcome.TEST_NEEDED);
    }

    @Test
    void filmOrWaxIsNoneOfTheFibres() {
        WornCloth coated = new WornCloth(
                FireFixtures.FIBRES.blend("polyester 100"),
                70,
                Surface.PLAIN,
                Finish.COATED,
                Weave.PLAIN,
                Fit.CLOSE,
                Layer.OUTER);
        assertThat(BurnTestScreen.of(coated).outcome()).isEqualTo(Outcome.NOT_KNOWN);
    }

    private static Outcome light(String blend) {
        return BurnTestScreen.of(plain(blend, 60)).outcome();
    }

    private static Outcome weighing(double lowGsm, double highGsm) {
        return BurnTestScreen.of(
                        FireFixtures.FIBRES.blend("cotton 100"), false, Optional.of(Surface.PLAIN), lowGsm, highGsm)
                .outcome();
    }
}
