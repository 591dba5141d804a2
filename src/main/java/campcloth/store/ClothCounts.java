package campcloth.store;

import campcloth.cloth.ClothFacets;
import campcloth.cloth.ClothFacets.Count;
import campcloth.store.ClothWhere.Facet;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How many cloths match, and how many of them by each facet: in one look at the rows that the words and the weight leave. */
final class ClothCounts {

    /** One row of the answer: a facet's value with its count, the value empty for cloths without; prices only for prices. */
    record Row(
            String of,
            @Nullable String value,
            long count,
            @Nullable Double least,
            @Nullable Double most) {}

    private static final String ALL = "ALL";

    /** The prices of what is left when they do not narrow. */
    private static final String PRICES = """
            select 'PRICE' as of, null as value, count(*) filter (where price_per_metre is null) as count,
                min(price_per_metre) as least, max(price_per_metre) as most
            from hit where %s""";

    private static final String VALUES = """
            select '%s' as of, %s as value, count(*) as count, null as least, null as most
            from hit%s where %s group by 2""";

    private final Map<Facet, List<Row>> rows = new EnumMap<>(Facet.class);
    private long total;

    private ClothCounts() {}

    /** The query for what {@link #of} reads. */
    static String sql(ClothReading reading, ClothWhere where) {
        return String.join(
                "\n",
                "with hit as materialized (select fibres, weight_class, seasons, fire_grade, price_per_metre from"
                        + " cloth_index",
                "where " + reading.condition() + " and " + where.uncounted() + ")",
                "select '" + ALL
                        + "' as of, null as value, count(*) as count, cast(null as double precision) as least,",
                "cast(null as double precision) as most from hit where " + where.facetsBut(),
                "union all",
                VALUES.formatted(Facet.FIBRE, "one", unnested("fibres"), where.facetsBut(Facet.FIBRE)),
                "union all",
                VALUES.formatted(Facet.WEIGHT_CLASS, "weight_class", "", where.facetsBut(Facet.WEIGHT_CLASS)),
                "union all",
                VALUES.formatted(Facet.SEASON, "one", unnested("seasons"), where.facetsBut(Facet.SEASON)),
                "union all",
                VALUES.formatted(Facet.FIRE_GRADE, "fire_grade", "", where.facetsBut(Facet.FIRE_GRADE)),
                "union all",
                PRICES.formatted(where.facetsBut(Facet.PRICE)),
                "order by count desc, value");
    }

    static ClothCounts of(List<Row> all) {
        ClothCounts counts = new ClothCounts();
        for (Row row : all) {
            if (row.of().equals(ALL)) {
                counts.total = row.count();
            } else {
                counts.rows
                        .computeIfAbsent(Facet.valueOf(row.of()), facet -> new ArrayList<>())
                        .add(row);
            }
        }
        return counts;
    }

    long total() {
        return total;
    }

    ClothFacets facets() {
        return new ClothFacets(
                facet(Facet.FIBRE), facet(Facet.WEIGHT_CLASS), facet(Facet.SEASON), facet(Facet.FIRE_GRADE), prices());
    }

    private ClothFacets.Facet facet(Facet facet) {
        List<Count> values = new ArrayList<>();
        long without = 0;
        for (Row row : rows.getOrDefault(facet, List.of())) {
            if (row.value() == null) {
                without = row.count();
            } else {
                values.add(new Count(row.value(), row.count()));
            }
        }
        return new ClothFacets.Facet(values, without);
    }

    private ClothFacets.Prices prices() {
        Row row = rows.getOrDefault(Facet.PRICE, List.of()).get(0);
        return new ClothFacets.Prices(Optional.ofNullable(row.least()), Optional.ofNullable(row.most()), row.count());
    }

    private static String unnested(String column) {
        return " left join lateral unnest(" + column + ") as one on true";
    }
}
