package campcloth.fire;

import campcloth.event.Event;
import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Draws cloth at one or two fires, under a rule or none. */
final class CaseDraw {

    private CaseDraw() {}

    static FireCase any(Draw draw) {
        List<OpenFire> fires = new ArrayList<>(List.of(draw.fire()));
        if (draw.coin()) {
            fires.add(draw.fire());
        }
        List<SafetyRule> rules = draw.coin() ? List.of() : List.of(rule(draw));
        WornCloth cloth = draw.cloth();
        double gsm = cloth.weightGsm();
        ClothWeight weight =
                draw.coin() ? cloth.weight() : new ClothWeight(gsm, Math.max(10, gsm * draw.between(0.5, 1)));
        return new FireCase(
                Rebuilt.copy(cloth, cloth.blend(), weight, cloth.fit(), cloth.layer()),
                FireFixtures.event(rules, fires.toArray(OpenFire[]::new)));
    }

    static SafetyRule rule(Draw draw) {
        return new SafetyRule(
                draw.one(Arrays.asList(SafetyRule.Authority.values())),
                "As posted at the gate",
                draw.coin() ? Optional.of(draw.percent()) : Optional.empty(),
                draw.coin()
                        ? Set.of()
                        : Set.copyOf(draw.shares().keySet().stream().limit(1).collect(Collectors.toSet())),
                draw.coin() ? Optional.of(draw.between(50, 500)) : Optional.empty(),
                draw.coin(),
                draw.coin() ? Optional.of(draw.distanceM()) : Optional.empty());
    }

    /** The same event under those rules. */
    static Event withRules(Event event, List<SafetyRule> rules) {
        return FireFixtures.event(rules, placedAsTheyAre(event));
    }

    private static OpenFire[] placedAsTheyAre(Event event) {
        return event.spells().stream().flatMap(s -> s.fireInUse().stream()).toArray(OpenFire[]::new);
    }
}
