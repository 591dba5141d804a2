package campcloth.store;

import campcloth.access.Holding;
import campcloth.cloth.ClothInNumbers;
import campcloth.cloth.KeptCloth;
import campcloth.fibre.Fibres;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/** Reads cloths from the table, a lot at a time; what has to be worked out of a lot is shared by the processors. */
@Component
class ClothReader {

    private static final int LOT = 2000;

    private static final String COLUMNS =
            "id, version, tick, origin, removed_by is not null as removed, body, owner, share_key";
    private static final String CHANGED = "select " + COLUMNS + " from cloth where tick > ?";
    private static final String BY_IDS = "select " + COLUMNS + " from cloth where removed_by is null and id = any (?)";

    private record Row(
            String id, long version, KeptCloth.Origin origin, boolean removed, String body, Holding holding) {}

    /** A row that changed. */
    record Changed(
            String id, @Nullable KeptCloth cloth, @Nullable ClothInNumbers figures) {

        boolean isRemoved() {
            return cloth == null;
        }

        KeptCloth kept() {
            return there(cloth);
        }

        ClothInNumbers numbers() {
            return there(figures);
        }

        private <T> T there(@Nullable T of) {
            if (of == null) {
                throw new IllegalStateException(id + " was removed");
            }
            return of;
        }
    }

    private final JdbcTemplate sql;
    private final Json json;
    private final Fibres fibres;

    ClothReader(JdbcTemplate sql, Json json, Fibres fibres) {
        this.sql = sql;
        this.json = json;
        this.fibres = fibres;
    }

    KeptCloth kept(ClothRow row) {
        return new KeptCloth(
                row.getId(),
                row.version(),
                row.origin(),
                json.read(row.body(), ClothBody.class).cloth(fibres),
                row.holding());
    }

    /** Shows each row that changed after a tick, within a transaction of the caller's; answers with the newest tick among them. */
    long changedSince(long tick, Consumer<Changed> visitor) {
        long[] newest = {tick};
        Lots<Changed> lots = new Lots<>(this::changed, visitor);
        Cursor.each(
                sql,
                CHANGED,
                row -> {
                    newest[0] = Math.max(newest[0], row.getLong("tick"));
                    lots.add(row(row));
                },
                tick);
        lots.flush();
        return newest[0];
    }

    /** Those of the ids that are there. */
    Map<String, KeptCloth> byIds(List<String> ids) {
        Map<String, KeptCloth> found = new HashMap<>();
        Lots<KeptCloth> lots = new Lots<>(this::kept, kept -> found.put(kept.id(), kept));
        sql.query(
                BY_IDS,
                statement -> {
                    Connection connection = statement.getConnection();
                    statement.setArray(1, connection.createArrayOf("text", ids.toArray()));
                },
                row -> {
                    lots.add(row(row));
                });
        lots.flush();
        return found;
    }

    private static Row row(ResultSet row) throws SQLException {
        return new Row(
                row.getString("id"),
                row.getLong("version"),
                KeptCloth.Origin.valueOf(row.getString("origin")),
                row.getBoolean("removed"),
                row.getString("body"),
                Held.of(row));
    }

    private Changed changed(Row row) {
        if (row.removed()) {
            return new Changed(row.id(), null, null);
        }
        KeptCloth kept = kept(row);
        return new Changed(row.id(), kept, ClothInNumbers.of(kept.cloth()));
    }

    private KeptCloth kept(Row row) {
        return new KeptCloth(
                row.id(),
                row.version(),
                row.origin(),
                json.read(row.body(), ClothBody.class).cloth(fibres),
                row.holding());
    }

    /** Rows gathered until they are enough to be shared among the processors; shown in the order they came. */
    private static final class Lots<T> {

        private final Function<Row, T> work;
        private final Consumer<T> visitor;
        private final List<Row> waiting = new ArrayList<>(LOT);

        Lots(Function<Row, T> work, Consumer<T> visitor) {
            this.work = work;
            this.visitor = visitor;
        }

        void add(Row row) {
            waiting.add(row);
            if (waiting.size() == LOT) {
                flush();
            }
        }

        void flush() {
            IntStream.range(0, waiting.size())
                    .parallel()
                    .mapToObj(i -> work.apply(waiting.get(i)))
                    .toList()
                    .forEach(visitor);
            waiting.clear();
        }
    }
}
