package campcloth.advice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The criteria, in the order they are told. To add one, write its class and put it here. */
final class Criteria {

    static final List<Criterion> ALL =
            List.of(new Warmth(), new Heat(), new Breathability(), new Itch(), new Fire(), new Weight());

    private Criteria() {}

    /** How much each criterion counts at an event, by name and in order; together 1. */
    static Map<String, Double> weights(Demands demands) {
        double sum = ALL.stream().mapToDouble(c -> c.weight(demands)).sum();
        Map<String, Double> weights = new LinkedHashMap<>();
        ALL.forEach(c -> weights.put(c.name(), c.weight(demands) / sum));
        return weights;
    }
}
