package campcloth.comfort;

import campcloth.cloth.OutfitPart.Kind;
import campcloth.comfort.Reading.Value;
import java.util.Optional;

/**
 * Something worn besides the garment that is to be sewn.
 *
 * @param name in words
 * @param kind what kind of part it stands for; empty where no part of an outfit can take its place
 * @param clo its insulation I_clu
 * @param because where that comes from: somebody's word, its cloth, or an entry of a list
 * @param standing whether somebody said that it is worn
 * @param shell its cloth, where that is known
 */
public record WornGarment(
        String name, Optional<Kind> kind, Value clo, String because, Standing standing, Optional<Shell> shell) {

    /** Whether somebody said so. */
    public enum Standing {
        TOLD,
        PRESUMED
    }

    /**
     * The cloth of a garment, over the body.
     *
     * @param coveredPercent share of the body's surface that it covers
     * @param cloth its cloth
     */
    record Shell(double coveredPercent, Sheets cloth) {}

    boolean is(Kind other) {
        return kind.filter(k -> k == other).isPresent();
    }
}
