package campcloth.cloth;

import campcloth.cloth.KeptCloth.Origin;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Range;
import java.util.ArrayList;
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
        boolean hairy = FibreKind.percentIn(cloth.blend(), FibreKind.HAIR) > 0;
        List<Property> measurable = new ArrayList<>();
        for (Property property : Property.values()) {
            boolean ofHair = property == Property.FIBRE_DIAMETER_UM || property == Property.FIBRE_DIAMETER_CV_PERCENT;
            if (property != Property.PRICE_PER_METRE && (hairy || !ofHair)) {
                measurable.add(property);
            }
        }
        return measurable;
    }

    /** Looks at each cloth once and never holds more than one gap beyond the limit. */
    public static Completeness of(ClothWalk catalogue, int limit) {
        LIMIT.check(limit);
        Tally whole = new Tally();
        Map<Origin, Tally> byOrigin = new EnumMap<>(Origin.class);
        PriorityQueue<Gap> gaps = new PriorityQueue<>(FEWEST_KNOWN_FIRST.reversed());
        catalogue.each(kept -> {
            whole.count(kept.cloth());
            byOrigin.computeIfAbsent(kept.origin(), origin -> new Tally()).count(kept.cloth());
            Gap.of(kept).ifPresent(gaps::add);
            if (gaps.size() > limit) {
                gaps.remove();
            }
        });
        return new Completeness(
                whole, byOrigin, gaps.stream().sorted(FEWEST_KNOWN_FIRST).toList());
    }

    /** How many cloths there are and how each of their properties is known. */
    public static final class Tally {

        private static final int BASES = Basis.values().length;

        private final long[][] counts = new long[Property.values().length][BASES];
        private long cloths;

        private Tally() {}

        private void count(Cloth cloth) {
            cloths++;
            for (Property property : Property.values()) {
                basis(cloth, property).ifPresent(basis -> counts[property.ordinal()][basis.ordinal()]++);
            }
        }

        public long cloths() {
            return cloths;
        }

        /** Cloths of which the property is known in that way. */
        public long cloths(Property property, Basis basis) {
            return counts[property.ordinal()][basis.ordinal()];
        }

        /** Cloths of which the property is neither known nor estimated: the price alone, which is never computed. */
        public long clothsWithout(Property property) {
            long with = 0;
            for (long count : counts[property.ordinal()]) {
                with += count;
            }
            return cloths - with;
        }

        private static Optional<Basis> basis(Cloth cloth, Property property) {
            Optional<Basis> written = cloth.figure(property).map(Figure::basis);
            return property == Property.PRICE_PER_METRE ? written : written.or(() -> Optional.of(Basis.ESTIMATED));
        }
    }
}
