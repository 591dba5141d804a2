package campcloth.cloth;

import campcloth.figure.Basis;
import campcloth.figure.Range;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Predicate;

/**
 * The cloths of a catalogue that are most like a cloth, and its estimates held against what is known of them.
 *
 * @param completed the cloth that was asked about, with its estimates
 * @param neighbours the nearest first; as near, by id
 * @param checks each of its figures that is estimated
 */
public record Alike(Cloth completed, List<Neighbour> neighbours, List<EstimateCheck> checks) {

    /** How many neighbours can be asked for. */
    public static final Range LIMIT = new Range("limit", 1, 50, "neighbours");

    private static final Comparator<Found> NEAREST_FIRST = Comparator.comparingDouble(Found::distance)
            .thenComparing(found -> found.kept().id());

    private record Found(KeptCloth kept, double distance) {}

    public Alike {
        neighbours = List.copyOf(neighbours);
        checks = List.copyOf(checks);
    }

    /** For a cloth that is not kept. */
    public static Alike to(Cloth asked, Collection<KeptCloth> catalogue, int limit) {
        return of(asked, catalogue, limit, kept -> true);
    }

    /** For a cloth of the catalogue, which is no neighbour of itself. */
    public static Alike to(KeptCloth asked, Collection<KeptCloth> catalogue, int limit) {
        return of(asked.cloth(), catalogue, limit, kept -> !kept.id().equals(asked.id()));
    }

    private static Alike of(Cloth asked, Collection<KeptCloth> catalogue, int limit, Predicate<KeptCloth> counts) {
        LIMIT.check(limit);
        Cloth completed = Estimates.complete(asked);
        List<Neighbour> neighbours = nearest(asked, catalogue, limit, counts).stream()
                .map(kept -> new Neighbour(kept, Kinship.between(asked, kept.cloth())))
                .toList();
        List<EstimateCheck> checks = new ArrayList<>();
        completed.figures().forEach((property, figure) -> {
            if (figure.basis() == Basis.ESTIMATED) {
                checks.add(EstimateCheck.of(property, figure, neighbours));
            }
        });
        return new Alike(completed, neighbours, checks);
    }

    /** One pass that never holds more than one cloth beyond the limit. */
    private static List<KeptCloth> nearest(
            Cloth asked, Collection<KeptCloth> catalogue, int limit, Predicate<KeptCloth> counts) {
        PriorityQueue<Found> nearest = new PriorityQueue<>(limit + 1, NEAREST_FIRST.reversed());
        for (KeptCloth kept : catalogue) {
            if (counts.test(kept)) {
                nearest.add(new Found(kept, Kinship.distance(asked, kept.cloth())));
            }
            if (nearest.size() > limit) {
                nearest.remove();
            }
        }
        return nearest.stream().sorted(NEAREST_FIRST).map(Found::kept).toList();
    }
}
