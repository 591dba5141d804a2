package campcloth.store;

import campcloth.access.NewIds;
import campcloth.access.ThingKind;
import campcloth.cloth.Cloth;
import campcloth.cloth.ClothColumns;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.KeptCloth.Origin;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The catalogue over PostgreSQL: cloths come from the snapshot, what a search finds from the index,
 * changes go to the table. */
@Component
class ClothsInPostgres implements Cloths {

    private final ClothRows rows;
    private final ClothSnapshot snapshot;
    private final ClothIndex index;
    private final IndexedTraits traits;
    private final ClothFinder finder;
    private final SwatchedCloth swatched;
    private final Guard guard;
    private final CommonNotes notes;
    private final Json json;
    private final Clock clock;
    private final NewIds ids;

    ClothsInPostgres(
            ClothRows rows,
            ClothSnapshot snapshot,
            ClothIndex index,
            IndexedTraits traits,
            ClothFinder finder,
            SwatchedCloth swatched,
            Guard guard,
            CommonNotes notes,
            Json json,
            Clock clock,
            NewIds ids) {
        this.rows = rows;
        this.snapshot = snapshot;
        this.index = index;
        this.traits = traits;
        this.finder = finder;
        this.swatched = swatched;
        this.guard = guard;
        this.notes = notes;
        this.json = json;
        this.clock = clock;
        this.ids = ids;
    }

    @Override
    public Optional<KeptCloth> byId(String id) {
        return byIds(List.of(id)).stream().findFirst();
    }

    @Override
    public List<KeptCloth> byIds(Collection<String> ids) {
        return snapshot.byIds(ids).stream()
                .filter(kept -> guard.mayRead(kept.holding()))
                .toList();
    }

    @Override
    public List<KeptCloth> matching(ClothSearch search) {
        return byIds(columns(search).ids());
    }

    /** Of what stands in the asker's lists: own cloths of others do not, not even where their link is known. */
    @Override
    public ClothColumns columns(ClothSearch search) {
        Columns listed = snapshot.columns().onlyHeld(guard::lists);
        if (search.equals(ClothSearch.EVERYTHING)) {
            return listed;
        }
        index.bringUpToDate();
        return finder.matching(search, guard.listed(), listed::only);
    }

    @Override
    public Page page(ClothSearch search, int page, int size) {
        index.bringUpToDate();
        if (search.text().isEmpty()) {
            IndexedTraits.Seen seen = traits.current();
            CountsInMemory counts = CountsInMemory.of(search, seen.columns().onlyHeld(guard::lists), seen);
            List<String> ids = finder.page(search, guard.listed(), page, size, counts);
            return new Page(byIds(ids), counts.total(), false, counts.facets());
        }
        ClothFinder.Found found = finder.page(search, guard.listed(), page, size);
        return new Page(byIds(found.ids()), found.total(), found.near(), found.facets());
    }

    @Override
    @Transactional
    public KeptCloth add(Cloth cloth) {
        String id = ids.next("cloth").toString();
        Optional<KeptCloth> there = ids.mayBeThere() ? rows.findById(id).map(snapshot::kept) : Optional.empty();
        if (there.isPresent()) {
            return there.get();
        }
        String body = json.write(ClothBody.of(cloth));
        return snapshot.kept(rows.saveAndFlush(
                new ClothRow(id, Origin.OWN, null, body, rows.nextTick(), clock.instant(), guard.made())));
    }

    @Override
    @Transactional
    public Change replace(String id, long expectedVersion, Cloth cloth) {
        return changed(id, expectedVersion, row -> {
            ClothBody body = swatched.told(row, cloth);
            if (swatched.body(row).equals(body)) {
                return;
            }
            Origin origin = row.origin() == Origin.OWN ? Origin.OWN : Origin.EDITED;
            row.become(origin, null, json.write(body), rows.nextTick(), clock.instant());
            note(row, "changed", expectedVersion);
        });
    }

    @Override
    @Transactional
    public Change remove(String id, long expectedVersion) {
        return changed(id, expectedVersion, row -> {
            row.removeByUser(rows.nextTick(), clock.instant());
            note(row, "removed", expectedVersion);
        });
    }

    private void note(ClothRow row, String action, long version) {
        notes.note(row.holding(), action, "cloth", row.getId(), "from version " + version);
    }

    private Change changed(String id, long expectedVersion, Consumer<ClothRow> change) {
        rows.lockClock();
        Optional<ClothRow> found = rows.findById(id).filter(row -> !row.isRemoved() && guard.mayRead(row.holding()));
        if (found.isEmpty()) {
            return new Change.Missing();
        }
        ClothRow row = found.get();
        guard.checkMayChange(row.holding(), ThingKind.CLOTH);
        if (row.version() != expectedVersion) {
            return new Change.Stale(row.version());
        }
        change.accept(row);
        return new Change.Done(snapshot.kept(rows.saveAndFlush(row)));
    }
}
