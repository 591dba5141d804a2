package campcloth.comfort;

import campcloth.comfort.model.Body;
import campcloth.comfort.model.Moisture;
import campcloth.comfort.model.State;
import campcloth.comfort.model.TwoNode;

/**
 * A body and the sweat in its clothing, as they go from minute to minute and from spell to spell.
 *
 * @param body the body as the model left it, before the clothing dries
 * @param waterGM2 sweat in the clothing, g per m2 of the body
 * @param dryingWm2 what that takes from the skin, W/m2
 */
record Wearer(Body body, double waterGM2, double dryingWm2) {

    /**
     * Beyond these core temperatures nobody goes on, and the model means nothing: it stands still until things turn. 35 is where
     * hypothermia begins (UK National Health Service); 39 is a choice of the project, a kelvin above the limit of ISO 7933.
     */
    static final double HOTTEST_CORE_C = 39;

    static final double COLDEST_CORE_C = 35;

    private static final double STILL_K = 1e-5;
    private static final double STILL_GM2 = 1e-4;

    /** Rested, dry, neither warm nor cold. */
    static Wearer neutral(TwoNode model) {
        return new Wearer(model.start(), 0, 0);
    }

    /** Rested but for a colder skin, with that much sweat in the clothing. */
    static Wearer chilled(TwoNode model, double skinC, double waterGM2) {
        State rested = State.NEUTRAL;
        State cold = new State(
                Math.min(rested.skinC(), skinC), rested.coreC(), rested.skinShare(), rested.bloodFlowLM2H(), 0);
        return in(model, cold, waterGM2);
    }

    /** The same person in other surroundings or at other work. */
    Wearer entering(TwoNode model) {
        return in(model, body.state(), waterGM2);
    }

    private static Wearer in(TwoNode model, State state, double waterGM2) {
        Body body = model.entered(state);
        return new Wearer(body, waterGM2, Moisture.dryingWm2(body, model.wettest(), waterGM2));
    }

    /** At least as wet as that. */
    Wearer asWetAs(Wearer other) {
        return new Wearer(body, Math.max(waterGM2, other.waterGM2), dryingWm2);
    }

    Wearer minuteLater(TwoNode model) {
        Body next = model.minuteAfter(body.evaporatingMore(dryingWm2));
        boolean hotter = next.coreC() >= HOTTEST_CORE_C && next.coreC() > body.coreC();
        boolean colder = next.coreC() <= COLDEST_CORE_C && next.coreC() < body.coreC();
        if (hotter || colder) {
            return this;
        }
        double water = Math.max(0, waterGM2 - Moisture.driedGM2(dryingWm2)) + Moisture.leftGM2H(next) / 60;
        double held = Math.min(Moisture.MOST_GM2, water);
        return new Wearer(next, held, Moisture.dryingWm2(next, model.wettest(), held));
    }

    /** Share of the skin that is wet, be it with fresh sweat or with that in the clothing. */
    double wetness() {
        return dryingWm2 == 0 || body.evaporationWm2() == 0
                ? body.wettedness()
                : body.wettedness() * (1 + dryingWm2 / body.evaporationWm2());
    }

    /** Whether hardly anything changed since a minute ago. */
    boolean stands(Wearer before) {
        return Math.abs(body.skinC() - before.body.skinC()) < STILL_K
                && Math.abs(body.coreC() - before.body.coreC()) < STILL_K
                && Math.abs(waterGM2 - before.waterGM2) < STILL_GM2;
    }
}
