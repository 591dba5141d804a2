package campcloth.store;

import campcloth.cloth.Bases;
import campcloth.cloth.ClothFacets;
import campcloth.cloth.ClothFacets.Count;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.ClothTraits;
import campcloth.cloth.Property;
import campcloth.cloth.WeightClass;
import campcloth.store.ClothWhere.Facet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntFunction;

/**
 * What {@link ClothCounts} counts by SQL, for a search without words: one walk over the columns in memory. A cloth that fails no facet
 * counts for all of them, one that fails a single facet counts for that alone.
 */
final class CountsInMemory {

    private static final int WEIGHT_CLASSES = WeightClass.values().length;

    private final ClothSearch search;
    private final Columns columns;
    private final IndexedTraits.Seen seen;
    private final boolean[] inFibre;
    private final boolean[] inSeason;
    private final boolean[] inGrade;

    private final long[] byMake;
    private final long[] byClass = new long[WEIGHT_CLASSES + 1];
    private final long[] bySeason;
    private final long[] byGrade;
    private double least = Double.POSITIVE_INFINITY;
    private double most = Double.NEGATIVE_INFINITY;
    private long withoutPrice;
    private long total;

    private CountsInMemory(ClothSearch search, Columns columns, IndexedTraits.Seen seen) {
        this.search = search;
        this.columns = columns;
        this.seen = seen;
        int kinds = seen.traits().length;
        this.inFibre = matching(columns.makes(), search.fibres(), this::fibres);
        this.inSeason = matching(kinds, search.seasons(), kind -> traits(kind).seasons());
        this.inGrade =
                matching(kinds, search.fireGrades(), kind -> Set.of(traits(kind).fireGrade()));
        this.byMake = new long[columns.makes()];
        this.bySeason = new long[kinds];
        this.byGrade = new long[kinds];
    }

    /** @param columns those of the cloths that the asker sees */
    static CountsInMemory of(ClothSearch search, Columns columns, IndexedTraits.Seen seen) {
        CountsInMemory counts = new CountsInMemory(search, columns, seen);
        for (int row = 0; row < columns.rows(); row++) {
            if (columns.holds(row) && seen.kind(row) != 0) {
                counts.look(row);
            }
        }
        return counts;
    }

    private ClothTraits traits(int kind) {
        return kind == 0 ? new ClothTraits(Set.of(), "") : seen.traits()[kind];
    }

    private List<String> fibres(int make) {
        return columns.makeNumbered(make).blend().shares().stream()
                .map(share -> share.fibre().key())
                .toList();
    }

    private static boolean[] matching(int count, Set<String> wanted, IntFunction<? extends Iterable<String>> values) {
        boolean[] matching = new boolean[count];
        for (int i = 0; i < count; i++) {
            matching[i] = wanted.isEmpty();
            for (String value : values.apply(i)) {
                matching[i] |= wanted.contains(value);
            }
        }
        return matching;
    }

    private void look(int row) {
        Bases bases = columns.bases(row);
        boolean weighed = bases.isWritten(Property.WEIGHT_GSM);
        double gsm = columns.weightGsm(row);
        if (!within(weighed, gsm, search.minWeightGsm(), search.maxWeightGsm())
                || !search.origins().isEmpty() && !search.origins().contains(columns.origin(row))) {
            return;
        }
        int make = columns.make(row);
        int kind = seen.kind(row);
        int weightClass = weighed ? WeightClass.of(gsm).ordinal() : WEIGHT_CLASSES;
        boolean priced = bases.isWritten(Property.PRICE_PER_METRE);
        double price = columns.pricePerMetre(row);
        int failed = failed(Facet.FIBRE, inFibre[make])
                | failed(Facet.WEIGHT_CLASS, search.weightClasses().isEmpty() || weighed && isWanted(weightClass))
                | failed(Facet.SEASON, inSeason[kind])
                | failed(Facet.FIRE_GRADE, inGrade[kind])
                | failed(Facet.PRICE, within(priced, price, search.minPricePerMetre(), search.maxPricePerMetre()));
        total += failed == 0 ? 1 : 0;
        byMake[make] += counts(Facet.FIBRE, failed);
        byClass[weightClass] += counts(Facet.WEIGHT_CLASS, failed);
        bySeason[kind] += counts(Facet.SEASON, failed);
        byGrade[kind] += counts(Facet.FIRE_GRADE, failed);
        if (counts(Facet.PRICE, failed) == 1) {
            withoutPrice += priced ? 0 : 1;
            least = priced ? Math.min(least, price) : least;
            most = priced ? Math.max(most, price) : most;
        }
    }

    private boolean isWanted(int weightClass) {
        return search.weightClasses().contains(WeightClass.values()[weightClass]);
    }

    private static int failed(Facet facet, boolean matches) {
        return matches ? 0 : 1 << facet.ordinal();
    }

    /** 1 where no other facet failed. */
    private static int counts(Facet facet, int failed) {
        return (failed & ~(1 << facet.ordinal())) == 0 ? 1 : 0;
    }

    private static boolean within(boolean known, double value, Optional<Double> least, Optional<Double> most) {
        return least.isEmpty() && most.isEmpty()
                || known
                        && value >= least.orElse(Double.NEGATIVE_INFINITY)
                        && value <= most.orElse(Double.POSITIVE_INFINITY);
    }

    long total() {
        return total;
    }

    ClothFacets facets() {
        return new ClothFacets(
                facet(byMake, this::fibres),
                facet(
                        byClass,
                        number -> number == WEIGHT_CLASSES ? List.of() : List.of(WeightClass.values()[number].name())),
                facet(bySeason, kind -> List.copyOf(traits(kind).seasons())),
                facet(byGrade, kind -> List.of(traits(kind).fireGrade())),
                new ClothFacets.Prices(
                        Optional.of(least).filter(Double::isFinite),
                        Optional.of(most).filter(Double::isFinite),
                        withoutPrice));
    }

    /** By value what was counted by a number that stands for some. */
    private static ClothFacets.Facet facet(long[] counted, IntFunction<List<String>> values) {
        Map<String, Long> counts = new HashMap<>();
        long without = 0;
        for (int number = 0; number < counted.length; number++) {
            if (counted[number] > 0) {
                List<String> of = values.apply(number);
                without += of.isEmpty() ? counted[number] : 0;
                for (String value : of) {
                    counts.merge(value, counted[number], Long::sum);
                }
            }
        }
        return new ClothFacets.Facet(mostFrequentFirst(counts), without);
    }

    static List<Count> mostFrequentFirst(Map<String, Long> counts) {
        return new TreeMap<>(counts)
                .entrySet().stream()
                        .map(counted -> new Count(counted.getKey(), counted.getValue()))
                        .sorted(Comparator.comparingLong(Count::count).reversed())
                        .toList();
    }
}
