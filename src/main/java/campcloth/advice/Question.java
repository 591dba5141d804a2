package campcloth.advice;

import campcloth.cloth.Wear;
import campcloth.event.Event;
import java.util.List;

/**
 * Which of these cloths for this garment at this event?
 *
 * @param event the event
 * @param wear how the garment is worn
 * @param candidates the cloths to choose from
 */
public record Question(Event event, Wear wear, List<Candidate> candidates) {

    public Question {
        candidates = List.copyOf(candidates);
    }
}
