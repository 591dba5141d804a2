package campcloth.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How far apart two cloths are, trait by trait: the sum over {@link Trait}, 0 for cloths that nothing tells apart. An order of
 * likeness, no physical measure. It says nothing of fire, price or width.
 *
 * @param distance sum of the parts, without unit
 * @param closeness what the distance amounts to
 * @param agrees traits in which they are the same; not those that are known of neither
 * @param differs traits in which they differ, the most first
 */
public record Kinship(double distance, Closeness closeness, List<Trait> agrees, List<Difference> differs) {

    /** What a distance amounts to; the limits are project choices. */
    public enum Closeness {
        /** At most 0.25: a shop may sell either under one name. */
        NEARLY_THE_SAME,
        /** At most 0.8: of use as a check of estimates. */
        CLOSE,
        /** Farther off: a different cloth, the nearest that is known. */
        DISTANT;

        private static final double NEARLY = 0.25;
        private static final double NEAR = 0.8;

        static Closeness of(double distance) {
            return distance <= NEARLY ? NEARLY_THE_SAME : distance <= NEAR ? CLOSE : DISTANT;
        }
    }

    /**
     * A trait in which two cloths differ.
     *
     * @param trait which
     * @param part its part of the distance, above 0
     * @param here how the one is
     * @param there how the other is
     */
    public record Difference(Trait trait, double part, String here, String there) {

        String words() {
            String name = trait.words();
            return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1) + ": " + there + " against " + here
                    + " here.";
        }
    }

    public Kinship {
        agrees = List.copyOf(agrees);
        differs = List.copyOf(differs);
    }

    static final Trait[] TRAITS = Trait.values();

    /** The distance alone: cheap enough for every cloth of a large catalogue. */
    static double distance(Cloth one, Cloth other) {
        double sum = 0;
        for (Trait trait : TRAITS) {
            sum += trait.between(one, other);
        }
        return sum;
    }

    /** Of the cloth here with another. */
    public static Kinship between(Cloth here, Cloth there) {
        List<Trait> agrees = new ArrayList<>();
        List<Difference> differs = new ArrayList<>();
        for (Trait trait : TRAITS) {
            double part = trait.between(here, there);
            if (part == 0 && trait.isKnown(here)) {
                agrees.add(trait);
            } else if (part > 0) {
                differs.add(new Difference(trait, part, trait.words(here), trait.words(there)));
            }
        }
        differs.sort((a, b) -> Double.compare(b.part(), a.part()));
        double distance = distance(here, there);
        return new Kinship(distance, Closeness.of(distance), agrees, differs);
    }

    /** Why they are as near as they are, in sentences. */
    public List<String> because() {
        List<String> because = new ArrayList<>();
        if (!agrees.isEmpty()) {
            because.add("The same in "
                    + String.join(", ", agrees.stream().map(Trait::words).toList()) + ".");
        }
        differs.forEach(difference -> because.add(difference.words()));
        return because;
    }
}
