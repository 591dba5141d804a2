package campcloth.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import org.postgresql.Driver;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;

/** Opens a connection that nobody else uses and the pool does not count, for what listens or holds for as long as the program runs. */
interface BesideThePool {

    Connection open() throws SQLException;

    /** @param name how the connection is called in the server's list of them */
    static BesideThePool of(JdbcConnectionDetails database, String name) {
        return () -> open(database.getJdbcUrl(), database.getUsername(), database.getPassword(), name);
    }

    static Connection open(String url, @Nullable String user, @Nullable String password, String name)
            throws SQLException {
        Properties properties = new Properties();
        put(properties, "user", user);
        put(properties, "password", password);
        put(properties, "ApplicationName", name);
        put(properties, "tcpKeepAlive", "true");
        Connection connection = new Driver().connect(url, properties);
        if (connection == null) {
            throw new SQLException("no PostgreSQL at " + url);
        }
        return connection;
    }

    private static void put(Properties properties, String name, @Nullable String value) {
        if (value != null) {
            properties.setProperty(name, value);
        }
    }
}
