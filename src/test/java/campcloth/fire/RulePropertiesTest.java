package campcloth.fire;

import static campcloth.fire.Draw.claim;

import campcloth.event.Event;
import campcloth.event.OpenFire;
import campcloth.event.Provenance;
import campcloth.event.RuleDraft;
import campcloth.event.SafetyRule;
import campcloth.fire.RuleOutcome.Outcome;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What must hold of rules of any kind: they only tighten, and what is not known never makes them milder. */
class RulePropertiesTest {

    private static final FireRules RULES = new FireRules(FireFixtures.FIBRES);
    private static final FireAdvice ADVICE = new FireAdvice(RULES);

    @Test
    void oneMoreRuleNeverOpensTheGateNorChangesWhatAnotherSays() {
        Draw.always(61_000_000, draw -> {
            RuleDraw rules = new RuleDraw(draw);
            Event without = rules.event(rules.rules());
            List<SafetyRule> more = new ArrayList<>(without.rules());
            more.add(rules.rule());
            WornCloth cloth = draw.cloth();
            FireJudgement before = ADVICE.judge(cloth, without);
            FireJudgement after = ADVICE.judge(cloth, without.withRules(more));
            claim(after.gate().compareTo(before.gate()) >= 0, cloth, more, before.gate(), after.gate());
            claim(
                    after.rules().subList(0, before.rules().size()).equals(before.rules()),
                    cloth,
                    more,
                    before.rules(),
                    after.rules());
            claim(after.hazard() == before.hazard(), cloth, more);
            claim(after.warnings().containsAll(before.warnings()), cloth, more);
        });
    }

    @Test
    void theOrderOfRulesMakesNoDifference() {
        Draw.always(62_000_000, draw -> {
            RuleDraw rules = new RuleDraw(draw);
            Event event = rules.event(rules.rules());
            List<SafetyRule> turned = new ArrayList<>(event.rules());
            Collections.reverse(turned);
            Collections.rotate(turned, draw.coin() ? 0 : 1);
            WornCloth cloth = draw.cloth();
            FireJudgement one = ADVICE.judge(cloth, event);
            FireJudgement other = ADVICE.judge(cloth, event.withRules(turned));
            claim(one.gate() == other.gate(), cloth, turned);
            claim(
                    one.rules().size() == other.rules().size()
                            && one.rules().containsAll(other.rules())
                            && other.rules().containsAll(one.rules()),
                    cloth,
                    turned);
            claim(
                    RuleConflicts.of(event.rules(), FireFixtures.FIBRES)
                            .equals(RuleConflicts.of(turned, FireFixtures.FIBRES)),
                    turned);
        });
    }

    @Test
    void aConditionMadeStricterNeverImprovesWhatTheRuleSays() {
        Draw.always(63_000_000, draw -> {
            RuleDraw rules = new RuleDraw(draw);
            SafetyRule rule = rules.ruleWithConditions();
            SafetyRule stricter = rules.stricter(rule);
            WornCloth cloth = draw.cloth();
            List<OpenFire> fires = rules.fires();
            neverMilder(RULES.check(rule, cloth, fires), RULES.check(stricter, cloth, fires), cloth, stricter, fires);
        });
    }

    @Test
    void whatOnlyPersonsCanJudgeIsNeverPassed() {
        Draw.always(64_000_000, draw -> {
            RuleDraw rules = new RuleDraw(draw);
            SafetyRule rule = rules.ruleForPersons();
            RuleOutcome outcome = RULES.check(rule, draw.cloth(), rules.fires(), rules.dates());
            claim(outcome.outcome() != Outcome.PASSED, rule, outcome);
            if (rule.reach().roles().isEmpty()) {
                claim(outcome.outcome() == Outcome.ASK, rule, outcome);
            }
        });
    }

    @Test
    void lessKnownOfTheClothIsNeverMilder() {
        Draw.always(65_000_000, draw -> {
            RuleDraw rules = new RuleDraw(draw);
            SafetyRule rule = rules.rule();
            List<OpenFire> fires = rules.fires();
            Map<String, Double> shares = draw.shares();
            WornCloth known = draw.cloth(Draw.blend(shares));
            Map<String, Double> fewer = new TreeMap<>(shares);
            double unnamed = fewer.remove(draw.one(List.copyOf(shares.keySet())));
            fewer.merge("unknown", unnamed, Double::sum);
            WornCloth fibreForgotten = with(known, Draw.blend(fewer), known.weight());
            double low = Math.max(10, known.weight().lowGsm() * draw.between(0.3, 1));
            WornCloth wideWeight =
                    with(known, known.blend(), new ClothWeight(known.weight().givenGsm(), low));
            RuleOutcome before = RULES.check(rule, known, fires);
            neverMilder(before, RULES.check(rule, fibreForgotten, fires), fibreForgotten, rule, fires);
            neverMilder(before, RULES.check(rule, wideWeight, fires), wideWeight, rule, fires);
        });
    }

    @Test
    void aDistanceThatNobodyToldIsNeverMilder() {
        Draw.always(66_000_000, draw -> {
            RuleDraw rules = new RuleDraw(draw);
            SafetyRule rule = rules.rule();
            WornCloth cloth = draw.cloth();
            List<OpenFire> told = rules.fires();
            List<OpenFire> untold = told.stream()
                    .map(fire -> new OpenFire(fire.role(), Optional.empty(), fire.fireKw()))
                    .toList();
            neverMilder(RULES.check(rule, cloth, told), RULES.check(rule, cloth, untold), cloth, rule, told);
        });
    }

    @Test
    void datesNeverLoosen() {
        Draw.always(67_000_000, draw -> {
            RuleDraw rules = new RuleDraw(draw);
            SafetyRule dated = rules.rule();
            SafetyRule undated = RuleDraft.of(dated).from(Provenance.UNTOLD).rule();
            WornCloth cloth = draw.cloth();
            List<OpenFire> fires = rules.fires();
            RuleOutcome inItsTerm = RULES.check(dated, cloth, fires, rules.dates());
            neverMilder(RULES.check(undated, cloth, fires), inItsTerm, cloth, dated, fires);
            neverMilder(inItsTerm, RULES.check(dated, cloth, fires, Optional.empty()), cloth, dated, fires);
        });
    }

    private static void neverMilder(
            RuleOutcome before, RuleOutcome after, WornCloth cloth, SafetyRule rule, List<OpenFire> fires) {
        claim(rank(after.outcome()) >= rank(before.outcome()), cloth, rule, fires, before, after);
    }

    /** Out of reach and passed come to the same: neither asks nor forbids. */
    private static int rank(Outcome outcome) {
        return switch (outcome) {
            case PASSED, NOT_IN_REACH -> 0;
            case ASK -> 1;
            case FORBIDDEN -> 2;
        };
    }

    private static WornCloth with(WornCloth cloth, campcloth.fibre.Blend blend, ClothWeight weight) {
        return new WornCloth(blend, weight, cloth.surface(), cloth.finish(), cloth.weave(), cloth.fit(), cloth.layer());
    }
}
