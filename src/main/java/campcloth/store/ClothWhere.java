package campcloth.store;

import campcloth.cloth.ClothSearch;
import campcloth.cloth.WeightClass;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The conditions of a search in SQL, but for its words. All that anybody wrote goes in as parameters.
 *
 * @param uncounted what no facet counts: who may see it, the bounds of weight, and the origin
 * @param byFacet the condition of each facet
 * @param params values of the parameters
 */
record ClothWhere(String uncounted, Map<Facet, String> byFacet, Map<String, Object> params) {

    /** A condition that does not narrow. */
    static final String ALWAYS = "true";

    /** What a result is counted by. */
    enum Facet {
        FIBRE,
        WEIGHT_CLASS,
        SEASON,
        FIRE_GRADE,
        PRICE
    }

    /** @param listed which cloths the asker sees, as a condition */
    static ClothWhere of(ClothSearch search, String listed) {
        Map<String, Object> params = new HashMap<>();
        Map<Facet, String> facets = new EnumMap<>(Facet.class);
        facets.put(Facet.FIBRE, listed("fibres && cast(:fibres as text[])", "fibres", search.fibres(), params));
        facets.put(
                Facet.WEIGHT_CLASS,
                listed(
                        "weight_class = any(cast(:classes as text[]))",
                        "classes",
                        search.weightClasses().stream().map(WeightClass::name).toList(),
                        params));
        facets.put(Facet.SEASON, listed("seasons && cast(:seasons as text[])", "seasons", search.seasons(), params));
        facets.put(
                Facet.FIRE_GRADE,
                listed("fire_grade = any(cast(:grades as text[]))", "grades", search.fireGrades(), params));
        facets.put(
                Facet.PRICE, between("price_per_metre", search.minPricePerMetre(), search.maxPricePerMetre(), params));
        String weight = between("weight_gsm", search.minWeightGsm(), search.maxWeightGsm(), params);
        String origin = listed(
                "cloth_id in (select id from cloth where origin = any(cast(:origins as text[])))",
                "origins",
                search.origins().stream().map(Enum::name).toList(),
                params);
        return new ClothWhere(listed + " and " + weight + " and " + origin, facets, params);
    }

    /** The conditions of all facets but those. */
    String facetsBut(Facet... own) {
        return byFacet.entrySet().stream()
                .filter(facet -> !Arrays.asList(own).contains(facet.getKey()))
                .map(Map.Entry::getValue)
                .filter(condition -> !condition.equals(ALWAYS))
                .reduce((one, other) -> one + " and " + other)
                .orElse(ALWAYS);
    }

    private static String listed(String condition, String name, Collection<String> values, Map<String, Object> params) {
        if (values.isEmpty()) {
            return ALWAYS;
        }
        params.put(name, values.toArray(String[]::new));
        return condition;
    }

    private static String between(
            String column, Optional<Double> least, Optional<Double> most, Map<String, Object> params) {
        least.ifPresent(value -> params.put("least_" + column, value));
        most.ifPresent(value -> params.put("most_" + column, value));
        String from = least.map(value -> column + " >= :least_" + column).orElse("");
        String to = most.map(value -> column + " <= :most_" + column).orElse("");
        String both = Stream.of(from, to).filter(bound -> !bound.isEmpty()).collect(Collectors.joining(" and "));
        return both.isEmpty() ? ALWAYS : both;
    }
}
