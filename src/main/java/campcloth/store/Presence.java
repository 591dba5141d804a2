package campcloth.store;

import campcloth.job.Pace;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * Shows all instances over one database that this one lives: a connection beside the pool holds a lock of its session (an advisory one)
 * on a number, by which claims say who works ({@link Lapse}). The server lets the lock go when the connection ends, so also when the
 * program is killed. A number nobody holds is a sign of death and no proof: the line may have broken. So whoever takes work over on that
 * sign is kept from harm by the {@link Fence}; this only says whether it is worth to wait. Each connection takes a new number, which
 * running claims come to bear at their next beat. There from before anything is claimed until all work has ended.
 */
@Component
class Presence implements SmartLifecycle {

    /** How the connection is called in the server's list of them. */
    static final String NAME = "campcloth presence";

    private static final Logger LOG = LoggerFactory.getLogger(Presence.class);
    private static final int SECONDS_TO_ANSWER = 5;
    private static final long MOST_TO_STOP_MS = 2000;
    private static final String LOCK = "select not pg_is_in_recovery() and pg_try_advisory_lock(?)";

    /** A number that is held. */
    private record Held(long number, long sinceNanos) {}

    private final BesideThePool door;
    private final Pace pace;
    private final SecureRandom random = new SecureRandom();
    private volatile Optional<Held> held = Optional.empty();
    private Optional<Stay> stay = Optional.empty();

    @Autowired
    Presence(JdbcConnectionDetails database, Pace pace) {
        this(BesideThePool.of(database, NAME), pace);
    }

    Presence(BesideThePool door, Pace pace) {
        this.door = door;
        this.pace = pace;
    }

    /** The number that this instance holds; none while it cannot show that it lives. */
    Optional<Long> number() {
        return held.map(Held::number);
    }

    /** Whether it has been there for long enough to say that others are not: after a fault of the database all come back by and by. */
    boolean mayJudge() {
        return held.filter(now ->
                        System.nanoTime() - now.sinceNanos() >= pace.silence().toNanos())
                .isPresent();
    }

    @Override
    public synchronized void start() {
        Stay begun = new Stay();
        stay = Optional.of(begun);
        begun.thread.start();
    }

    @Override
    public synchronized void stop() {
        stay.ifPresent(Stay::end);
        stay = Optional.empty();
    }

    @Override
    public synchronized boolean isRunning() {
        return stay.isPresent();
    }

    /** First to begin and last to end. */
    @Override
    public int getPhase() {
        return Integer.MIN_VALUE;
    }

    /** From one start to the stop that follows. */
    private final class Stay {

        private final CountDownLatch over = new CountDownLatch(1);
        private final Thread thread = new Thread(this::stay, NAME);

        Stay() {
            thread.setDaemon(true);
        }

        void end() {
            over.countDown();
            try {
                thread.join(MOST_TO_STOP_MS);
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        }

        private void stay() {
            while (!isOver()) {
                if (!present()) {
                    rest();
                }
            }
        }

        private boolean isOver() {
            return over.getCount() == 0;
        }

        private void rest() {
            try {
                if (over.await(pace.beat().toMillis(), TimeUnit.MILLISECONDS)) {
                    LOG.debug("The program ends.");
                }
            } catch (InterruptedException stopped) {
                over.countDown();
                Thread.currentThread().interrupt();
            }
        }

        /** Holds a number until the connection is lost; whether it was held at all. */
        private boolean present() {
            boolean was = false;
            try (Connection connection = door.open()) {
                long number = random.nextLong();
                connection.setNetworkTimeout(Runnable::run, (int) TimeUnit.SECONDS.toMillis(SECONDS_TO_ANSWER));
                was = locked(connection, number);
                if (was) {
                    held = Optional.of(new Held(number, System.nanoTime()));
                    while (!isOver() && connection.isValid(SECONDS_TO_ANSWER)) {
                        rest();
                    }
                }
            } catch (SQLException | RuntimeException lost) {
                LOG.debug("This instance cannot show that it lives: {}", lost.getMessage());
            } finally {
                held = Optional.empty();
            }
            if (was && !isOver()) {
                LOG.info("The connection by which this instance shows that it lives was lost; it takes another.");
            }
            return was;
        }

        private static boolean locked(Connection connection, long number) throws SQLException {
            try (PreparedStatement lock = connection.prepareStatement(LOCK)) {
                lock.setLong(1, number);
                try (ResultSet row = lock.executeQuery()) {
                    return row.next() && row.getBoolean(1);
                }
            }
        }
    }
}
