package campcloth.store;

import campcloth.access.NewIds;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.KeptRules;
import campcloth.event.RulesHistory;
import campcloth.event.SafetyRule;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Sort;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The events on file, over PostgreSQL. */
@Component
class EventsInPostgres implements Events {

    private static final Sort NEWEST_FIRST = Sort.by(Sort.Order.desc("changedAt"), Sort.Order.asc("id"));

    private final EventRows rows;
    private final EventRulesRows rulesRows;
    private final JdbcTemplate sql;
    private final Json json;
    private final Clock clock;
    private final NewIds ids;

    EventsInPostgres(
            EventRows rows, EventRulesRows rulesRows, JdbcTemplate sql, Json json, Clock clock, NewIds ids) {
        this.rows = rows;
        this.rulesRows = rulesRows;
        this.sql = sql;
        this.json = json;
        this.clock = clock;
        this.ids = ids;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<KeptEvent> byId(String id) {
        return Ids.uuid(id).flatMap(rows::findById).map(this::kept);
    }

    @Override
    @Transactional(readOnly = true)
    public void each(Consumer<KeptEvent> each) {
        Cursor.each(
                sql,
                "select id, version, body from event order by made_at, id",
                row -> each.accept(new KeptEvent(
                        row.getString("id"), row.getLong("version"), json.read(row.getString("body"), Event.class))));
    }

    @Override
    @Transactional(readOnly = true)
    public Page latest(int page, int size) {
        var found = rows.findAll(PageRequest.of(page, size, NEWEST_FIRST));
        return new Page(found.map(this::kept).getContent(), found.getTotalElements());
    }

    @Override
    @Transactional
    public KeptEvent add(Event event) {
        UUID id = ids.next("event");
        Optional<KeptEvent> there = ids.mayBeThere() ? byId(id.toString()) : Optional.empty();
        if (there.isPresent()) {
            return there.get();
        }
        Instant now = clock.instant();
        EventRow row = rows.saveAndFlush(new EventRow(id, json.write(event), now));
        keepRules(row, event, now);
        return kept(row);
    }

    @Override
    @Transactional
    public Change replace(String id, long expectedVersion, Event event) {
        return changed(id, expectedVersion, row -> {
            Instant now = clock.instant();
            row.become(json.write(event), now);
            keepRules(rows.saveAndFlush(row), event, now);
        });
    }

    @Override
    @Transactional
    public Change remove(String id, long expectedVersion) {
        return changed(id, expectedVersion, rows::delete);
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<KeptRules> rulesAt(String id, long version) {
        return Ids.uuid(id)
                .flatMap(uuid -> rulesRows.findById(new EventRulesRow.Key(uuid, version)))
                .map(row -> new KeptRules(
                        row.getId().eventId().toString(),
                        version,
                        row.keptAt(),
                        List.of(json.read(row.rules(), SafetyRule[].class))));
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<RulesHistory> rulesHistory(String id, int most) {
        return Ids.uuid(id)
                .filter(rows::existsById)
                .map(uuid -> new RulesHistory(
                        rulesRows.countOf(uuid),
                        rulesRows.newest(uuid, most).stream()
                                .map(line -> new RulesHistory.Version(
                                        line.getVersion(), line.getKeptAt(), line.getCount(), line.getChanged()))
                                .toList()));
    }

    private void keepRules(EventRow row, Event event, Instant now) {
        EventRulesRow.Key key = new EventRulesRow.Key(row.getId(), row.version());
        rulesRows.saveAndFlush(new EventRulesRow(key, json.write(event.rules()), now));
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
