package campcloth.store;

import java.sql.PreparedStatement;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowCallbackHandler;

/** Reads the rows of a query a few at a time, however many they are. Works so only within a transaction. */
final class Cursor {

    private static final int ROWS_AT_ONCE = 500;

    private Cursor() {}

    static void each(JdbcTemplate sql, String query, RowCallbackHandler rows, Object... values) {
        sql.query(
                connection -> {
                    PreparedStatement statement = connection.prepareStatement(query);
                    statement.setFetchSize(ROWS_AT_ONCE);
                    for (int i = 0; i < values.length; i++) {
                        statement.setObject(i + 1, values[i]);
                    }
                    return statement;
                },
                rows);
    }
}
