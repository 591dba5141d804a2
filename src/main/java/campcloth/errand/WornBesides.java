package campcloth.errand;

import static campcloth.figure.Words.fixed;

import campcloth.comfort.Dressing;
import campcloth.comfort.Wardrobe;
import campcloth.comfort.WornGarment;
import campcloth.comfort.WornGarment.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What is worn besides the garment, and what was said not to be, in sentences. */
final class WornBesides {

    private WornBesides() {}

    /** A sentence for each wardrobe, and what to do where it is otherwise. */
    static List<String> told(List<Dressing> worn) {
        boolean same = worn.size() == 1;
        List<String> sentences = new ArrayList<>();
        for (Dressing dressing : worn) {
            String when = same
                    ? "through all spells"
                    : "in "
                            + dressing.spells().stream()
                                    .distinct()
                                    .map(name -> "\"" + name + "\"")
                                    .collect(Collectors.joining(", "));
            sentences.add(told(when, dressing.wardrobe()));
        }
        if (!same) {
            sentences.add(
                    "What is worn besides was taken for each spell by its own cold, or as told: say in the outfit what is worn, and"
                            + " in which spells, where it is otherwise.");
        }
        return sentences;
    }

    private static String told(String when, Wardrobe wardrobe) {
        Map<Boolean, List<WornGarment>> worn = wardrobe.garments().stream()
                .collect(Collectors.partitioningBy(garment -> garment.clo().value() > 0));
        String bare = joined(worn.getOrDefault(false, List.of()), WornGarment::name);
        return "Worn besides the garment, " + when + ": "
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
