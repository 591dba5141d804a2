package campcloth.fire;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Figure;
import java.util.Optional;

/**
 * Where the first part of a cloth softens: the low end of what is known of the fibre; for film, wax and what is not named, of the
 * fibre that softens first.
 *
 * @param part which part, as in {@code its polyester softens}
 * @param clothC where it softens, degrees Celsius
 */
public record Softening(String part, double clothC) {

    /** Low end for polylactide, the fibre that softens first, degrees Celsius (from memory). */
    private static final double EARLIEST_C = 55;

    /** Of a cloth as it is worn; empty where nothing in it softens. */
    static Optional<Softening> of(WornCloth cloth) {
        Optional<Softening> first =
                cloth.hasFilm() ? Optional.of(new Softening("film or wax", EARLIEST_C)) : Optional.empty();
        for (Blend.Share share : cloth.blend().shares()) {
            if (share.fibre().family().countsAsMeltable()) {
                Softening next = of(share.fibre());
                first = first.filter(f -> f.clothC <= next.clothC).or(() -> Optional.of(next));
            }
        }
        return first;
    }

    private static Softening of(Fibre fibre) {
        return fibre.family() == FibreFamily.UNNAMED
                ? new Softening("unnamed fibre", EARLIEST_C)
                : new Softening(
                        fibre.name(),
                        fibre.softensC().or(fibre::meltsC).map(Figure::low).orElse(EARLIEST_C));
    }
}
