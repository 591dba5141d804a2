package campcloth.store;

import campcloth.fibre.Fibres;
import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.HikariPoolMXBean;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * A copy of the database that only reads (a hot standby). What brings the catalogue in memory up to date is read there where the copy
 * has come as far as is asked for on the same timeline, so that the first database has less to do. While it is behind or away, the
 * first is asked; so it is where the copy has become a database of its own.
 */
final class ClothReplica implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(ClothReplica.class);

    /** After a failure it is left alone for that long: project choice. */
    private static final Duration REST = Duration.ofSeconds(30);

    /**
     * Everybody waits while the catalogue is brought up to date, so that a copy that is silent is not waited for long: project choice.
     *
     * @param toConnect how long at most until there is a connection; whole seconds
     * @param toAnswer how long at most until something is heard on it; whole seconds
     */
    record Patience(Duration toConnect, Duration toAnswer) {

        static final Patience USUAL = new Patience(Duration.ofSeconds(1), Duration.ofSeconds(5));
    }

    private final HikariDataSource source = new HikariDataSource();
    private final JdbcTemplate sql = new JdbcTemplate(source);
    private final TransactionTemplate transaction = new TransactionTemplate(new JdbcTransactionManager(source));
    private final ClothReader reader;
    private volatile long restsUntil = System.nanoTime();

    ClothReplica(String url, String user, String password, Patience patience, Json json, Fibres fibres) {
        source.setJdbcUrl(url);
        source.setUsername(user);
        source.setPassword(password);
        source.setPoolName("replica");
        source.setMaximumPoolSize(2);
        source.setMinimumIdle(0);
        source.setConnectionTimeout(patience.toConnect().toMillis());
        source.setValidationTimeout(patience.toConnect().toMillis() / 2);
        source.setInitializationFailTimeout(-1);
        source.setReadOnly(true);
        source.addDataSourceProperty(
                "connectTimeout", Long.toString(patience.toConnect().toSeconds()));
        source.addDataSourceProperty(
                "socketTimeout", Long.toString(patience.toAnswer().toSeconds()));
        source.addDataSourceProperty("logServerErrorDetail", "false");
        transaction.setReadOnly(true);
        transaction.setIsolationLevel(TransactionDefinition.ISOLATION_REPEATABLE_READ);
        reader = new ClothReader(sql, json, fibres);
    }

    /**
     * Reads in one snapshot of the copy, if that holds all changes that are asked for.
     *
     * @param reading is given the clock in the snapshot and what reads it
     * @return what was read; empty where the copy is behind, on another timeline, or left alone after a failure
     */
    <T> Optional<T> at(ClothClock asked, BiFunction<ClothClock, ClothReader, T> reading) {
        if (System.nanoTime() - restsUntil < 0) {
            return Optional.empty();
        }
        return Objects.requireNonNull(transaction.execute(status -> {
            ClothClock here = ClothClock.now(sql);
            if (!here.isCopy()) {
                throw new IllegalStateException("it takes changes of its own, so it is no copy");
            }
            return here.hasReached(asked) ? Optional.of(reading.apply(here, reader)) : Optional.<T>empty();
        }));
    }

    /** Leaves it alone for a while; then connects anew, perhaps to another. */
    void failed(RuntimeException failure) {
        restsUntil = System.nanoTime() + REST.toNanos();
        Optional.ofNullable(source.getHikariPoolMXBean()).ifPresent(HikariPoolMXBean::softEvictConnections);
        LOG.warn("The copy of the database cannot be read, so the first one is: {}", failure.getMessage());
    }

    @Override
    public void close() {
        source.close();
    }
}
