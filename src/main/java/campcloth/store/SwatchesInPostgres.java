package campcloth.store;

import campcloth.access.NewIds;
import campcloth.access.ThingKind;
import campcloth.cloth.KeptCloth.Origin;
import campcloth.cloth.KeptSwatch;
import campcloth.cloth.Swatch;
import campcloth.cloth.SwatchHistory;
import campcloth.cloth.Swatches;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * The swatches over PostgreSQL. Each change takes the lock of the cloths first, so that the figures of a cloth always follow from
 * all of its swatches. A swatch belongs to whom its cloth belongs; it is never changed, and removed once, whoever is first. A cloth of the catalogue files counts as edited from its first swatch on: a newer catalogue leaves it.
 */
@Component
class SwatchesInPostgres implements Swatches {

    private static final String EACH = """
            select s.id, s.cloth_id, s.number, s.made_at, s.body from cloth_swatch s join cloth c on c.id = s.cloth_id
            where c.removed_by is null and %s order by s.cloth_id, s.number""";

    private final JdbcTemplate sql;
    private final ClothRows cloths;
    private final SwatchRows rows;
    private final SwatchedCloth swatched;
    private final Guard guard;
    private final CommonNotes notes;
    private final ClothSnapshot snapshot;
    private final Json json;
    private final Clock clock;
    private final NewIds ids;

    SwatchesInPostgres(
            JdbcTemplate sql,
            ClothRows cloths,
            SwatchRows rows,
            SwatchedCloth swatched,
            Guard guard,
            CommonNotes notes,
            ClothSnapshot snapshot,
            Json json,
            Clock clock,
            NewIds ids) {
        this.sql = sql;
        this.cloths = cloths;
        this.rows = rows;
        this.swatched = swatched;
        this.guard = guard;
        this.notes = notes;
        this.snapshot = snapshot;
        this.json = json;
        this.clock = clock;
        this.ids = ids;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<SwatchHistory> of(String clothId) {
        return cloth(clothId).map(swatched::history);
    }

    @Override
    @Transactional(readOnly = true)
    public void each(Consumer<KeptSwatch> each) {
        Cursor.each(
                sql,
                EACH.formatted(guard.listed()),
                row -> each.accept(new KeptSwatch(
                        row.getString("id"),
                        row.getString("cloth_id"),
                        row.getLong("number"),
                        row.getTimestamp("made_at").toInstant(),
                        json.read(row.getString("body"), Swatch.class))));
    }

    @Override
    @Transactional
    public Outcome add(String clothId, Swatch swatch) {
        cloths.lockClock();
        Optional<ClothRow> cloth = cloth(clothId);
        if (cloth.isEmpty()) {
            return new Outcome.NoCloth();
        }
        guard.checkMayChange(cloth.get().holding(), ThingKind.CLOTH);
        SwatchHistory history = swatched.history(cloth.get());
        UUID id = ids.next("swatch");
        Optional<KeptSwatch> there = history.byId(id.toString());
        if (there.isPresent()) {
            return new Outcome.Done(snapshot.kept(cloth.get()), there.get());
        }
        if (history.newestFirst().size() >= MOST) {
            return new Outcome.Full();
        }
        long newest = history.newestFirst().stream()
                .mapToLong(KeptSwatch::number)
                .max()
                .orElse(0);
        SwatchRow row = rows.saveAndFlush(new SwatchRow(id, clothId, newest + 1, json.write(swatch), now()));
        List<KeptSwatch> all = new ArrayList<>(history.newestFirst());
        all.add(swatched.kept(row));
        note(cloth.get(), "made", id);
        return changed(cloth.get(), SwatchHistory.of(all, history.before()), swatched.kept(row));
    }

    @Override
    @Transactional
    public Outcome remove(String clothId, String swatchId) {
        cloths.lockClock();
        Optional<ClothRow> cloth = cloth(clothId);
        if (cloth.isEmpty()) {
            return new Outcome.NoCloth();
        }
        guard.checkMayChange(cloth.get().holding(), ThingKind.CLOTH);
        SwatchHistory history = swatched.history(cloth.get());
        Optional<KeptSwatch> found = history.newestFirst().stream()
                .filter(kept -> kept.id().equals(swatchId))
                .findFirst();
        if (found.isEmpty()) {
            return new Outcome.NoSwatch();
        }
        rows.deleteById(UUID.fromString(swatchId));
        note(cloth.get(), "removed", found.get().id());
        List<KeptSwatch> left = history.newestFirst().stream()
                .filter(kept -> !kept.id().equals(swatchId))
                .toList();
        return changed(cloth.get(), SwatchHistory.of(left, history.before()), found.get());
    }

    private void note(ClothRow cloth, String action, Object swatchId) {
        notes.note(cloth.holding(), action, "swatch", swatchId.toString(), "of the cloth " + cloth.getId());
    }

    /** As finely as the database keeps it, so that it reads the same ever after. */
    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }

    private Outcome changed(ClothRow row, SwatchHistory history, KeptSwatch subject) {
        String body = json.write(swatched.body(row).with(history));
        Origin origin = row.origin() == Origin.OWN ? Origin.OWN : Origin.EDITED;
        row.become(origin, null, body, cloths.nextTick(), clock.instant());
        return new Outcome.Done(snapshot.kept(cloths.saveAndFlush(row)), subject);
    }

    private Optional<ClothRow> cloth(String id) {
        return cloths.findById(id).filter(row -> !row.isRemoved() && guard.mayRead(row.holding()));
    }
}
