package campcloth.rest;

import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.Seasons;
import campcloth.fibre.Fibres;
import campcloth.figure.Refused;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** The event that a request asks about: told in it, or kept. */
@Component
class AskedEvents {

    private final Events events;
    private final Seasons seasons;
    private final Fibres fibres;

    AskedEvents(Events events, Seasons seasons, Fibres fibres) {
        this.events = events;
        this.seasons = seasons;
        this.fibres = fibres;
    }

    /** An event, with its version where it is one on file. */
    record Asked(Event event, Optional<Long> version) {}

    Asked of(@Nullable EventBody told, @Nullable String id) {
        if ((told == null) == (id == null)) {
            throw Refused.of(
                    "event",
                    told == null ? "is missing" : "stands beside eventId",
                    "give either event or eventId; a season alone is enough: {\"season\": \"SUMMER\"}");
        }
        if (told != null) {
            return new Asked(Refused.within("event", () -> told.event(seasons, fibres)), Optional.empty());
        }
        String wanted = String.valueOf(id);
        KeptEvent kept = EventController.kept(events, wanted);
        return new Asked(kept.event(), Optional.of(kept.version()));
    }
}
