package campcloth.fire;

import campcloth.fibre.Blend;
import campcloth.fibre.FibreFamily;
import java.util.List;
import java.util.function.Predicate;

/** The fibres of a blend in sentences. */
final class FibreWords {

    private FibreWords() {}

    /** The fibres of a family by name, greatest share first: {@code wool and silk}; empty where there is none. */
    static String named(Blend blend, Predicate<FibreFamily> family) {
        return joined(names(blend, family), "and");
    }

    static long count(Blend blend, Predicate<FibreFamily> family) {
        return names(blend, family).size();
    }

    /** What wool and silk do in a flame, to add to a sentence; empty where the blend has neither. */
    static String charring(Blend blend) {
        Predicate<FibreFamily> protein = family -> family == FibreFamily.PROTEIN;
        return switch (names(blend, protein).size()) {
            case 0 -> "";
            case 1 -> ": " + named(blend, protein) + " chars and burns slowly";
            default -> ": " + named(blend, protein) + " char and burn slowly";
        };
    }

    /** {@code a, b and c}. */
    static String joined(List<String> words, String last) {
        int size = words.size();
        return size < 2
                ? String.join("", words)
                : String.join(", ", words.subList(0, size - 1)) + " " + last + " " + words.get(size - 1);
    }

    private static List<String> names(Blend blend, Predicate<FibreFamily> family) {
        return blend.shares().stream()
                .filter(share -> family.test(share.fibre().family()))
                .map(share -> share.fibre().family() == FibreFamily.UNNAMED
                        ? "unnamed fibre"
                        : share.fibre().name())
                .distinct()
                .toList();
    }
}
