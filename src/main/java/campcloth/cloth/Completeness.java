package campcloth.cloth;

import campcloth.cloth.KeptCloth.Origin;
import campcloth.fibre.Blend;
import campcloth.figure.Basis;
import campcloth.figure.Range;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * How much is known of the cloths of a catalogue: of each property, how it is known of how many cloths.
 *
 * @param whole over all cloths
 * @param byOrigin the same by who put them there; an origin that no cloth has is left out
 * @param worthMeasuring the cloths that would gain most from measuring, fewest known figures first, then by id
 */
public record Completeness(Tally whole, Map<Origin, Tally> byOrigin, List<Gap> worthMeasuring) {

    /** How many cloths that are worth measuring can be asked for. */
    public static final Range LIMIT = new Range("limit", 0, 100, "cloths");

    private static final Property[] PROPERTIES = Property.values();

    /** See {@link Bases#places}. */
    private static final int OF_HAIR = Bases.places(measurable(true));

    private static final int OF_OTHERS = Bases.places(measurable(false));

    private static final Comparator<Gap> FEWEST_KNOWN_FIRST = Comparator.comparingDouble(Gap::knownShare)
            .thenComparing(gap -> gap.kept().id());

    public Completeness {
        byOrigin = Collections.unmodifiableMap(byOrigin);
        worthMeasuring = List.copyOf(worthMeasuring);
    }

    /**
     * What is not known of a cloth and could be measured. Measured can be every property but the price; fibre diameters only
     * where there is wool or hair.
     *
     * @param kept the cloth
     * @param measurable how many of its properties could be measured
     * @param missing those that nobody measured, declared or published; at least one
     */
    public record Gap(KeptCloth kept, int measurable, List<Property> missing) {

        public int known() {
            return measurable - missing.size();
        }

        double knownShare() {
            return (double) known() / measurable;
        }

        static Optional<Gap> of(KeptCloth kept) {
            List<Property> measurable = measurableOf(kept.cloth());
            List<Property> missing = measurable.stream()
                    .filter(property -> Trait.known(kept.cloth(), property).isEmpty())
                    .toList();
            return missing.isEmpty() ? Optional.empty() : Optional.of(new Gap(kept, measurable.size(), missing));
        }
    }

    /**
     * How much is known of one cloth.
     *
     * @param known how many figures were measured, declared or published
     * @param measurable how many could be measured
     */
    public record Known(int known, int measurable) {

        public static Known of(Cloth cloth) {
            List<Property> measurable = measurableOf(cloth);
            long known = measurable.stream()
                    .filter(property -> Trait.known(cloth, property).isPresent())
                    .count();
            return new Known((int) known, measurable.size());
        }
    }

    private static List<Property> measurableOf(Cloth cloth) {
        return measurable(isHairy(cloth.blend()));
    }

    private static List<Property> measurable(boolean hairy) {
        return Arrays.stream(PROPERTIES)
                .filter(property -> isMeasurable(property, hairy))
                .toList();
    }

    private static boolean isHairy(Blend blend) {
        return FibreKind.percentIn(blend, FibreKind.HAIR) > 0;
    }

    private static boolean isMeasurable(Property property, boolean hairy) {
        boolean ofHair = property == Property.FIBRE_DIAMETER_UM || property == Property.FIBRE_DIAMETER_CV_PERCENT;
        return property != Property.PRICE_PER_METRE && (hairy || !ofHair);
    }

    /** Looks at the columns of each cloth once; only those worth measuring are read whole. */
    public static Completeness of(Cloths cloths, int limit) {
        LIMIT.check(limit);
        ClothColumns columns = cloths.columns(ClothSearch.EVERYTHING);
        boolean[] hairy = new boolean[columns.makes()];
        for (int make = 0; make < hairy.length; make++) {
            hairy[make] = isHairy(columns.makeNumbered(make).blend());
        }
        Map<Origin, Tally> byOrigin = new EnumMap<>(Origin.class);
        Poorest poorest = new Poorest(limit);
        for (int row = 0; row < columns.rows(); row++) {
            if (columns.holds(row)) {
                Bases bases = columns.bases(row);
                byOrigin.computeIfAbsent(columns.origin(row), origin -> new Tally())
                        .count(bases);
                int places = hairy[columns.make(row)] ? OF_HAIR : OF_OTHERS;
                poorest.look(columns, row, (double) bases.known(places) / Integer.bitCount(places));
            }
        }
        Tally whole = new Tally();
        byOrigin.values().forEach(whole::add);
        List<Gap> gaps = cloths.byIds(poorest.ids()).stream()
                .flatMap(kept -> Gap.of(kept).stream())
                .sorted(FEWEST_KNOWN_FIRST)
                .toList();
        return new Completeness(whole, byOrigin, gaps);
    }

    /** The rows of which the smallest share is known, no more than are asked for; then by id. */
    private static final class Poorest {

        private record Row(double share, String id) {}

        private static final Comparator<Row> FIRST =
                Comparator.comparingDouble(Row::share).thenComparing(Row::id);

        private final int limit;
        private final PriorityQueue<Row> rows = new PriorityQueue<>(FIRST.reversed());

        Poorest(int limit) {
            this.limit = limit;
        }

        void look(ClothColumns columns, int row, double share) {
            Row last = rows.peek();
            if (share < 1 && (rows.size() < limit || last != null && share <= last.share())) {
                rows.add(new Row(share, columns.id(row)));
                if (rows.size() > limit) {
                    rows.remove();
                }
            }
        }

        List<String> ids() {
            return rows.stream().map(Row::id).toList();
        }
    }

    /** How many cloths there are and how each of their properties is known. */
    public static final class Tally {

        /** By property, then by {@link Bases#code}. */
        private final long[][] counts = new long[PROPERTIES.length][Basis.values().length + 1];

        private long cloths;

        private Tally() {}

        private void count(Bases bases) {
            cloths++;
            for (Property property : PROPERTIES) {
                counts[property.ordinal()][bases.code(property)]++;
            }
        }

        private void add(Tally other) {
            cloths += other.cloths;
            for (int property = 0; property < counts.length; property++) {
                for (int code = 0; code < counts[property].length; code++) {
                    counts[property][code] += other.counts[property][code];
                }
            }
        }

        public long cloths() {
            return cloths;
        }

        /** Cloths of which the property is known in that way; what is not written is estimated, but for the price. */
        public long cloths(Property property, Basis basis) {
            long computed = basis == Basis.ESTIMATED ? unwritten(property) - clothsWithout(property) : 0;
            return counts[property.ordinal()][basis.ordinal() + 1] + computed;
        }

        /** Cloths of which the property is neither known nor estimated: the price alone, which is never computed. */
        public long clothsWithout(Property property) {
            return property == Property.PRICE_PER_METRE ? unwritten(property) : 0;
        }

        private long unwritten(Property property) {
            return counts[property.ordinal()][0];
        }
    }
}
