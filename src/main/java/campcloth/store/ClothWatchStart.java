package campcloth.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import org.postgresql.Driver;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/** Watches over the cloths from when the service is up until it goes down, on a connection beside the pool. */
@Component
class ClothWatchStart implements SmartLifecycle {

    private final JdbcConnectionDetails database;
    private final ClothSnapshot snapshot;
    private @Nullable ClothWatch watch;

    ClothWatchStart(JdbcConnectionDetails database, ClothSnapshot snapshot) {
        this.database = database;
        this.snapshot = snapshot;
    }

    @Override
    public synchronized void start() {
        watch = new ClothWatch(this::open, snapshot::bringUpToDate, ClothWatch.AT_LEAST_EVERY);
        watch.start();
    }

    @Override
    public synchronized void stop() {
        if (watch != null) {
            watch.close();
            watch = null;
        }
    }

    @Override
    public synchronized boolean isRunning() {
        return watch != null;
    }

    private Connection open() throws SQLException {
        return open(database.getJdbcUrl(), database.getUsername(), database.getPassword());
    }

    static Connection open(String url, @Nullable String user, @Nullable String password) throws SQLException {
        Properties properties = new Properties();
        put(properties, "user", user);
        put(properties, "password", password);
        put(properties, "ApplicationName", ClothWatch.NAME);
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
