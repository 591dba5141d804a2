package campcloth.event;

import campcloth.figure.Range;
import java.util.Optional;

/**
 * An open fire and the wearer's place at it.
 *
 * @param role what the wearer does there
 * @param distanceM from the fire's centre, m; empty where nobody said: rules then hold as if it were nothing, the hazard is graded as
 *     near (passing and seated at 1.5 m, cooking, tending and carrying at the flame)
 * @param fireKw heat release, kW; empty where nobody said
 */
public record OpenFire(FireRole role, Optional<Double> distanceM, Optional<Double> fireKw) {

    private static final Range DISTANCE = new Range("distanceM", 0.1, 1000, "m");
    private static final Range SIZE = new Range("fireKw", 1, 1000, "kW");

    public OpenFire {
        distanceM.ifPresent(DISTANCE::check);
        fireKw.ifPresent(SIZE::check);
    }
}
