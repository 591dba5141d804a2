package campcloth.cloth;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import java.util.Optional;
import java.util.Set;

/**
 * What to look for in the catalogue; everything that is empty does not narrow the search. Of several values of one kind any will do.
 *
 * @param text words, all of which stand in the name, the composition or the note, the last perhaps only begun; at most 200 characters
 * @param fibres keys of fibres, one of which the blend contains
 * @param minWeightGsm least mass per area, g/m2
 * @param maxWeightGsm greatest mass per area, g/m2
 * @param weightClasses classes of mass per area
 * @param seasons names of seasons, one of which the cloth suits: {@link ClothTraits}
 * @param fireGrades names of fire grades: {@link ClothTraits}
 * @param minPricePerMetre least price, EUR/m
 * @param maxPricePerMetre greatest price, EUR/m
 * @param origins who put the cloth there
 */
public record ClothSearch(
        Optional<String> text,
        Set<String> fibres,
        Optional<Double> minWeightGsm,
        Optional<Double> maxWeightGsm,
        Set<WeightClass> weightClasses,
        Set<String> seasons,
        Set<String> fireGrades,
        Optional<Double> minPricePerMetre,
        Optional<Double> maxPricePerMetre,
        Set<KeptCloth.Origin> origins) {

    /** Length of the longest text to look for, characters. */
    public static final int LONGEST_TEXT = 200;

    private static final Range LEAST = new Range("minWeightGsm", 0, 10_000, "g/m2");
    private static final Range MOST = new Range("maxWeightGsm", 0, 10_000, "g/m2");
    private static final Range CHEAPEST = new Range("minPricePerMetre", 0, 10_000, "EUR/m");
    private static final Range DEAREST = new Range("maxPricePerMetre", 0, 10_000, "EUR/m");

    public ClothSearch {
        text.map(String::length).filter(length -> length > LONGEST_TEXT).ifPresent(length -> {
            throw Refused.of(
                    "text", "has " + length + " characters", "keep it to " + LONGEST_TEXT + ": a few words find more");
        });
        minWeightGsm.ifPresent(LEAST::check);
        maxWeightGsm.ifPresent(MOST::check);
        minPricePerMetre.ifPresent(CHEAPEST::check);
        maxPricePerMetre.ifPresent(DEAREST::check);
        fibres = Set.copyOf(fibres);
        weightClasses = Set.copyOf(weightClasses);
        seasons = Set.copyOf(seasons);
        fireGrades = Set.copyOf(fireGrades);
        origins = Set.copyOf(origins);
    }

    /** A search among cloths of every origin. */
    public ClothSearch(
            Optional<String> text,
            Set<String> fibres,
            Optional<Double> minWeightGsm,
            Optional<Double> maxWeightGsm,
            Set<WeightClass> weightClasses,
            Set<String> seasons,
            Set<String> fireGrades,
            Optional<Double> minPricePerMetre,
            Optional<Double> maxPricePerMetre) {
        this(
                text,
                fibres,
                minWeightGsm,
                maxWeightGsm,
                weightClasses,
                seasons,
                fireGrades,
                minPricePerMetre,
                maxPricePerMetre,
                Set.of());
    }

    /** A search by words, fibre and weight. */
    public ClothSearch(
            Optional<String> text, Set<String> fibres, Optional<Double> minWeightGsm, Optional<Double> maxWeightGsm) {
        this(
                text,
                fibres,
                minWeightGsm,
                maxWeightGsm,
                Set.of(),
                Set.of(),
                Set.of(),
                Optional.empty(),
                Optional.empty());
    }

    /** Looks for everything. */
    public static final ClothSearch EVERYTHING =
            new ClothSearch(Optional.empty(), Set.of(), Optional.empty(), Optional.empty());
}
