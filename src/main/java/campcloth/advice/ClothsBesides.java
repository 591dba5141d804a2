package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.SideBySide;
import java.util.List;
import java.util.Optional;

/**
 * Cloths side by side with how they stand at a fire. A cloth that the fire rules out is best at nothing, however light or cheap.
 *
 * @param compared the figures
 * @param fire the cloths at the fire asked about; empty where none was
 */
public record ClothsBesides(SideBySide compared, Optional<FireSideBySide> fire) {

    /** What to bear in mind, in sentences. */
    public static final List<String> NOTES = List.of(
            "Figures that were told without an interval are taken to hold within 5 %, shrinkage within one point, the price"
                    + " of a metre as it is: a choice of this project.",
            "The price for the area that can be used leaves out two selvedges of 1 cm and what washing takes.",
            "What a cloth is best at counts for nothing where it is not for the fire, so nothing is named there; nor where the"
                    + " event, the venue or the law does not allow it. Ask the advice for your event.");

    /** The cloths with their estimates, in the order asked. */
    public List<Cloth> cloths() {
        return compared.cloths();
    }

    /** Whether the fire rules out the cloth at a place. */
    public boolean rulesOut(int place) {
        return fire.filter(graded -> graded.rulesOut(place)).isPresent();
    }

    /** What the cloth at a place is clearly the best at, in words. */
    public List<String> bestAt(int place) {
        return rulesOut(place) ? List.of() : compared.bestAt(place);
    }
}
