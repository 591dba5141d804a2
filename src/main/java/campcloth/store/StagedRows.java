package campcloth.store;

import campcloth.figure.Refusal;
import campcloth.supply.ListReport;
import campcloth.supply.ListReport.Outcome;
import campcloth.supply.ListRow;
import campcloth.supply.Trait;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The rows of one list on the way into the catalogue: a table of the connection alone, so that a list is looked at whole before
 * anything that others see is touched.
 */
final class StagedRows {

    static final int AT_ONCE = 500;

    private static final String TABLE = """
            create temporary table staged_row (
                line bigint not null, key text not null, named_id text, kept_id text, body jsonb, unsaid text,
                outcome text, errors text not null default '[]', notes text not null default '[]', new_id text)
            """;

    private final Connection connection;
    private final Json json;

    private StagedRows(Connection connection, Json json) {
        this.connection = connection;
        this.json = json;
    }

    static StagedRows on(Connection connection, Json json) throws SQLException {
        StagedRows rows = new StagedRows(connection, json);
        rows.execute("drop table if exists pg_temp.staged_row");
        rows.execute(TABLE);
        return rows;
    }

    /** Whoever fills the table: a batch at a time. */
    final class Filling implements Consumer<ListRow>, AutoCloseable {

        private final PreparedStatement insert = connection.prepareStatement(
                "insert into staged_row (line, key, named_id, body, unsaid, outcome, errors, notes)"
                        + " values (?, ?, ?, ?::jsonb, ?, ?, ?, ?)");
        private int waiting;
        private long count;

        Filling() throws SQLException {}

        @Override
        public void accept(ListRow row) {
            try {
                insert.setLong(1, row.line());
                insert.setString(2, row.key());
                if (row instanceof ListRow.Good good) {
                    set(
                            good.listed().clothId().orElse(null),
                            json.write(ClothBody.of(good.listed().cloth())));
                    insert.setString(
                            5, good.listed().unsaid().stream().map(Trait::name).collect(Collectors.joining(" ")));
                    insert.setString(6, null);
                    insert.setString(7, "[]");
                    insert.setString(8, json.write(good.notes()));
                } else if (row instanceof ListRow.Bad bad) {
                    set(null, null);
                    insert.setString(5, null);
                    insert.setString(6, Outcome.REFUSED.name());
                    insert.setString(7, json.write(bad.refusals()));
                    insert.setString(8, "[]");
                }
                insert.addBatch();
                count++;
                if (++waiting == AT_ONCE) {
                    flush();
                }
            } catch (SQLException failure) {
                throw new Interrupted(failure);
            }
        }

        private void set(@Nullable String namedId, @Nullable String body) throws SQLException {
            insert.setString(3, namedId);
            insert.setString(4, body);
        }

        long count() {
            return count;
        }

        void flush() throws SQLException {
            insert.executeBatch();
            waiting = 0;
        }

        @Override
        public void close() throws SQLException {
            insert.close();
        }
    }

    /** A failure of the database inside a callback that cannot say so. */
    static final class Interrupted extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private final SQLException failure;

        Interrupted(SQLException failure) {
            super(failure);
            this.failure = failure;
        }

        SQLException failure() {
            return failure;
        }
    }

    ListReport.Counts counts() throws SQLException {
        Map<Outcome, Long> counts = new EnumMap<>(Outcome.class);
        try (Statement query = connection.createStatement();
                ResultSet found = query.executeQuery("select outcome, count(*) from staged_row group by outcome")) {
            while (found.next()) {
                counts.put(Outcome.valueOf(found.getString(1)), found.getLong(2));
            }
        }
        return new ListReport.Counts(
                counts.values().stream().mapToLong(Long::longValue).sum(),
                counts.getOrDefault(Outcome.ADDED, 0L),
                counts.getOrDefault(Outcome.CHANGED, 0L),
                counts.getOrDefault(Outcome.UNCHANGED, 0L),
                counts.getOrDefault(Outcome.REFUSED, 0L));
    }

    /** Every row, in the order of the list. */
    void each(Consumer<ListReport.Row> rows) throws SQLException {
        rows("select line, key, outcome, errors, notes from staged_row order by line", rows);
    }

    /** The rows that a report holds: those refused first, then those with notes, as far as there is room; in the list's order. */
    void foremost(Consumer<ListReport.Row> rows) throws SQLException {
        rows(
                "select line, key, outcome, errors, notes from (select * from staged_row"
                        + " order by outcome <> 'REFUSED', notes = '[]', line limit " + ListReport.MOST_ROWS
                        + ") foremost order by line",
                rows);
    }

    private void rows(String query, Consumer<ListReport.Row> rows) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.setFetchSize(AT_ONCE);
            try (ResultSet found = statement.executeQuery(query)) {
                while (found.next()) {
                    rows.accept(new ListReport.Row(
                            found.getLong(1),
                            found.getString(2),
                            Outcome.valueOf(found.getString(3)),
                            List.of(json.read(found.getString(4), Refusal[].class)),
                            List.of(json.read(found.getString(5), String[].class))));
                }
            }
        }
    }

    int execute(String change, Object... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(change)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            statement.execute();
            return statement.getUpdateCount();
        }
    }
}
