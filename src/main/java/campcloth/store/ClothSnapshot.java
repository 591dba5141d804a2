package campcloth.store;

import campcloth.cloth.KeptCloth;
import campcloth.fibre.Fibres;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * The catalogue in memory, brought up to date at each use: asks for the newest tick and reads only the rows that changed
 * since. Never behind a change that was committed before it was asked, whoever made the change. Rests on READ COMMITTED, which
 * the connections are set to.
 */
@Component
class ClothSnapshot {

    private record State(long tick, Map<String, KeptCloth> cloths) {}

    private final ClothRows rows;
    private final Json json;
    private final Fibres fibres;
    private volatile State state = new State(-1, Map.of());

    ClothSnapshot(ClothRows rows, Json json, Fibres fibres) {
        this.rows = rows;
        this.json = json;
        this.fibres = fibres;
    }

    /** Every cloth of the catalogue by id. */
    @Transactional(readOnly = true)
    public Map<String, KeptCloth> cloths() {
        long newest = rows.newestTick();
        State seen = state;
        return (seen.tick() >= newest ? seen : refreshed(newest)).cloths();
    }

    KeptCloth kept(ClothRow row) {
        return new KeptCloth(
                row.getId(),
                row.version(),
                row.origin(),
                json.read(row.body(), ClothBody.class).cloth(fibres));
    }

    private synchronized State refreshed(long newest) {
        State seen = state;
        if (seen.tick() >= newest) {
            return seen;
        }
        List<ClothRow> changed = rows.findByTickGreaterThan(seen.tick());
        Map<String, KeptCloth> cloths = new LinkedHashMap<>(seen.cloths());
        long tick = newest;
        for (ClothRow row : changed) {
            tick = Math.max(tick, row.tick());
            if (row.isRemoved()) {
                cloths.remove(row.getId());
            } else {
                cloths.put(row.getId(), kept(row));
            }
        }
        state = new State(tick, Collections.unmodifiableMap(cloths));
        return state;
    }
}
