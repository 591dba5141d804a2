package campcloth.errand;

import campcloth.cloth.Cloth;
import campcloth.cloth.Layer;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What somebody told to be worn with the garment, in words, in the order in which it was told.
 *
 * @param under between the garment and the skin, and on the legs
 * @param over over it, and on head, hands and feet
 */
public record WornWith(List<String> under, List<String> over) {

    public WornWith {
        under = List.copyOf(under);
        over = List.copyOf(over);
    }

    public static WornWith of(Outfit outfit) {
        return new WornWith(words(outfit, false), words(outfit, true));
    }

    public boolean isTold() {
        return !under.isEmpty() || !over.isEmpty();
    }

    /** Whether a part lies over the garment. */
    public static boolean isOver(OutfitPart part) {
        return part.kind().layer() == Layer.OUTER;
    }

    /** A part with its cloth and the spells through which it is worn. */
    public static String words(OutfitPart part) {
        return part.kind().words() + part.cloth().map(WornWith::made).orElse(", cloth not told") + when(part);
    }

    private static List<String> words(Outfit outfit, boolean over) {
        return outfit.parts().stream()
                .filter(part -> !part.kind().isSewnIn() && isOver(part) == over)
                .map(WornWith::words)
                .toList();
    }

    private static String made(Cloth cloth) {
        return ": " + cloth.name() + ", " + cloth.blend().words();
    }

    private static String when(OutfitPart part) {
        if (part.insulationClo().filter(clo -> clo == 0).isPresent()) {
            return " (put on in none of the spells)";
        }
        return part.spells().isEmpty()
                ? ""
                : " (only in "
                        + part.spells().stream()
                                .sorted()
                                .map(name -> "\"" + name + "\"")
                                .collect(Collectors.joining(", "))
                        + ")";
    }
}
