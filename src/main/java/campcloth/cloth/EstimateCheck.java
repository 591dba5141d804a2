package campcloth.cloth;

import campcloth.figure.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An estimate of a cloth held against what is known of its neighbours. A look at whether the interval is believable, not a
 * correction: a neighbour is another cloth, and what is known of it may itself be only usual for its sort.
 *
 * @param property which figure
 * @param estimate the estimate of the cloth that was asked about
 * @param within ids of the neighbours whose known value lies within its interval
 * @param outside ids of those whose known value does not
 */
public record EstimateCheck(Property property, Figure estimate, List<String> within, List<String> outside) {

    /** How the neighbours that know the figure stand to the estimate. */
    public enum Agreement {
        ALL_WITHIN,
        SOME_WITHIN,
        NONE_WITHIN,
        /** None of the neighbours that are near enough has the figure. */
        NOBODY_KNOWS
    }

    public EstimateCheck {
        within = List.copyOf(within);
        outside = List.copyOf(outside);
    }

    /** Against those neighbours that are near enough to compare with. */
    static EstimateCheck of(Property property, Figure estimate, List<Neighbour> neighbours) {
        List<String> within = new ArrayList<>();
        List<String> outside = new ArrayList<>();
        for (Neighbour neighbour : neighbours) {
            if (neighbour.kinship().closeness() == Kinship.Closeness.DISTANT) {
                continue;
            }
            Optional<Figure> known = Trait.known(neighbour.kept().cloth(), property);
            known.ifPresent(figure -> (holds(estimate, figure.value()) ? within : outside)
                    .add(neighbour.kept().id()));
        }
        return new EstimateCheck(property, estimate, within, outside);
    }

    public Agreement agreement() {
        if (within.isEmpty()) {
            return outside.isEmpty() ? Agreement.NOBODY_KNOWS : Agreement.NONE_WITHIN;
        }
        return outside.isEmpty() ? Agreement.ALL_WITHIN : Agreement.SOME_WITHIN;
    }

    private static boolean holds(Figure estimate, double value) {
        return estimate.low() <= value && value <= estimate.high();
    }
}
