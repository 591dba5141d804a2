package campcloth.store;

import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The events on file, over PostgreSQL. */
@Component
class EventsInPostgres implements Events {

    private final EventRows rows;
    private final Json json;
    private final Clock clock;

    EventsInPostgres(EventRows rows, Json json, Clock clock) {
        this.rows = rows;
        this.json = json;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<KeptEvent> byId(String id) {
        return Ids.uuid(id).flatMap(rows::findById).map(this::kept);
    }

    @Override
    @Transactional
    public KeptEvent add(Event event) {
        return kept(rows.saveAndFlush(new EventRow(UUID.randomUUID(), json.write(event), clock.instant())));
    }

    @Override
    @Transactional
    public Change replace(String id, long expectedVersion, Event event) {
        return changed(id, expectedVersion, row -> {
            row.become(json.write(event), clock.instant());
            rows.saveAndFlush(row);
        });
    }

    @Override
    @Transactional
    public Change remove(String id, long expectedVersion) {
        return changed(id, expectedVersion, rows::delete);
    }

    private Change changed(String id, long expectedVersion, Consumer<EventRow> change) {
        Optional<EventRow> found = Ids.uuid(id).flatMap(rows::findForChange);
        if (found.isEmpty()) {
            return new Change.Missing();
        }
        EventRow row = found.get();
        if (row.version() != expectedVersion) {
            return new Change.Stale(row.version());
        }
        change.accept(row);
        return new Change.Done(kept(row));
    }

    private KeptEvent kept(EventRow row) {
        return new KeptEvent(row.getId().toString(), row.version(), json.read(row.body(), Event.class));
    }
}
