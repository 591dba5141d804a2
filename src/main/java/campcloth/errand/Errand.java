package campcloth.errand;

import campcloth.advice.Candidate;
import campcloth.figure.Refused;
import campcloth.garment.Measurements;
import campcloth.garment.Sizes;
import java.time.Instant;
import java.util.List;

/**
 * One garment for one event from one chosen cloth, as somebody keeps and shares it. Event and cloth are kept as they were: what
 * changes on file later does not change the errand.
 *
 * @param title how people call it, 1 to 200 characters
 * @param event the event
 * @param garment the garment, and for whom else it is cut
 * @param cloth the cloth chosen
 * @param planId id of the plan that was made for it
 * @param createdAt when it was put together
 */
public record Errand(
        String title, TakenEvent event, WantedGarment garment, ChosenCloth cloth, String planId, Instant createdAt) {

    private static final int LONGEST_TITLE = 200;

    public Errand {
        title = title.strip();
        if (title.isEmpty() || title.length() > LONGEST_TITLE) {
            throw Refused.of("title", "has " + title.length() + " characters", "give a title of 1 to 200 characters");
        }
    }

    /** What it asks of the advice, about its one cloth. */
    public Asked asked(Sizes sizes) {
        return askedFor(Refused.within("garment", () -> garment.wearer(sizes)));
    }

    /** The same for each of the others that it is cut for. */
    List<Asked> askedForOthers(Sizes sizes) {
        return garment.others().stream()
                .map(other -> askedFor(other.wearer(sizes)))
                .toList();
    }

    private Asked askedFor(Measurements wearer) {
        return new Asking(
                        event.event(), Asking.design(garment.design()), wearer, garment.touchesSkin(), garment.outfit())
                .about(() -> List.of(new Candidate(cloth.id(), cloth.cloth())));
    }
}
