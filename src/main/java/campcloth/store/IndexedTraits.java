package campcloth.store;

import campcloth.cloth.ClothTraits;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Seasons and fire grade of each cloth as the search index holds them, by its row in the columns: what a count by facets needs and the
 * columns do not tell. Follows the index at each use; two bytes a cloth.
 */
@Component
class IndexedTraits {

    private static final String ALL = "select cloth_id, seasons, fire_grade from cloth_index";
    private static final String CHANGED = """
            select cloth_id, seasons, fire_grade from cloth join cloth_index on cloth_id = id
            where tick > ? and tick <= ?""";

    /** How far the index has come: all changes up to the tick are in it, by these rules. */
    private record Index(long tick, String rules) {}

    private record State(int timeline, Index index, short[] kinds, ClothTraits[] traits) {

        boolean isOf(int line, Index now) {
            return timeline == line && index.rules().equals(now.rules());
        }

        boolean hasReached(int line, Index now) {
            return isOf(line, now) && index.tick() == now.tick();
        }
    }

    /**
     * The columns with what the index says beside them.
     *
     * @param kinds by row, the number of its traits; 0, or no place at all, where the index holds none
     * @param traits by number
     */
    record Seen(Columns columns, short[] kinds, ClothTraits[] traits) {

        int kind(int row) {
            return row < kinds.length ? kinds[row] : 0;
        }
    }

    private final JdbcTemplate sql;
    private final TransactionTemplate transaction;
    private final ClothSnapshot snapshot;
    private final Map<ClothTraits, Short> numbers = new HashMap<>();
    private volatile State state = new State(0, new Index(-1, ""), new short[0], new ClothTraits[1]);

    IndexedTraits(JdbcTemplate sql, PlatformTransactionManager transactions, ClothSnapshot snapshot) {
        this.sql = sql;
        this.transaction = new TransactionTemplate(transactions);
        this.transaction.setReadOnly(true);
        this.transaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        this.snapshot = snapshot;
    }

    /** As the index stands now; the columns are as new at least. */
    Seen current() {
        Index index = index();
        ClothSnapshot.Now now = snapshot.now();
        State seen = state;
        State newest = seen.hasReached(now.at().timeline(), index) ? seen : followed();
        return new Seen(now.columns(), newest.kinds(), newest.traits());
    }

    /** Of the threads that wait here none holds a connection. */
    private synchronized State followed() {
        Index index = index();
        ClothSnapshot.Now now = snapshot.now();
        int line = now.at().timeline();
        State seen = state;
        if (!seen.hasReached(line, index)) {
            boolean anew = !seen.isOf(line, index) || seen.index().tick() > index.tick();
            short[] kinds = Arrays.copyOf(
                    anew ? new short[0] : seen.kinds(),
                    Math.max(anew ? 0 : seen.kinds().length, now.columns().rows()));
            transaction.executeWithoutResult(status -> {
                if (anew) {
                    Cursor.each(sql, ALL, row -> put(row, now.columns(), kinds));
                } else {
                    Cursor.each(
                            sql,
                            CHANGED,
                            row -> put(row, now.columns(), kinds),
                            seen.index().tick(),
                            index.tick());
                }
            });
            state = new State(line, index, kinds, traits());
        }
        return state;
    }

    private void put(ResultSet row, Columns columns, short[] kinds) throws SQLException {
        OptionalInt at = columns.everHeld(row.getString("cloth_id"));
        if (at.isPresent()) {
            ClothTraits traits =
                    new ClothTraits(Set.of((String[]) row.getArray("seasons").getArray()), row.getString("fire_grade"));
            kinds[at.getAsInt()] = numbers.computeIfAbsent(traits, added -> (short) (numbers.size() + 1));
        }
    }

    private ClothTraits[] traits() {
        ClothTraits[] traits = new ClothTraits[numbers.size() + 1];
        numbers.forEach((of, number) -> traits[number] = of);
        return traits;
    }

    /** Of the tick that it is at, only a part may be in it yet. */
    private Index index() {
        return Objects.requireNonNull(sql.queryForObject(
                "select case when through_id is null then tick else tick - 1 end as tick, rules from cloth_index_state",
                (row, number) -> new Index(row.getLong("tick"), row.getString("rules"))));
    }
}
