package campcloth.cloth;

import campcloth.cloth.MeasuredCloth.Comparison;
import campcloth.cloth.MeasuredCloth.Use;
import campcloth.figure.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The table of estimates against measured cloth that DEVELOPERS.md shows. */
final class MeasuredTable {

    static final Map<Property, String> PROPERTIES = properties();

    private MeasuredTable() {}

    private static Map<Property, String> properties() {
        Map<Property, String> names = new LinkedHashMap<>();
        names.put(Property.THICKNESS_MM, "thickness");
        names.put(Property.AIR_PERMEABILITY_MM_S, "air permeability");
        return names;
    }

    /** The table in Markdown, without a line end. */
    static String markdown() {
        return PROPERTIES.entrySet().stream()
                .map(entry -> row(entry.getValue(), MeasuredCloth.comparisons(entry.getKey())))
                .collect(Collectors.joining("\n", """
                        | figure | cloths | median of estimate over measured | 80 % of the ratios | measured lies in our interval | of those held out |
                        | --- | --- | --- | --- | --- | --- |
                        """, ""));
    }

    private static String row(String name, List<Comparison> rows) {
        return "| "
                + String.join(
                        " | ",
                        name,
                        Integer.toString(rows.size()),
                        Words.fixed(ratioAt(0.5, rows), 2),
                        Words.fixed(ratioAt(0.1, rows), 2) + " to " + Words.fixed(ratioAt(0.9, rows), 2),
                        inside(rows),
                        inside(rows.stream()
                                .filter(row -> row.cloth().use() == Use.HELD_OUT)
                                .toList()))
                + " |";
    }

    private static String inside(List<Comparison> rows) {
        long inside = rows.stream().filter(Comparison::inside).count();
        return inside + " of " + rows.size() + ", " + Words.fixed(100 * coverage(rows), 0) + " %";
    }

    /** Share of the rows whose measured figure lies in our interval. */
    static double coverage(List<Comparison> rows) {
        return (double) rows.stream().filter(Comparison::inside).count() / rows.size();
    }

    /** Quantile of estimate over measured, interpolated between neighbours. */
    static double ratioAt(double quantile, List<Comparison> rows) {
        double[] ratios = rows.stream().mapToDouble(Comparison::ratio).sorted().toArray();
        double place = quantile * (ratios.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, ratios.length - 1);
        return ratios[below] + (place - below) * (ratios[above] - ratios[below]);
    }
}
