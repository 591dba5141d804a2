package campcloth.store.postgres;

import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A database that may not be there yet, as where it starts together with the application. */
record AwaitedDatabase(
        String url, @Nullable String user, @Nullable String password) {

    private static final Logger LOG = LoggerFactory.getLogger(AwaitedDatabase.class);
    private static final String CONNECT_SECONDS = "3";
    private static final long PAUSE_MILLIS = 500;

    /** Returns once it can be entered; refuses where that does not come about in the time given. */
    void await(Duration patience) {
        long end = System.nanoTime() + patience.toNanos();
        boolean told = false;
        while (true) {
            try {
                DriverManager.getConnection(url, properties()).close();
                return;
            } catch (SQLException away) {
                if (System.nanoTime() >= end) {
                    throw refusal(patience, away);
                }
                if (!told) {
                    LOG.info("Waiting up to {} s for the database: {}", patience.toSeconds(), away.getMessage());
                    told = true;
                }
            }
            pause();
        }
    }

    private Properties properties() {
        Properties properties = new Properties();
        if (user != null) {
            properties.setProperty("user", user);
        }
        if (password != null) {
            properties.setProperty("password", password);
        }
        properties.setProperty("connectTimeout", CONNECT_SECONDS);
        properties.setProperty("loginTimeout", CONNECT_SECONDS);
        return properties;
    }

    private DatabaseUnavailable refusal(Duration patience, SQLException away) {
        String waited = patience.isZero() ? "" : " within " + patience.toSeconds() + " s";
        return new DatabaseUnavailable(
                "The database at " + withoutSecrets(url) + " cannot be entered" + waited + ": " + away.getMessage(),
                "See that it runs, and that SPRING_DATASOURCE_URL, _USERNAME and _PASSWORD are right. Where it starts together"
                        + " with Campcloth, CAMPCLOTH_DATABASE_WAIT says how many seconds to wait for it.",
                away);
    }

    /** An address may carry a password among its options. */
    private static String withoutSecrets(String url) {
        int options = url.indexOf('?');
        return options < 0 ? url : url.substring(0, options);
    }

    private static void pause() {
        try {
            Thread.sleep(PAUSE_MILLIS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new DatabaseUnavailable("Waiting for the database was interrupted.", "Start again.", interrupted);
        }
    }
}
