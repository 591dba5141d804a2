package campcloth.store;

import campcloth.cloth.KeptCloth;
import campcloth.fibre.Fibres;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.jdbc.core.JdbcTemplate;
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

    record Refreshes(long count, long nanos) {

        Refreshes andOne(long took) {
            return new Refreshes(count + 1, nanos + took);
        }
    }

    private static final String CHANGED =
            "select id, version, tick, origin, removed_by is not null as removed, body, owner, share_key from cloth where tick > ?";

    private final ClothRows rows;
    private final JdbcTemplate sql;
    private final Json json;
    private final Fibres fibres;
    private volatile State state = new State(-1, Map.of());
    private volatile Refreshes refreshes = new Refreshes(0, 0);

    ClothSnapshot(ClothRows rows, JdbcTemplate sql, Json json, Fibres fibres) {
        this.rows = rows;
        this.sql = sql;
        this.json = json;
        this.fibres = fibres;
    }

    /** Every cloth by id, whoever it belongs to. */
    @Transactional(readOnly = true)
    public Map<String, KeptCloth> cloths() {
        long newest = rows.newestTick();
        State seen = state;
        return (seen.tick() >= newest ? seen : refreshed(newest)).cloths();
    }

    /** How many cloths are in memory now; asks nobody. */
    int held() {
        return state.cloths().size();
    }

    /** How often it was brought up to date since the start, and how long that took. */
    Refreshes refreshes() {
        return refreshes;
    }

    KeptCloth kept(ClothRow row) {
        return new KeptCloth(
                row.getId(),
                row.version(),
                row.origin(),
                json.read(row.body(), ClothBody.class).cloth(fibres),
                row.holding());
    }

    private synchronized State refreshed(long newest) {
        State seen = state;
        if (seen.tick() >= newest) {
            return seen;
        }
        long begun = System.nanoTime();
        Map<String, KeptCloth> cloths = new LinkedHashMap<>(seen.cloths());
        long tick = Math.max(newest, changedSince(seen.tick(), cloths));
        state = new State(tick, Collections.unmodifiableMap(cloths));
        refreshes = refreshes.andOne(System.nanoTime() - begun);
        return state;
    }

    /** Brings the cloths up to date, a few rows at a time; answers with the newest tick among them. */
    private long changedSince(long tick, Map<String, KeptCloth> cloths) {
        long[] newest = {tick};
        Cursor.each(
                sql,
                CHANGED,
                row -> {
                    String id = row.getString("id");
                    newest[0] = Math.max(newest[0], row.getLong("tick"));
                    if (row.getBoolean("removed")) {
                        cloths.remove(id);
                    } else {
                        cloths.put(id, kept(row, id));
                    }
                },
                tick);
        return newest[0];
    }

    private KeptCloth kept(ResultSet row, String id) throws SQLException {
        return new KeptCloth(
                id,
                row.getLong("version"),
                KeptCloth.Origin.valueOf(row.getString("origin")),
                json.read(row.getString("body"), ClothBody.class).cloth(fibres),
                Held.of(row));
    }
}
