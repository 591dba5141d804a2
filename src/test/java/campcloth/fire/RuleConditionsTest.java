package campcloth.fire;

import static campcloth.fire.FireFixtures.fire;
import static campcloth.fire.FireFixtures.plain;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.event.EventDates;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.RuleDraft;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import campcloth.fire.RuleOutcome.Outcome;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** One kind of condition after the other, and what dates and roles do. */
class RuleConditionsTest {

    private static final FireRules RULES = new FireRules(FireFixtures.FIBRES);
    private static final RuleDraft RULE = RuleDraft.of(Authority.EVENT, "As the marshal says");
    private static final WornCloth WOOL = plain("wool 100", 400);
    private static final List<OpenFire> SEATED_AT_2_M = List.of(fire(FireRole.SEATED, 2));
    private static final EventDates EVENT = new EventDates(LocalDate.of(2027, 7, 16), LocalDate.of(2027, 7, 18));

    @Test
    void onlyTheFibresListedPass() {
        SafetyRule natural = RULE.allowingOnly(Set.of("wool", "flax")).rule();
        assertThat(outcome(natural, plain("wool 60; flax 40", 300))).isEqualTo(Outcome.PASSED);
        RuleOutcome cotton = RULES.check(natural, plain("wool 60; cotton 40", 300), List.of());
        assertThat(cotton.outcome()).isEqualTo(Outcome.FORBIDDEN);
        assertThat(cotton.because()).isEqualTo("40 % of it is cotton, only flax and wool may be in it.");
    }

    @Test
    void whatIsNotNamedMayBeAnotherFibreThanThoseListed() {
        SafetyRule natural =
                RULE.allowingOnly(Set.of("wool", "other", "unknown")).rule();
        assertThat(outcome(natural, plain("wool 99; other 1", 300))).isEqualTo(Outcome.FORBIDDEN);
        assertThat(outcome(natural, plain("unknown 100", 300))).isEqualTo(Outcome.FORBIDDEN);
        assertThat(outcome(RULE.allowingOnly(Set.of("wool", "moonweed")).rule(), WOOL))
                .isEqualTo(Outcome.ASK);
    }

    @Test
    void looseGarmentsBreakARuleForCloseFit() {
        SafetyRule close = RULE.closeFit().rule();
        WornCloth loose = WornCloth.woven(WOOL.blend(), 400, Surface.PLAIN, Fit.LOOSE, Layer.OUTER);
        assertThat(outcome(close, loose)).isEqualTo(Outcome.FORBIDDEN);
        RuleOutcome fits = RULES.check(close, WOOL, List.of());
        assertThat(fits.outcome()).isEqualTo(Outcome.PASSED);
        assertThat(fits.because()).contains("look at sleeves and hems");
    }

    @Test
    void distanceMustBeKeptWhateverTheCloth() {
        SafetyRule keep3 = RULE.keepAtLeast(3).rule();
        assertThat(outcome(keep3, WOOL, SEATED_AT_2_M)).isEqualTo(Outcome.FORBIDDEN);
        assertThat(outcome(keep3, WOOL, List.of(fire(FireRole.SEATED, 3)))).isEqualTo(Outcome.PASSED);
        assertThat(outcome(keep3, WOOL, List.of(fire(FireRole.PASSING)))).isEqualTo(Outcome.FORBIDDEN);
        assertThat(outcome(keep3, WOOL, List.of(fire(FireRole.CARRYING, 9)))).isEqualTo(Outcome.FORBIDDEN);
        assertThat(outcome(keep3, WOOL, List.of())).isEqualTo(Outcome.NOT_IN_REACH);
        RuleOutcome near = RULES.check(keep3, WOOL, SEATED_AT_2_M);
        assertThat(near.because())
                .isEqualTo(
                        "The wearer is 2 m away, as told. At least 3 m must be kept: that is about the place, not the"
                                + " cloth.");
    }

    @Test
    void theDistanceToKeepIsNotCutShortByTheRulesReach() {
        SafetyRule rule = RULE.keepAtLeast(5).within(Optional.of(1.0)).rule();
        assertThat(outcome(rule, WOOL, SEATED_AT_2_M)).isEqualTo(Outcome.FORBIDDEN);
    }

    @Test
    void whatOnlyAPersonCanJudgeIsAskedAtAnyDistance() {
        assertThat(outcome(RULE.treatment("durable flame-retardant treatment").rule(), WOOL))
                .isEqualTo(Outcome.ASK);
        assertThat(outcome(
                        RULE.certificate("test report").within(Optional.of(1.0)).rule(), WOOL, SEATED_AT_2_M))
                .isEqualTo(Outcome.ASK);
        RuleOutcome mixed =
                RULES.check(RULE.mostMeltable(10).askAbout("tent lining").rule(), plain("wool 100", 300), List.of());
        assertThat(mixed.outcome()).isEqualTo(Outcome.ASK);
        assertThat(mixed.because()).contains("\"tent lining\"").doesNotContain("melts");
    }

    @Test
    void ruleForSomeRolesSaysToOthersWhatItWouldComeTo() {
        SafetyRule carrying =
                RULE.mostMeltable(0).roles(Set.of(FireRole.CARRYING)).rule();
        WornCloth polyester = plain("polyester 100", 200);
        assertThat(outcome(carrying, polyester, List.of(fire(FireRole.CARRYING))))
                .isEqualTo(Outcome.FORBIDDEN);
        RuleOutcome seated = RULES.check(carrying, polyester, SEATED_AT_2_M);
        assertThat(seated.outcome()).isEqualTo(Outcome.NOT_IN_REACH);
        assertThat(seated.because())
                .isEqualTo(
                        "The rule holds for carrying a flame; nobody said that the wearer does. There this cloth would"
                                + " be forbidden: 100 % of it melts or may melt, at most 0 % is allowed.");
    }

    @Test
    void roleAndDistanceMustMeetAtTheSameFire() {
        SafetyRule rule = RULE.mostMeltable(0)
                .roles(Set.of(FireRole.SEATED))
                .within(Optional.of(2.0))
                .rule();
        List<OpenFire> apart = List.of(fire(FireRole.SEATED, 4), fire(FireRole.PASSING, 1));
        assertThat(outcome(rule, plain("polyester 100", 200), apart)).isEqualTo(Outcome.NOT_IN_REACH);
    }

    @Test
    void ruleWhoseTermDoesNotCoverTheEventIsAppliedAndAskedAbout() {
        RuleDraft rule = RULE.mostMeltable(33);
        SafetyRule over = rule.term(Optional.empty(), Optional.of(LocalDate.of(2027, 7, 17)))
                .rule();
        SafetyRule covers = rule.term(Optional.of(LocalDate.of(2027, 7, 16)), Optional.of(LocalDate.of(2027, 7, 18)))
                .rule();
        SafetyRule later = rule.term(Optional.of(LocalDate.of(2027, 7, 17)), Optional.empty())
                .rule();
        assertThat(at(over, WOOL).outcome()).isEqualTo(Outcome.ASK);
        assertThat(at(over, WOOL).because())
                .endsWith(
                        "Its term ended on 2027-07-17, before the event ends: it is applied all the same; ask for the one"
                                + " that holds.");
        assertThat(at(covers, WOOL).outcome()).isEqualTo(Outcome.PASSED);
        assertThat(at(later, WOOL).because()).contains("begins on 2027-07-17, after the event begins");
        assertThat(at(over, plain("polyester 100", 200)).outcome()).isEqualTo(Outcome.FORBIDDEN);
        assertThat(RULES.check(covers, WOOL, List.of()).because()).contains("the event has no date");
    }

    @Test
    void outcomeCitesWhereTheRuleStands() {
        SafetyRule rule = RULE.mostMeltable(33)
                .from("Wendlow camp rules, page 2", "3", "2027-02-01")
                .rule();
        assertThat(RULES.check(rule, WOOL, List.of()).quoted())
                .isEqualTo(
                        "Rule of the event: \"As the marshal says\" (Wendlow camp rules, page 2, edition 3, issued on"
                                + " 2027-02-01)");
    }

    private static Outcome outcome(SafetyRule rule, WornCloth cloth) {
        return outcome(rule, cloth, List.of());
    }

    private static Outcome outcome(SafetyRule rule, WornCloth cloth, List<OpenFire> fires) {
        return RULES.check(rule, cloth, fires).outcome();
    }

    private static RuleOutcome at(SafetyRule rule, WornCloth cloth) {
        return RULES.check(rule, cloth, List.of(), Optional.of(EVENT));
    }
}
