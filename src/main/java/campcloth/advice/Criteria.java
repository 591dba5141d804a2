package campcloth.advice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The criteria, in the order they are told. To add one, write its class and put it here, and into {@link QuickPass}. */
final class Criteria {

    static final Criterion WARMTH = new Warmth();
    static final Criterion HEAT = new Heat();
    static final Criterion BREATHABILITY = new Breathability();
    static final Criterion ITCH = new Itch();
    static final Criterion FIRE = new Fire();
    static final Criterion WEIGHT = new Weight();

    static final List<Criterion> ALL = List.of(WARMTH, HEAT, BREATHABILITY, ITCH, FIRE, WEIGHT);

    private Criteria() {}

    /** How much each criterion counts at an event, by name and in order; together 1. */
    static Map<String, Double> weights(Demands demands) {
        double sum = ALL.stream().mapToDouble(c -> c.weight(demands)).sum();
        Map<String, Double> weights = new LinkedHashMap<>();
        ALL.forEach(c -> weights.put(c.name(), c.weight(demands) / sum));
        return weights;
    }
}
