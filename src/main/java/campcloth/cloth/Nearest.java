package campcloth.cloth;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * Which cloths of a catalogue lie nearest to a cloth by {@link Kinship#distance}, one pass over its columns that never holds more
 * than one cloth beyond the limit: all but weight and thickness hangs on the make alone, and makes are few.
 */
final class Nearest {

    private static final Comparator<Found> NEAREST_FIRST =
            Comparator.comparingDouble(Found::distance).thenComparing(Found::id);

    private record Found(String id, double distance) {}

    private final ClothColumns columns;

    private final OptionalDouble weight;
    private final OptionalDouble thickness;

    /** Of the asked cloth with each make, trait by trait. */
    private final double[][] ofMakes;

    private Nearest(Cloth asked, ClothColumns columns) {
        this.columns = columns;
        this.weight = Trait.number(asked, Property.WEIGHT_GSM);
        this.thickness = Trait.number(asked, Property.THICKNESS_MM);
        this.ofMakes = IntStream.range(0, columns.makes())
                .mapToObj(make -> ofMake(asked, columns.makeNumbered(make)))
                .toArray(double[][]::new);
    }

    /** Ids of the nearest, the nearest first; as near, by id. The cloth of the other id is no neighbour. */
    static List<String> ids(Cloth asked, ClothColumns columns, int limit, String but) {
        Nearest nearest = new Nearest(asked, columns);
        PriorityQueue<Found> found = new PriorityQueue<>(limit + 1, NEAREST_FIRST.reversed());
        for (int row = 0; row < columns.rows(); row++) {
            if (!columns.holds(row)) {
                continue;
            }
            double distance = nearest.distance(row);
            if ((found.size() < limit || distance <= found.element().distance())
                    && !columns.id(row).equals(but)) {
                found.add(new Found(columns.id(row), distance));
            }
            if (found.size() > limit) {
                found.remove();
            }
        }
        return found.stream().sorted(NEAREST_FIRST).map(Found::id).toList();
    }

    /** In the order of the traits, so that it is the same to the last digit. */
    private double distance(int row) {
        int make = columns.make(row);
        double sum = 0;
        for (Trait trait : Kinship.TRAITS) {
            sum += switch (trait) {
                case WEIGHT -> Trait.weight(weight, known(!columns.massIsEstimated(row), columns.weightGsm(row)));
                case THICKNESS ->
                    Trait.thickness(thickness, known(columns.thicknessIsKnown(row), columns.thicknessMm(row)));
                case FIBRES, WEAVE, SURFACE, FINISH, STRETCH -> ofMakes[make][trait.ordinal()];
            };
        }
        return sum;
    }

    private static OptionalDouble known(boolean isKnown, double figure) {
        return isKnown ? OptionalDouble.of(figure) : OptionalDouble.empty();
    }

    private static double[] ofMake(Cloth asked, ClothMake make) {
        Cloth other = new Cloth(
                "any",
                make.blend(),
                make.weave(),
                make.surface(),
                make.finish(),
                false,
                make.stretch(),
                Map.of(),
                "",
                make.flameTreatment());
        return Arrays.stream(Kinship.TRAITS)
                .mapToDouble(trait -> trait.between(asked, other))
                .toArray();
    }
}
