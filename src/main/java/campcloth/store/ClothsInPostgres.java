package campcloth.store;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.KeptCloth.Origin;
import campcloth.cloth.Property;
import java.time.Clock;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The catalogue over PostgreSQL: reads come from the snapshot, changes go to the table. */
@Component
class ClothsInPostgres implements Cloths {

    private final ClothRows rows;
    private final ClothSnapshot snapshot;
    private final SwatchedCloth swatched;
    private final Json json;
    private final Clock clock;

    ClothsInPostgres(ClothRows rows, ClothSnapshot snapshot, SwatchedCloth swatched, Json json, Clock clock) {
        this.rows = rows;
        this.snapshot = snapshot;
        this.swatched = swatched;
        this.json = json;
        this.clock = clock;
    }

    @Override
    public Optional<KeptCloth> byId(String id) {
        return Optional.ofNullable(snapshot.cloths().get(id));
    }

    @Override
    public List<KeptCloth> byIds(Collection<String> ids) {
        var cloths = snapshot.cloths();
        return ids.stream().distinct().map(cloths::get).filter(Objects::nonNull).toList();
    }

    @Override
    public List<KeptCloth> matching(ClothSearch search) {
        return snapshot.cloths().values().stream()
                .filter(kept -> matches(kept.cloth(), search))
                .toList();
    }

    @Override
    public Page page(ClothSearch search, int page, int size) {
        List<KeptCloth> all = matching(search).stream()
                .sorted(Comparator.comparing((KeptCloth kept) -> kept.cloth().name(), String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(KeptCloth::id))
                .toList();
        List<KeptCloth> cloths =
                all.stream().skip((long) page * size).limit(size).toList();
        return new Page(cloths, all.size());
    }

    @Override
    @Transactional
    public KeptCloth add(Cloth cloth) {
        String id = UUID.randomUUID().toString();
        String body = json.write(ClothBody.of(cloth));
        return snapshot.kept(
                rows.saveAndFlush(new ClothRow(id, Origin.OWN, null, body, rows.nextTick(), clock.instant())));
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
        });
    }

    @Override
    @Transactional
    public Change remove(String id, long expectedVersion) {
        return changed(id, expectedVersion, row -> row.removeByUser(rows.nextTick(), clock.instant()));
    }

    private Change changed(String id, long expectedVersion, Consumer<ClothRow> change) {
        rows.lockClock();
        Optional<ClothRow> found = rows.findById(id).filter(row -> !row.isRemoved());
        if (found.isEmpty()) {
            return new Change.Missing();
        }
        ClothRow row = found.get();
        if (row.version() != expectedVersion) {
            return new Change.Stale(row.version());
        }
        change.accept(row);
        return new Change.Done(snapshot.kept(rows.saveAndFlush(row)));
    }

    private static boolean matches(Cloth cloth, ClothSearch search) {
        double weightGsm = cloth.figure(Property.WEIGHT_GSM).map(f -> f.value()).orElse(Double.NaN);
        return search.text().map(text -> says(cloth, text)).orElse(true)
                && search.fibre().map(key -> cloth.blend().percentOf(key) > 0).orElse(true)
                && search.minWeightGsm().map(least -> weightGsm >= least).orElse(true)
                && search.maxWeightGsm().map(most -> weightGsm <= most).orElse(true);
    }

    private static boolean says(Cloth cloth, String text) {
        String where = (cloth.name() + " " + cloth.note() + " " + cloth.blend().words()).toLowerCase(Locale.ROOT);
        return List.of(text.toLowerCase(Locale.ROOT).trim().split("\\s+")).stream()
                .allMatch(where::contains);
    }
}
