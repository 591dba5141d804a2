package campcloth.store;

import campcloth.cloth.ClothFacets;
import campcloth.store.ClothWhere.Facet;
import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.RowCallbackHandler;

/**
 * How many cloths match, and how many of them by each facet. One look at the rows that the words and the weight leave, however many they
 * are: they are counted by what stands in each column, and where that is several values (fibres, seasons) they are told apart here.
 */
final class ClothCounts implements RowCallbackHandler {

    /** The columns that are counted by, each for itself; the last rows are of all together. */
    private static final String COLUMNS = "fibres, weight_class, seasons, fire_grade";

    private static final String SETS = "grouping sets ((fibres), (weight_class), (seasons), (fire_grade), ())";

    /** By which column a row of the answer counts: those by which it does not are the bits that are set. */
    private static final String OF = "case grouping(" + COLUMNS + ") when 7 then 'FIBRE' when 11 then 'WEIGHT_CLASS'"
            + " when 13 then 'SEASON' when 14 then 'FIRE_GRADE' else 'PRICE' end";

    /** Those that count values; the prices go with the total. */
    private static final List<Facet> COUNTED = List.of(Facet.FIBRE, Facet.WEIGHT_CLASS, Facet.SEASON, Facet.FIRE_GRADE);

    private final Map<Facet, Map<String, Long>> values = new EnumMap<>(Facet.class);
    private final Map<Facet, Long> without = new EnumMap<>(Facet.class);
    private ClothFacets.Prices prices = new ClothFacets.Prices(Optional.empty(), Optional.empty(), 0);
    private long total;

    /** The query whose rows are read here. */
    static String sql(ClothReading reading, ClothWhere where) {
        String price = where.facetsBut(Facet.PRICE);
        return "select " + OF + " as of, " + COLUMNS + ", "
                + COUNTED.stream()
                        .map(facet -> where("count(*)", where.facetsBut(facet)) + " as " + name(facet) + ", ")
                        .collect(Collectors.joining())
                + where("count(*)", where.facetsBut()) + " as total, "
                + where("count(*) ", price) + " - " + where("count(price_per_metre)", price) + " as no_price, "
                + where("min(price_per_metre)", price) + " as least, "
                + where("max(price_per_metre)", price) + " as most from cloth_index where "
                + reading.condition() + " and " + where.uncounted() + " group by " + SETS;
    }

    private static String where(String aggregate, String condition) {
        return condition.equals(ClothWhere.ALWAYS) ? aggregate : aggregate + " filter (where " + condition + ")";
    }

    private static String name(Facet facet) {
        return "by_" + facet.name();
    }

    @Override
    public void processRow(ResultSet row) throws SQLException {
        Facet facet = Facet.valueOf(row.getString("of"));
        switch (facet) {
            case FIBRE -> count(facet, row, several(row.getArray("fibres")));
            case WEIGHT_CLASS -> count(facet, row, one(row.getString("weight_class")));
            case SEASON -> count(facet, row, several(row.getArray("seasons")));
            case FIRE_GRADE -> count(facet, row, one(row.getString("fire_grade")));
            case PRICE -> {
                total = row.getLong("total");
                prices = new ClothFacets.Prices(
                        Optional.ofNullable(row.getObject("least", Double.class)),
                        Optional.ofNullable(row.getObject("most", Double.class)),
                        row.getLong("no_price"));
            }
        }
    }

    private void count(Facet facet, ResultSet row, List<String> held) throws SQLException {
        long count = row.getLong(name(facet));
        if (count == 0) {
            return;
        }
        if (held.isEmpty()) {
            without.merge(facet, count, Long::sum);
        }
        for (String value : new HashSet<>(held)) {
            of(facet).merge(value, count, Long::sum);
        }
    }

    private static List<String> one(@Nullable String value) {
        return Stream.ofNullable(value).toList();
    }

    private static List<String> several(Array values) throws SQLException {
        return List.of((String[]) values.getArray());
    }

    private Map<String, Long> of(Facet facet) {
        return values.computeIfAbsent(facet, any -> new HashMap<>());
    }

    long total() {
        return total;
    }

    ClothFacets facets() {
        return new ClothFacets(
                facet(Facet.FIBRE), facet(Facet.WEIGHT_CLASS), facet(Facet.SEASON), facet(Facet.FIRE_GRADE), prices);
    }

    private ClothFacets.Facet facet(Facet facet) {
        return new ClothFacets.Facet(CountsInMemory.mostFrequentFirst(of(facet)), without.getOrDefault(facet, 0L));
    }
}
