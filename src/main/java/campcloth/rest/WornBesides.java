package campcloth.rest;

import static campcloth.figure.Words.fixed;

import campcloth.comfort.Wardrobe;
import campcloth.comfort.WornGarment;
import campcloth.comfort.WornGarment.Standing;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What is worn besides the garment, and what was said not to be, in a sentence. */
final class WornBesides {

    private WornBesides() {}

    static String told(Wardrobe wardrobe) {
        Map<Boolean, List<WornGarment>> worn = wardrobe.garments().stream()
                .collect(Collectors.partitioningBy(garment -> garment.clo().value() > 0));
        String bare = joined(worn.getOrDefault(false, List.of()), WornGarment::name);
        return "Worn besides the garment, through all spells: "
                + joined(worn.getOrDefault(true, List.of()), WornBesides::words) + "."
                + (bare.isEmpty() ? "" : " Said not to be worn: " + bare + ".");
    }

    private static String joined(List<WornGarment> garments, Function<WornGarment, String> words) {
        return garments.stream().map(words).collect(Collectors.joining(", "));
    }

    private static String words(WornGarment garment) {
        return garment.name()
                + " ("
                + fixed(garment.clo().value(), 2)
                + " clo"
                + (garment.standing() == Standing.TOLD ? ", told: " + garment.because() : "")
                + ")";
    }
}
