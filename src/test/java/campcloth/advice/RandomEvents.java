package campcloth.advice;

import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
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
            rules.add(new SafetyRule(
                    any(Authority.values()),
                    "rule " + i,
                    random.nextBoolean() ? Optional.of(random.nextDouble(0, 100)) : Optional.empty(),
                    random.nextInt(3) == 0
                            ? Set.of(any(new String[] {"polyester", "cotton", "acrylic", "wool"}))
                            : Set.of(),
                    random.nextInt(3) == 0 ? Optional.of(random.nextDouble(0, 500)) : Optional.empty(),
                    random.nextInt(5) == 0,
                    random.nextBoolean() ? Optional.of(random.nextDouble(0, 6)) : Optional.empty()));
        }
        return rules;
    }

    private <T> T any(T[] values) {
        return values[random.nextInt(values.length)];
    }
}
