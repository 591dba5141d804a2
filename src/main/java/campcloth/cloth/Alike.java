package campcloth.cloth;

import campcloth.figure.Basis;
import campcloth.figure.Range;
import java.util.ArrayList;
import java.util.List;

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

    public Alike {
        neighbours = List.copyOf(neighbours);
        checks = List.copyOf(checks);
    }

    /** For a cloth that is not kept. */
    public static Alike to(Cloth asked, Cloths catalogue, int limit) {
        return of(asked, catalogue, limit, "");
    }

    /** For a cloth of the catalogue, which is no neighbour of itself. */
    public static Alike to(KeptCloth asked, Cloths catalogue, int limit) {
        return of(asked.cloth(), catalogue, limit, asked.id());
    }

    private static Alike of(Cloth asked, Cloths catalogue, int limit, String but) {
        LIMIT.check(limit);
        Cloth completed = Estimates.complete(asked);
        List<String> nearest = Nearest.ids(asked, catalogue.columns(ClothSearch.EVERYTHING), limit, but);
        List<Neighbour> neighbours = catalogue.byIds(nearest).stream()
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
}
