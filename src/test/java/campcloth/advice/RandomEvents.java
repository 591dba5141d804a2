package campcloth.advice;

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
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/** Draws events with fires and rules; the same seed draws the same. */
final class RandomEvents {

    private final long seed;
    private final SplittableRandom random;

    RandomEvents(long seed) {
        this.seed = seed;
        this.random = new SplittableRandom(seed);
    }

    @Override
    public String toString() {
        return "seed " + seed;
    }

    Event event() {
        return event(rules());
    }

    /** None to two. */
    List<SafetyRule> rules() {
        return rules(random.nextInt(3));
    }

    double between(double low, double high) {
        return random.nextDouble(low, high);
    }

    Event event(List<SafetyRule> rules) {
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

    List<SafetyRule> rules(int count) {
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
