package campcloth.pages.events;

import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.Spell;
import campcloth.fire.FirePlan;
import campcloth.fire.StandBackDrawing;
import java.util.List;
import java.util.Optional;

/** The distances around each fire of an event, for whoever lays out the place: fires of the same size are one. */
final class FirePlans {

    private FirePlans() {}

    static List<Plan> of(Event event) {
        return event.spells().stream()
                .map(Spell::fire)
                .flatMap(Optional::stream)
                .map(fire -> new OpenFire(FireRole.PASSING, Optional.empty(), fire.fireKw(), fire.kind()))
                .distinct()
                .map(fire -> new Plan(FirePlan.of(fire, event.rules())))
                .toList();
    }

    /** A fire, drawn and in words. */
    record Plan(FirePlan plan) {

        public String fire() {
            return plan.fire();
        }

        public List<String> sentences() {
            return StandBackDrawing.text(plan);
        }

        String svg() {
            return StandBackDrawing.svg(plan);
        }
    }
}
