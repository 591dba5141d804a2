package campcloth.fibre;

import campcloth.figure.Refused;
import java.util.List;

/**
 * Fibres that look alike in a flame.
 *
 * @param key short name
 * @param name what people call it
 * @param family classes that are easily taken for each other share one
 * @param fibres the fibres that it stands for, at least one; all of them melt or none does
 */
public record FlameClass(String key, String name, FibreFamily family, List<Fibre> fibres) {

    public FlameClass {
        fibres = List.copyOf(fibres);
        if (fibres.isEmpty()) {
            throw Refused.of("fibres", "names none", "write keys of fibres.csv with semicolons between them");
        }
        boolean melts = family.countsAsMeltable();
        for (Fibre fibre : fibres) {
            if (fibre.family().countsAsMeltable() != melts) {
                throw Refused.of(
                        "fibres",
                        fibre.key() + (melts ? " does not melt" : " melts") + ", unlike the family of the class",
                        "keep fibres that melt and fibres that do not in classes of their own");
            }
        }
    }

    /** Whether its fibres melt, or must be presumed to. */
    public boolean melts() {
        return family.countsAsMeltable();
    }
}
