package campcloth.store;

import campcloth.access.NewIds;
import campcloth.access.NotAllowed;
import campcloth.access.ThingKind;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.KeptRules;
import campcloth.event.RulesHistory;
import campcloth.event.SafetyRule;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The events on file, over PostgreSQL. */
@Component
class EventsInPostgres implements Events {

    private final EventRows rows;
    private final EventRulesRows rulesRows;
    private final JdbcTemplate sql;
    private final Guard guard;
    private final CommonNotes notes;
    private final Json json;
    private final Clock clock;
    private final NewIds ids;

    EventsInPostgres(
            EventRows rows,
            EventRulesRows rulesRows,
            JdbcTemplate sql,
            Guard guard,
            CommonNotes notes,
            Json json,
            Clock clock,
            NewIds ids) {
        this.rows = rows;
        this.rulesRows = rulesRows;
        this.sql = sql;
        this.guard = guard;
        this.notes = notes;
        this.json = json;
        this.clock = clock;
        this.ids = ids;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<KeptEvent> byId(String id) {
        return row(id).map(this::kept);
    }

    @Override
    @Transactional(readOnly = true)
    public void each(Consumer<KeptEvent> each) {
        Cursor.each(
                sql,
                "select id, version, body from event where " + guard.listed() + " order by made_at, id",
                row -> each.accept(kept(row)));
    }

    @Override
    @Transactional(readOnly = true)
    public Page latest(int page, int size) {
        String listed = guard.listed();
        List<KeptEvent> found = sql.query(
                "select id, version, body from event where " + listed
                        + " order by changed_at desc, id limit ? offset ?",
                (row, number) -> kept(row),
                size,
                (long) page * size);
        Long total = sql.queryForObject("select count(*) from event where " + listed, Long.class);
        return new Page(found, total == null ? 0 : total);
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
        EventRow row = rows.saveAndFlush(new EventRow(id, json.write(event), now, guard.made()));
        keepRules(row, event, now);
        return kept(row);
    }

    @Override
    @Transactional
    public Change replace(String id, long expectedVersion, Event event) {
        return changed(id, expectedVersion, row -> {
            checkMayBecome(row, event);
            Instant now = clock.instant();
            boolean rulesDiffer = !json.read(row.body(), Event.class).rules().equals(event.rules());
            row.become(json.write(event), now);
            keepRules(rows.saveAndFlush(row), event, now);
            note(
                    row,
                    "changed",
                    rulesDiffer ? "rules" : "event",
                    "version " + expectedVersion + " to " + row.version());
        });
    }

    @Override
    @Transactional
    public Change remove(String id, long expectedVersion) {
        return changed(id, expectedVersion, row -> {
            guard.checkMayChange(row.holding(), ThingKind.EVENT);
            rows.delete(row);
            note(row, "removed", "event", "version " + expectedVersion);
        });
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<KeptRules> rulesAt(String id, long version) {
        return row(id).flatMap(event -> rulesRows.findById(new EventRulesRow.Key(event.getId(), version)))
                .map(row -> new KeptRules(
                        row.getId().eventId().toString(),
                        version,
                        row.keptAt(),
                        List.of(json.read(row.rules(), SafetyRule[].class))));
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<RulesHistory> rulesHistory(String id, int most) {
        return row(id).map(EventRow::getId)
                .map(uuid -> new RulesHistory(
                        rulesRows.countOf(uuid),
                        rulesRows.newest(uuid, most).stream()
                                .map(line -> new RulesHistory.Version(
                                        line.getVersion(), line.getKeptAt(), line.getCount(), line.getChanged()))
                                .toList()));
    }

    private void note(EventRow row, String action, String kind, String what) {
        notes.note(row.holding(), action, kind, row.getId().toString(), what);
    }

    private void keepRules(EventRow row, Event event, Instant now) {
        EventRulesRow.Key key = new EventRulesRow.Key(row.getId(), row.version());
        rulesRows.saveAndFlush(new EventRulesRow(key, json.write(event.rules()), now));
    }

    private Change changed(String id, long expectedVersion, Consumer<EventRow> change) {
        Optional<EventRow> found =
                Ids.uuid(id).flatMap(rows::findForChange).filter(row -> guard.mayRead(row.holding()));
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

    private Optional<EventRow> row(String id) {
        return Ids.uuid(id).flatMap(rows::findById).filter(row -> guard.mayRead(row.holding()));
    }

    /** Lets a marshal that the event is shared with change its rules and nothing else. */
    private void checkMayBecome(EventRow row, Event event) {
        if (row.holding().mayChange(guard.asker(), ThingKind.EVENT.keeper())) {
            return;
        }
        if (!row.holding().mayChangeRules(guard.asker())) {
            throw ThingKind.EVENT.notChangedByYou();
        }
        List<String> others = json.read(row.body(), Event.class).differencesBesidesRules(event);
        if (!others.isEmpty()) {
            throw new NotAllowed(
                    "Of this event, which belongs to somebody else, you may change the rules and nothing else."
                            + " Put these back as they were: " + String.join(", ", others) + ".");
        }
    }

    private KeptEvent kept(ResultSet row) throws SQLException {
        return new KeptEvent(
                row.getString("id"), row.getLong("version"), json.read(row.getString("body"), Event.class));
    }

    private KeptEvent kept(EventRow row) {
        return new KeptEvent(row.getId().toString(), row.version(), json.read(row.body(), Event.class));
    }
}
