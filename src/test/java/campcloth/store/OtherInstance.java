package campcloth.store;

import campcloth.job.Pace;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.springframework.core.env.Environment;

/**
 * Another instance over the database of a test, as far as others can see it: the connection by which it shows that it lives. Cut, it is
 * to the database as though it had been killed; mended, as one whose line had broken.
 */
final class OtherInstance implements AutoCloseable {

    private static final Duration SOON = Duration.ofMillis(20);

    private final Environment database;
    private final AtomicReference<@Nullable Connection> line = new AtomicReference<>();
    private final Presence presence;
    private volatile boolean cut;

    /** One that says at once of others that they are gone. */
    OtherInstance(Environment database) {
        this(database, Duration.ZERO);
    }

    /** @param silence how long it has to be there before it says that others are not */
    OtherInstance(Environment database, Duration silence) {
        this.database = database;
        this.presence = new Presence(this::open, new Pace(SOON, SOON, Duration.ofSeconds(30), silence, SOON));
        presence.start();
        awaitPresent();
    }

    Presence presence() {
        return presence;
    }

    private synchronized Connection open() throws SQLException {
        if (cut) {
            throw new SQLException("the line is cut");
        }
        Connection opened = BesideThePool.open(
                database.getRequiredProperty("spring.datasource.url"),
                database.getRequiredProperty("spring.datasource.username"),
                database.getRequiredProperty("spring.datasource.password"),
                Presence.NAME);
        line.set(opened);
        return opened;
    }

    /** Its connection ends without a word. */
    void cut() throws SQLException {
        synchronized (this) {
            cut = true;
            Connection open = line.getAndSet(null);
            if (open != null) {
                open.abort(Runnable::run);
            }
        }
        Awaited.until(() -> presence.number().isEmpty());
    }

    void mend() {
        cut = false;
        awaitPresent();
    }

    private void awaitPresent() {
        Awaited.until(() -> presence.number().isPresent());
    }

    @Override
    public void close() {
        presence.stop();
    }
}
