package campcloth.comfort;

import campcloth.comfort.model.Body;
import campcloth.comfort.model.State;
import campcloth.comfort.model.TwoNode;

/**
 * The two-node body after an hour.
 *
 * @param state temperatures, blood flow and the sweat that is called for
 * @param wettedness share of the skin that is wet
 * @param asked wettedness that the sweating asks for
 * @param wettest wettedness at which sweat drips off
 * @param standardEffectiveC SET
 */
record Hour(State state, double wettedness, double asked, double wettest, double standardEffectiveC) {

    static final int MINUTES = 60;

    /** The model run from neutral. */
    static Hour after(TwoNode model) {
        Body body = model.after(MINUTES);
        return of(model, body, model.standardEffectiveC(body));
    }

    /** A body in that state; how wet its skin is follows from it. */
    static Hour in(TwoNode model, State state, double standardEffectiveC) {
        return of(model, model.entered(state), standardEffectiveC);
    }

    private static Hour of(TwoNode model, Body body, double standardEffectiveC) {
        return new Hour(body.state(), body.wettedness(), body.wettednessAsked(), model.wettest(), standardEffectiveC);
    }
}
