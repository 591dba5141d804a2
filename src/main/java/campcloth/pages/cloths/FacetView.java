package campcloth.pages.cloths;

import campcloth.cloth.ClothFacets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A facet to tick values of.
 *
 * @param name parameter of the address
 * @param values those that occur and those that are chosen
 * @param without number of cloths with none of them
 */
public record FacetView(String name, List<Value> values, long without) {

    /**
     * One value.
     *
     * @param value as it is sent
     * @param label as it is read; empty where the page has a text for it
     * @param count number of cloths that choosing it alone would leave
     */
    public record Value(String value, String label, long count, boolean chosen) {}

    /**
     * A facet.
     *
     * @param ordered all values in the order to show them in; empty where the most frequent come first
     * @param chosen those that are ticked
     * @param label turns a value into words; into nothing where the page has a text for it
     */
    static FacetView of(
            String name,
            ClothFacets.Facet facet,
            List<String> ordered,
            List<String> chosen,
            UnaryOperator<String> label) {
        List<String> values = new ArrayList<>(ordered);
        facet.values().stream()
                .map(ClothFacets.Count::value)
                .filter(value -> !values.contains(value))
                .forEach(values::add);
        chosen.stream().filter(value -> !values.contains(value)).forEach(values::add);
        return new FacetView(
                name,
                values.stream()
                        .map(value -> new Value(value, label.apply(value), count(facet, value), chosen.contains(value)))
                        .toList(),
                facet.without());
    }

    private static long count(ClothFacets.Facet facet, String value) {
        return facet.values().stream()
                .filter(count -> count.value().equals(value))
                .mapToLong(ClothFacets.Count::count)
                .sum();
    }
}
