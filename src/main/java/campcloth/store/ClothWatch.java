package campcloth.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.postgresql.PGConnection;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Has the catalogue in memory brought up to date as soon as any instance changes a cloth, so that the next question finds it so. Listens
 * on a connection of its own; where that is lost it tries again, after a second first, then ever later. Looks at the clock at least
 * every half minute whether it heard anything or not. What it misses is found at the next use all the same.
 */
final class ClothWatch implements AutoCloseable {

    /** How the connection is called in the server's list of them. */
    static final String NAME = "campcloth cloth watch";

    static final Duration AT_LEAST_EVERY = Duration.ofSeconds(30);

    private static final Logger LOG = LoggerFactory.getLogger(ClothWatch.class);
    private static final Duration FIRST_PAUSE = Duration.ofSeconds(1);
    private static final int SECONDS_TO_ANSWER = 5;
    private static final Duration MOST_TO_STOP = Duration.ofSeconds(2);

    private final BesideThePool door;
    private final Runnable bringUpToDate;
    private final Duration atLeastEvery;
    private final CountDownLatch stopped = new CountDownLatch(1);
    private final AtomicReference<@Nullable Connection> listening = new AtomicReference<>();
    private final Thread thread = new Thread(this::watch, NAME);

    ClothWatch(BesideThePool door, Runnable bringUpToDate, Duration atLeastEvery) {
        this.door = door;
        this.bringUpToDate = bringUpToDate;
        this.atLeastEvery = atLeastEvery;
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    @Override
    public void close() {
        stopped.countDown();
        Connection connection = listening.getAndSet(null);
        if (connection != null) {
            abort(connection);
        }
        try {
            thread.join(MOST_TO_STOP.toMillis());
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static void abort(Connection connection) {
        try {
            connection.abort(Runnable::run);
        } catch (SQLException gone) {
            LOG.debug("The connection was gone already.", gone);
        }
    }

    private boolean isStopped() {
        return stopped.getCount() == 0;
    }

    private void watch() {
        Duration pause = FIRST_PAUSE;
        while (!isStopped()) {
            boolean heard = listened();
            if (!heard) {
                lookAnyway();
            }
            pause = heard ? FIRST_PAUSE : shorter(pause.multipliedBy(2), atLeastEvery);
            rest(shorter(pause, atLeastEvery));
        }
    }

    private static Duration shorter(Duration one, Duration other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    private void rest(Duration pause) {
        try {
            if (!stopped.await(pause.toMillis(), TimeUnit.MILLISECONDS)) {
                LOG.debug("Listening again.");
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            stopped.countDown();
        }
    }

    /** Listens until the connection is lost; whether it was there at all. */
    private boolean listened() {
        boolean heard = false;
        try (Connection connection = door.open()) {
            listening.set(connection);
            PGConnection postgres = connection.unwrap(PGConnection.class);
            try (Statement statement = connection.createStatement()) {
                statement.execute("listen campcloth_cloth");
            }
            bringUpToDate.run();
            heard = true;
            while (!isStopped()) {
                postgres.getNotifications((int) atLeastEvery.toMillis());
                bringUpToDate.run();
                if (!connection.isValid(SECONDS_TO_ANSWER)) {
                    break;
                }
            }
        } catch (SQLException | RuntimeException lost) {
            tell(lost);
        } finally {
            listening.set(null);
        }
        return heard;
    }

    /** Where there is no connection to listen on, another may do to look at the clock. */
    private void lookAnyway() {
        try {
            bringUpToDate.run();
        } catch (RuntimeException failure) {
            tell(failure);
        }
    }

    private void tell(Exception lost) {
        if (!isStopped()) {
            LOG.info("The watch over the cloths is interrupted and will be taken up again: {}", lost.getMessage());
        }
    }
}
