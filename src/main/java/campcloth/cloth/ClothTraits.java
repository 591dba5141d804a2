package campcloth.cloth;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is computed of a cloth in a garment and at a fire that are the same for all, to sort a catalogue by. It narrows a search; it
 * is no advice for an event.
 *
 * @param seasons names of the seasons that it suits, may be none
 * @param fireGrade name of its fire grade
 */
public record ClothTraits(Set<String> seasons, String fireGrade) {

    public ClothTraits {
        seasons = Collections.unmodifiableSet(new TreeSet<>(seasons));
    }
}
