package campcloth.store.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.postgresql.PGConnection;
import org.postgresql.copy.CopyManager;

/** What the connection's schema holds, as PostgreSQL's catalogue tells it; what belongs to an extension is not ours. */
record Schema(Connection connection) {

    static final String HISTORY = "flyway_schema_history";

    private static final String OURS = """
             from pg_class c join pg_namespace n on n.oid = c.relnamespace
             where n.nspname = current_schema() and not c.relispartition and not exists (
                 select from pg_depend d
                 where d.classid = 'pg_class'::regclass and d.objid = c.oid and d.deptype = 'e')
            """;

    private static final String COLUMNS = """
            select quote_ident(a.attname), a.attcollation <> 0,
                coalesce(array_position(k.indkey::int[], a.attnum::int), -1)
            from pg_class c join pg_namespace n on n.oid = c.relnamespace
            join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped and a.attgenerated = ''
            left join pg_index k on k.indrelid = c.oid and k.indisprimary
            where n.nspname = current_schema() and quote_ident(c.relname) = ? order by a.attnum
            """;

    /**
     * The columns of a table.
     *
     * @param names without those that are computed
     * @param order by which the rows stand in the same order on every machine
     */
    record Columns(List<String> names, String order) {}

    private record Column(String name, boolean isText, int placeInKey) {

        /** Text sorts otherwise from machine to machine, but for this. */
        String sorted() {
            return isText ? name + " collate \"C\"" : name;
        }
    }

    /** Makes the text of values the same on every machine, and lets it take its time; until the transaction ends. */
    void speakPlainly() throws SQLException {
        execute("set local timezone = 'UTC'");
        execute("set local datestyle = 'ISO, YMD'");
        execute("set local intervalstyle = 'postgres'");
        execute("set local extra_float_digits = 1");
        execute("set local bytea_output = 'hex'");
        execute("set local statement_timeout = 0");
        execute("set local idle_in_transaction_session_timeout = 0");
    }

    List<String> tables() throws SQLException {
        return texts("select quote_ident(c.relname)" + OURS + " and c.relkind in ('r', 'p') and c.relname <> '"
                + HISTORY + "' order by c.relname collate \"C\"");
    }

    /** Whatever of tables, views and sequences there is. */
    List<String> everything() throws SQLException {
        return texts("select quote_ident(c.relname)" + OURS + " and c.relkind in ('r', 'p', 'v', 'm', 'S', 'f')");
    }

    boolean hasHistory() throws SQLException {
        return !texts("select 1" + OURS + " and c.relname = '" + HISTORY + "'").isEmpty();
    }

    /** The last migration that was made; nothing where none was. */
    List<String> versions() throws SQLException {
        return texts("select version from " + HISTORY
                + " where success and version is not null order by installed_rank desc limit 1");
    }

    Columns columns(String table) throws SQLException {
        List<Column> columns = new ArrayList<>();
        try (PreparedStatement query = connection.prepareStatement(COLUMNS)) {
            query.setString(1, table);
            try (ResultSet row = query.executeQuery()) {
                while (row.next()) {
                    columns.add(new Column(row.getString(1), row.getBoolean(2), row.getInt(3)));
                }
            }
        }
        String byKey = columns.stream()
                .filter(column -> column.placeInKey() >= 0)
                .sorted((one, other) -> Integer.compare(one.placeInKey(), other.placeInKey()))
                .map(Column::sorted)
                .collect(Collectors.joining(", "));
        return new Columns(
                columns.stream().map(Column::name).toList(),
                byKey.isEmpty() ? "(" + table + ")::text collate \"C\"" : byKey);
    }

    List<Manifest.Sequence> sequences() throws SQLException {
        List<Manifest.Sequence> found = new ArrayList<>();
        try (Statement query = connection.createStatement();
                ResultSet row = query.executeQuery("select quote_ident(sequencename), last_value from pg_sequences"
                        + " where schemaname = current_schema() and last_value is not null order by sequencename")) {
            while (row.next()) {
                found.add(new Manifest.Sequence(row.getString(1), row.getLong(2)));
            }
        }
        return found;
    }

    /** Writes the rows of a table, and tells how many. */
    long copyOut(String table, Columns columns, OutputStream to) throws SQLException, IOException {
        return copies().copyOut(
                        "copy (select " + String.join(", ", columns.names()) + " from " + table + " order by "
                                + columns.order() + ") to stdout",
                        to);
    }

    long copyIn(String table, List<String> columns, InputStream from) throws SQLException, IOException {
        return copies().copyIn("copy " + table + " (" + String.join(", ", columns) + ") from stdin", from);
    }

    private CopyManager copies() throws SQLException {
        return connection.unwrap(PGConnection.class).getCopyAPI();
    }

    void execute(String command) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(command);
        }
    }

    List<String> texts(String query) throws SQLException {
        List<String> found = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(query)) {
            while (row.next()) {
                found.add(row.getString(1));
            }
        }
        return found;
    }
}
