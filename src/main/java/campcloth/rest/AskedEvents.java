package campcloth.rest;

import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.Seasons;
import campcloth.fibre.Fibres;
import campcloth.figure.Refused;
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

    Event of(@Nullable EventBody told, @Nullable String id) {
        if ((told == null) == (id == null)) {
            throw Refused.of(
                    "event",
                    told == null ? "is missing" : "stands beside eventId",
                    "give either event or eventId; a season alone is enough: {\"season\": \"SUMMER\"}");
        }
        if (told != null) {
            return Refused.within("event", () -> told.event(seasons, fibres));
        }
        String wanted = String.valueOf(id);
        return events.byId(wanted)
                .orElseThrow(() -> new Missing("event", wanted))
                .event();
    }
}
