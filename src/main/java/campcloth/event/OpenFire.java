package campcloth.event;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.util.Optional;

/**
 * An open fire and the wearer's place at it. Where both a heat release and a kind are given, the heat release counts and the kind
 * only names the fire.
 *
 * @param role what the wearer does there
 * @param distanceM from the fire's centre, m; empty where nobody said: rules then hold as if it were nothing, the hazard is graded as
 *     near (passing and seated at 1.5 m, cooking, tending and carrying at the flame)
 * @param fireKw heat release, kW; empty where nobody said
 * @param kind what people call it; empty where nobody said
 */
public record OpenFire(FireRole role, Optional<Double> distanceM, Optional<Double> fireKw, Optional<FireKind> kind) {

    private static final double LARGEST_KW = 1000;
    private static final Range DISTANCE = new Range("distanceM", 0.1, 1000, "m");
    private static final Range SIZE = new Range("fireKw", 1, LARGEST_KW, "kW");

    public OpenFire {
        check(distanceM, fireKw);
    }

    /** A fire that nobody named. */
    public OpenFire(FireRole role, Optional<Double> distanceM, Optional<Double> fireKw) {
        this(role, distanceM, fireKw, Optional.empty());
    }

    /** Heat release as given, or that of its kind, kW; empty where neither was. */
    public Optional<Double> heatKw() {
        return fireKw.or(() -> kind.map(FireKind::usualKw));
    }

    /** Refuses a place or a fire that is outside what is advised on. */
    public static void check(Optional<Double> distanceM, Optional<Double> fireKw) {
        distanceM.ifPresent(DISTANCE::check);
        fireKw.ifPresent(OpenFire::checkSize);
    }

    private static void checkSize(double fireKw) {
        if (Double.isFinite(fireKw) && fireKw > LARGEST_KW) {
            throw Refused.of(
                    "fireKw",
                    "is " + Words.exact(fireKw) + " kW: so large a fire is outside what we advise on",
                    "ask the fire marshal how far to keep from it");
        }
        SIZE.check(fireKw);
    }
}
