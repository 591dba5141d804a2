package campcloth.fire;

import static campcloth.fire.FireFixtures.fire;
import static campcloth.fire.FireFixtures.forbidden;
import static campcloth.fire.FireFixtures.mostMeltable;
import static campcloth.fire.FireFixtures.plain;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import campcloth.fire.RuleOutcome.Outcome;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FireRulesTest {

    private static final FireRules RULES = new FireRules(FireFixtures.FIBRES);
    private static final List<OpenFire> SEATED_AT_2_M = List.of(fire(FireRole.SEATED, 2));

    @Test
    void shareThatMeltsIsHeldAgainstTheLimit() {
        SafetyRule third = mostMeltable(33, Optional.of(3.0));
        assertThat(outcome(third, plain("cotton 67; polyester 33", 200), SEATED_AT_2_M))
                .isEqualTo(Outcome.PASSED);
        assertThat(outcome(third, plain("cotton 66; polyester 34", 200), SEATED_AT_2_M))
                .isEqualTo(Outcome.FORBIDDEN);
    }

    @Test
    void unnamedFibreCountsAsMeltingAndAsTheForbiddenFibre() {
        WornCloth cloth = plain("cotton 60; other 40", 200);
        assertThat(outcome(mostMeltable(33, Optional.empty()), cloth, List.of()))
                .isEqualTo(Outcome.FORBIDDEN);
        RuleOutcome silk = RULES.check(forbidden("silk"), cloth, List.of());
        assertThat(silk.outcome()).isEqualTo(Outcome.FORBIDDEN);
        assertThat(silk.because()).contains("40 % of it is not named and may be silk");
    }

    @Test
    void limitOfNothingForbidsEveryTrace() {
        SafetyRule nothing = mostMeltable(0, Optional.empty());
        assertThat(outcome(nothing, plain("wool 99.99; elastane 0.01", 300), List.of()))
                .isEqualTo(Outcome.FORBIDDEN);
        assertThat(outcome(nothing, plain("wool 99; unknown 1", 300), List.of()))
                .isEqualTo(Outcome.FORBIDDEN);
        assertThat(outcome(nothing, finished(Finish.WAXED), List.of())).isEqualTo(Outcome.FORBIDDEN);
        assertThat(outcome(nothing, plain("wool 50; cotton 50", 300), List.of()))
                .isEqualTo(Outcome.PASSED);
    }

    @Test
    void filmThatMayBeHeavierThanPresumedAsks() {
        assertThat(outcome(mostMeltable(33, Optional.empty()), finished(Finish.COATED), List.of()))
                .isEqualTo(Outcome.ASK);
        assertThat(outcome(mostMeltable(40, Optional.empty()), finished(Finish.COATED), List.of()))
                .isEqualTo(Outcome.PASSED);
        assertThat(outcome(forbidden("chlorofibre"), finished(Finish.COATED), List.of()))
                .isEqualTo(Outcome.ASK);
    }

    @Test
    void ruleReachesWhoeverMayBeInsideItsDistance() {
        SafetyRule within3 = mostMeltable(33, Optional.of(3.0));
        WornCloth cloth = plain("polyester 100", 200);
        assertThat(outcome(within3, cloth, List.of(fire(FireRole.SEATED, 3)))).isEqualTo(Outcome.FORBIDDEN);
        assertThat(outcome(within3, cloth, List.of(fire(FireRole.PASSING)))).isEqualTo(Outcome.FORBIDDEN);
        assertThat(outcome(within3, cloth, List.of(fire(FireRole.CARRYING, 50))))
                .isEqualTo(Outcome.FORBIDDEN);
        assertThat(outcome(within3, cloth, List.of(fire(FireRole.PASSING, 9), fire(FireRole.SEATED, 2))))
                .isEqualTo(Outcome.FORBIDDEN);
    }

    @Test
    void ruleBeyondItsDistanceSaysWhatWouldHoldInside() {
        RuleOutcome far = RULES.check(
                mostMeltable(33, Optional.of(3.0)), plain("polyester 100", 200), List.of(fire(FireRole.PASSING, 5)));
        assertThat(far.outcome()).isEqualTo(Outcome.NOT_IN_REACH);
        assertThat(far.because())
                .isEqualTo("The rule holds within 3 m of a fire. The wearer stays 5 m away."
                        + " Inside that distance this cloth would be forbidden:"
                        + " 100 % of it melts or may melt, at most 33 % is allowed.");
    }

    @Test
    void weightAndSurfaceAreChecked() {
        SafetyRule heavyAndPlain = new SafetyRule(
                SafetyRule.Authority.LOCAL_LAW,
                "Plain cloth of 200 g/m2 or more",
                Optional.empty(),
                Set.of(),
                Optional.of(200.0),
                true,
                Optional.empty());
        assertThat(outcome(heavyAndPlain, plain("cotton 100", 200), List.of())).isEqualTo(Outcome.PASSED);
        assertThat(outcome(heavyAndPlain, plain("cotton 100", 199), List.of())).isEqualTo(Outcome.FORBIDDEN);
        assertThat(outcome(heavyAndPlain, finished(Finish.BRUSHED), List.of())).isEqualTo(Outcome.FORBIDDEN);
    }

    @Test
    void weightThatOnlyTheLowEndMissesIsAskedAbout() {
        SafetyRule least200 = least(200);
        RuleOutcome asked = RULES.check(least200, weighing(200, 190), List.of());
        assertThat(asked.outcome()).isEqualTo(Outcome.ASK);
        assertThat(asked.because())
                .isEqualTo("It is given as 200 g/m2; a piece may weigh 190: weigh it. At least 200 g/m2 is asked for.");
        assertThat(outcome(least200, weighing(211, 200), List.of())).isEqualTo(Outcome.PASSED);
        assertThat(outcome(least200, weighing(199, 190), List.of())).isEqualTo(Outcome.FORBIDDEN);
    }

    @Test
    void milledClothWithARaisedFaceBreaksARuleForPlainSurfaces() {
        WornCloth melton = new WornCloth(
                FireFixtures.FIBRES.blend("wool 100"),
                500,
                Surface.RAISED,
                Finish.FULLED,
                Weave.TWILL,
                Fit.CLOSE,
                Layer.OUTER);
        assertThat(melton.canFlash()).isFalse();
        SafetyRule plainOnly = new SafetyRule(
                SafetyRule.Authority.EVENT,
                "Plain cloth only",
                Optional.empty(),
                Set.of(),
                Optional.empty(),
                true,
                Optional.empty());
        assertThat(outcome(plainOnly, melton, List.of())).isEqualTo(Outcome.FORBIDDEN);
    }

    @Test
    void manyForbiddenFibresAreSpokenOfTogether() {
        SafetyRule several = new SafetyRule(
                SafetyRule.Authority.VENUE,
                "No polyester, acrylic, elastane",
                Optional.empty(),
                Set.of("polyester", "acrylic", "elastane"),
                Optional.empty(),
                false,
                Optional.empty());
        assertThat(because(several, plain("wool 100", 300))).isEqualTo("None of the forbidden fibres is in it.");
        assertThat(because(several, plain("wool 60; polyester 30; elastane 10", 300)))
                .isEqualTo("10 % of it is elastane, which is forbidden. 30 % of it is polyester, which is forbidden.");
        assertThat(because(several, plain("wool 60; other 40", 300)))
                .isEqualTo("40 % of it is not named and may be acrylic, elastane or polyester, which is forbidden.");
    }

    @Test
    void ruleThatCannotBeCheckedAsks() {
        SafetyRule words = new SafetyRule(
                SafetyRule.Authority.VENUE,
                "Dress sensibly",
                Optional.empty(),
                Set.of(),
                Optional.empty(),
                false,
                Optional.of(3.0));
        assertThat(outcome(words, plain("wool 100", 450), List.of(fire(FireRole.PASSING, 20))))
                .isEqualTo(Outcome.ASK);
        assertThat(outcome(forbidden("nylon"), plain("polyamide 100", 200), List.of()))
                .isEqualTo(Outcome.ASK);
    }

    private static Outcome outcome(SafetyRule rule, WornCloth cloth, List<OpenFire> fires) {
        return RULES.check(rule, cloth, fires).outcome();
    }

    private static String because(SafetyRule rule, WornCloth cloth) {
        return RULES.check(rule, cloth, List.of()).because();
    }

    private static SafetyRule least(double gsm) {
        return new SafetyRule(
                SafetyRule.Authority.EVENT,
                "Heavy cloth only",
                Optional.empty(),
                Set.of(),
                Optional.of(gsm),
                false,
                Optional.empty());
    }

    private static WornCloth weighing(double givenGsm, double lowGsm) {
        return new WornCloth(
                FireFixtures.FIBRES.blend("cotton 100"),
                new ClothWeight(givenGsm, lowGsm),
                Surface.PLAIN,
                Finish.NONE,
                Weave.PLAIN,
                Fit.CLOSE,
                Layer.OUTER);
    }

    private static WornCloth finished(Finish finish) {
        return new WornCloth(
                FireFixtures.FIBRES.blend("cotton 100"),
                300,
                Surface.PLAIN,
                finish,
                Weave.PLAIN,
                Fit.CLOSE,
                Layer.OUTER);
    }
}
