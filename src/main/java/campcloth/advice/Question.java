package campcloth.advice;

import campcloth.cloth.Outfit;
import campcloth.cloth.Wear;
import campcloth.event.Event;
import java.util.List;

/**
 * Which of these cloths for this garment at this event?
 *
 * @param event the event
 * @param wear how the garment is worn, for warmth, heat and itch
 * @param wearAtFire how it is worn, for fire: the strictest of what is possible where nobody said
 * @param outfit what is worn with the garment or sewn into it besides its own cloth, as far as somebody said
 * @param candidates the cloths to choose from
 */
public record Question(Event event, Wear wear, Wear wearAtFire, Outfit outfit, List<Candidate> candidates) {

    public Question {
        candidates = List.copyOf(candidates);
    }

    /** Where it is known how the garment is worn, and nothing of the rest. */
    public Question(Event event, Wear wear, List<Candidate> candidates) {
        this(event, wear, wear, Outfit.UNTOLD, candidates);
    }

    /** The same of other cloths. */
    public Question of(List<Candidate> others) {
        return new Question(event, wear, wearAtFire, outfit, others);
    }
}
