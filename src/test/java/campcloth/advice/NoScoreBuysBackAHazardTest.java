package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.RuleDraft;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import campcloth.event.Season;
import campcloth.event.Spell;
import campcloth.event.Sun;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold at every event: generated events and rules over the whole catalogue. */
class NoScoreBuysBackAHazardTest {

    private static final long SEED = 20_26;
    private static final int EVENTS = 60;

    private final SplittableRandom random = new SplittableRandom(SEED);

    @Test
    void verdictsComeBeforeScoresAndAllCriteriaAreThereWithinTheirRange() {
        for (int i = 0; i < EVENTS; i++) {
            Event event = event(rules(random.nextInt(3)));
            List<Judged> ranked = Camp.ranked(event);
            assertThat(ranked.stream().map(Judged::verdict))
                    .as("seed %d, event %d: %s", SEED, i, event)
                    .isSorted();
            for (Judged judged : ranked) {
                inRange(
                        judged,
                        "seed " + SEED + ", event " + i + ", "
                                + judged.candidate().id());
            }
        }
    }

    @Test
    void noRuleEverImprovesAVerdict() {
        for (int i = 0; i < EVENTS; i++) {
            List<SafetyRule> rules = new ArrayList<>(rules(random.nextInt(3)));
            Event before = event(rules);
            rules.addAll(rules(1));
            Event after = new Event(before.name(), before.season(), before.spells(), rules);
            Map<String, Verdict> without = verdicts(before);
            Map<String, Verdict> with = verdicts(after);
            for (Map.Entry<String, Verdict> one : without.entrySet()) {
                assertThat(with.get(one.getKey()))
                        .as("seed %d, event %d, %s, rule %s", SEED, i, one.getKey(), rules.get(rules.size() - 1))
                        .isGreaterThanOrEqualTo(one.getValue());
            }
        }
    }

    private static void inRange(Judged judged, String where) {
        assertThat(judged.criteria().stream().map(Assessment::criterion))
                .as(where)
                .containsExactly("warmth", "heat", "breathability", "itch", "fire", "weight");
        for (Assessment a : judged.criteria()) {
            assertThat(a.score()).as("%s, %s", where, a).isBetween(0.0, 100.0);
            assertThat(a.scoreLow()).as("%s, %s", where, a).isLessThanOrEqualTo(a.score());
            assertThat(a.scoreHigh()).as("%s, %s", where, a).isGreaterThanOrEqualTo(a.score());
            assertThat(a.because()).as(where).isNotBlank();
            a.quantity()
                    .ifPresent(q -> assertThat(q.value()).as("%s, %s", where, a).isBetween(q.low(), q.high()));
        }
        assertThat(judged.score()).as(where).isBetween(judged.scoreLow(), judged.scoreHigh());
    }

    private static Map<String, Verdict> verdicts(Event event) {
        Map<String, Verdict> verdicts = new HashMap<>();
        Camp.ranked(event).forEach(j -> verdicts.put(j.candidate().id(), j.verdict()));
        return verdicts;
    }

    private Event event(List<SafetyRule> rules) {
        List<Spell> spells = new ArrayList<>();
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            spells.add(new Spell(
                    "spell " + i,
                    random.nextDouble(0.5, 9),
                    random.nextDouble(-25, 40),
                    random.nextDouble(5, 100),
                    random.nextDouble(0, 14),
                    any(Sun.values()),
                    any(Activity.values()),
                    random.nextBoolean() ? Optional.empty() : Optional.of(fire())));
        }
        return new Event("Wendlow river camp", any(Season.values()), spells, rules);
    }

    private OpenFire fire() {
        return new OpenFire(
                any(FireRole.values()),
                random.nextInt(4) == 0 ? Optional.empty() : Optional.of(random.nextDouble(0.3, 8)),
                random.nextBoolean() ? Optional.empty() : Optional.of(random.nextDouble(5, 500)));
    }

    private List<SafetyRule> rules(int count) {
        List<SafetyRule> rules = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            rules.add(rule(RuleDraft.of(any(Authority.values()), "rule " + i)));
        }
        return rules;
    }

    private SafetyRule rule(RuleDraft empty) {
        RuleDraft rule = empty.within(maybe(2) ? Optional.of(random.nextDouble(0, 6)) : Optional.empty());
        String[] fibres = {"polyester", "cotton", "acrylic", "wool"};
        rule = maybe(2) ? rule.mostMeltable(random.nextDouble(0, 100)) : rule;
        rule = maybe(3) ? rule.forbidding(Set.of(any(fibres))) : rule;
        rule = maybe(6) ? rule.allowingOnly(Set.of("flax", any(fibres))) : rule;
        rule = maybe(3) ? rule.leastWeight(random.nextDouble(0, 500)) : rule;
        rule = maybe(5) ? rule.plainSurface() : rule;
        rule = maybe(9) ? rule.closeFit() : rule;
        rule = maybe(6) ? rule.keepAtLeast(random.nextDouble(0.5, 6)) : rule;
        rule = maybe(6) ? rule.treatment("a treatment that lasts") : rule;
        rule = maybe(6) ? rule.roles(Set.of(FireRole.SEATED, FireRole.CARRYING)) : rule;
        return rule.rule();
    }

    private boolean maybe(int oneOf) {
        return random.nextInt(oneOf) == 0;
    }

    private <T> T any(T[] values) {
        return values[random.nextInt(values.length)];
    }
}
