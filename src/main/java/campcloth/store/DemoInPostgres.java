package campcloth.store;

import campcloth.access.Holding;
import campcloth.access.Role;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Swatch;
import campcloth.cloth.Swatches;
import campcloth.demo.Demo;
import campcloth.demo.DemoCamp;
import campcloth.demo.DemoCamp.DemoCloth;
import campcloth.demo.DemoThing;
import campcloth.demo.DemoThing.Kind;
import campcloth.demo.DemoThing.Standing;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import java.sql.Timestamp;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * The demo over PostgreSQL. Each change takes the lock of the cloths first, so that two never put it in twice. It is common, and
 * stands the same for whoever looks; administrators remove it and bring it back.
 */
@Component
class DemoInPostgres implements Demo {

    private static final String EVENT_KEY = "event";
    private static final String DEMO = "demo";

    /** Nothing but what comes from the catalogue files. */
    private static final String SOMEBODYS = """
            select exists (select 1 from event) or exists (select 1 from cutting_plan) or exists (select 1 from cloth_swatch)
                or exists (select 1 from cloth where origin <> 'CATALOGUE' or removed_by = 'USER')""";

    private record Row(Kind kind, String key, String id, long version, String name, boolean removed) {}

    private final Optional<DemoCamp> camp;
    private final Events events;
    private final Cloths cloths;
    private final Swatches swatches;
    private final ClothRows clothRows;
    private final Guard guard;
    private final CommonNotes notes;
    private final JdbcTemplate sql;
    private final Clock clock;

    DemoInPostgres(
            Catalogue catalogue,
            Events events,
            Cloths cloths,
            Swatches swatches,
            ClothRows clothRows,
            Guard guard,
            CommonNotes notes,
            JdbcTemplate sql,
            Clock clock) {
        this.camp = catalogue.demo();
        this.events = events;
        this.cloths = cloths;
        this.swatches = swatches;
        this.clothRows = clothRows;
        this.guard = guard;
        this.notes = notes;
        this.sql = sql;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true)
    public List<DemoThing> things() {
        List<DemoThing> things = new ArrayList<>();
        guard.asService(() -> rows().forEach(row -> things.add(thing(row))));
        return things;
    }

    @Override
    @Transactional
    public List<DemoThing> remove() {
        checkMayDecide();
        clothRows.lockClock();
        guard.asService(this::removeWhatIsAsPutIn);
        notes.note(Holding.COMMON, "removed", DEMO, DEMO, "what was as it was put in");
        return things();
    }

    private void removeWhatIsAsPutIn() {
        for (Row row : rows()) {
            if (standing(row) == Standing.AS_PUT_IN && removed(row)) {
                sql.update(
                        "update demo_thing set removed_at = ? where kind = ? and key = ?",
                        now(),
                        row.kind().name(),
                        row.key());
            }
        }
    }

    @Override
    @Transactional
    public List<DemoThing> bringBack() {
        checkMayDecide();
        clothRows.lockClock();
        camp.ifPresent(this::putIn);
        notes.note(Holding.COMMON, "made", DEMO, DEMO, "what was not there");
        return things();
    }

    private void checkMayDecide() {
        guard.checkIs(
                Role.ADMINISTRATOR, "The demo is there for everybody; administrators remove it and bring it back.");
    }

    /** Decides, once for ever, whether the demo is put in: where nobody has kept anything yet. */
    @Transactional
    void decide() {
        clothRows.lockClock();
        boolean first =
                sql.update("insert into demo_decided (decided_at) values (?) on conflict do nothing", now()) == 1;
        if (first && !Boolean.TRUE.equals(sql.queryForObject(SOMEBODYS, Boolean.class))) {
            camp.ifPresent(this::putIn);
        }
    }

    private void putIn(DemoCamp demo) {
        guard.asService(() -> putInCommon(demo));
    }

    private void putInCommon(DemoCamp demo) {
        Set<String> there = rows().stream()
                .filter(row -> standing(row) != Standing.REMOVED)
                .map(row -> row.kind() + row.key())
                .collect(Collectors.toSet());
        if (!there.contains(Kind.EVENT + EVENT_KEY)) {
            KeptEvent kept = events.add(demo.event());
            remember(
                    new Row(
                            Kind.EVENT,
                            EVENT_KEY,
                            kept.id(),
                            kept.version(),
                            demo.event().name(),
                            false),
                    0);
        }
        for (DemoCloth cloth : demo.cloths()) {
            if (!there.contains(Kind.CLOTH + cloth.key())) {
                KeptCloth kept = putIn(cloth);
                Row row = new Row(
                        Kind.CLOTH,
                        cloth.key(),
                        kept.id(),
                        kept.version(),
                        kept.cloth().name(),
                        false);
                remember(row, 1 + demo.cloths().indexOf(cloth));
            }
        }
    }

    private KeptCloth putIn(DemoCloth cloth) {
        KeptCloth kept = cloths.add(cloth.cloth());
        for (Swatch swatch : cloth.swatches()) {
            if (swatches.add(kept.id(), swatch) instanceof Swatches.Outcome.Done done) {
                kept = done.cloth();
            }
        }
        return kept;
    }

    private void remember(Row row, int place) {
        sql.update("""
                insert into demo_thing (kind, key, thing_id, version, name, place) values (?, ?, ?, ?, ?, ?)
                on conflict (kind, key) do update
                set thing_id = excluded.thing_id, version = excluded.version, name = excluded.name, removed_at = null""", row.kind().name(), row.key(), row.id(), row.version(), row.name(), place);
    }

    private boolean removed(Row row) {
        return switch (row.kind()) {
            case EVENT -> events.remove(row.id(), row.version()) instanceof Events.Change.Done;
            case CLOTH -> cloths.remove(row.id(), row.version()) instanceof Cloths.Change.Done;
        };
    }

    private DemoThing thing(Row row) {
        return new DemoThing(row.kind(), row.id(), row.name(), standing(row));
    }

    private Standing standing(Row row) {
        if (row.removed()) {
            return Standing.REMOVED;
        }
        Optional<Long> version = switch (row.kind()) {
            case EVENT -> events.byId(row.id()).map(KeptEvent::version);
            case CLOTH -> cloths.byId(row.id()).map(KeptCloth::version);
        };
        return version.map(now -> now == row.version() ? Standing.AS_PUT_IN : Standing.CHANGED)
                .orElse(Standing.REMOVED);
    }

    private List<Row> rows() {
        return sql.query(
                "select kind, key, thing_id, version, name, removed_at is not null as removed from demo_thing order by place",
                (row, number) -> new Row(
                        Kind.valueOf(row.getString("kind")),
                        row.getString("key"),
                        row.getString("thing_id"),
                        row.getLong("version"),
                        row.getString("name"),
                        row.getBoolean("removed")));
    }

    private Timestamp now() {
        return Timestamp.from(clock.instant());
    }
}
