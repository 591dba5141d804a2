package campcloth.fire;

import static campcloth.fire.Draw.always;
import static campcloth.fire.Draw.claim;
import static campcloth.fire.FireFixtures.event;

import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import campcloth.fire.FireJudgement.Gate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What no rule and no merit can undo: properties 8 and 9 of the grading. */
class FireVerdictPropertiesTest {

    private static final FireAdvice ADVICE = new FireAdvice(new FireRules(FireFixtures.FIBRES));

    @Test
    @DisplayName("8 A rule can only tighten: one more never opens the gate, and leaves the grades as they are")
    void oneMoreRuleNeverOpensTheGate() {
        always(2020, draw -> {
            List<SafetyRule> some = draw.rules();
            List<SafetyRule> more = new ArrayList<>(some);
            more.add(new RuleDraw(draw).rule());
            OpenFire fire = draw.fire();
            WornCloth cloth = draw.cloth();
            FireJudgement with = ADVICE.judge(cloth, event(more, fire));
            FireJudgement without = ADVICE.judge(cloth, event(some, fire));
            claim(with.gate().compareTo(without.gate()) >= 0, cloth, more);
            claim(with.spells().equals(without.spells()), cloth, more);
        });
    }

    @Test
    @DisplayName(
            "8 The strictest outcome stands, and an authority without a rule on file is named, never taken for permission")
    void theStrictestOutcomeStandsAndAMissingRuleIsTold() {
        always(2121, draw -> {
            List<SafetyRule> rules = draw.rules();
            WornCloth cloth = draw.cloth();
            FireJudgement judgement = ADVICE.judge(cloth, event(rules, draw.fire()));
            boolean forbidden = judgement.rules().stream().anyMatch(r -> r.outcome() == RuleOutcome.Outcome.FORBIDDEN);
            boolean asked = judgement.rules().stream().anyMatch(r -> r.outcome() == RuleOutcome.Outcome.ASK);
            claim(!forbidden || judgement.gate() == Gate.RULED_OUT, cloth, rules);
            claim(!asked || judgement.gate() != Gate.CLEAR, cloth, rules);
            for (SafetyRule.Authority authority : SafetyRule.Authority.values()) {
                boolean onFile = rules.stream().anyMatch(rule -> rule.authority() == authority);
                boolean told = judgement.cautions().stream()
                        .anyMatch(c ->
                                c.contains(": none on file, ask ") && c.contains(MissingRules.whomToAsk(authority)));
                claim(onFile != told, authority, rules, judgement.cautions());
            }
        });
    }

    @Test
    @DisplayName("9 The worst spell decides: a milder one beside it never lifts a cloth out of what it is")
    void noOtherSpellMakesUpForAHazard() {
        always(2222, draw -> {
            WornCloth cloth = draw.cloth();
            OpenFire one = draw.fire();
            OpenFire other = draw.fire();
            FireJudgement alone = ADVICE.judge(cloth, event(List.of(), one));
            FireJudgement both = ADVICE.judge(cloth, event(List.of(), other, one));
            claim(both.gate().compareTo(alone.gate()) >= 0, cloth, one, other);
            claim(
                    both.hazard() >= alone.hazard() && both.meltWarning().compareTo(alone.meltWarning()) >= 0,
                    cloth,
                    one);
            boolean severe = both.spells().stream().anyMatch(s -> s.hazard().grade() == FireGrade.SEVERE);
            claim(!severe || both.gate() == Gate.RULED_OUT, cloth, one, other);
        });
    }
}
