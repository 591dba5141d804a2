package campcloth.store;

import campcloth.fibre.Fibres;
import com.zaxxer.hikari.HikariDataSource;
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
 * has come as far as is asked for, so that the first database has less to do. While it is behind or away, the first is asked.
 */
final class ClothReplica implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(ClothReplica.class);

    /** After a failure it is left alone for that long: project choice. */
    private static final Duration REST = Duration.ofSeconds(30);

    private final HikariDataSource source = new HikariDataSource();
    private final JdbcTemplate sql = new JdbcTemplate(source);
    private final TransactionTemplate transaction = new TransactionTemplate(new JdbcTransactionManager(source));
    private final ClothReader reader;
    private volatile long restsUntil = System.nanoTime();

    ClothReplica(String url, String user, String password, Json json, Fibres fibres) {
        source.setJdbcUrl(url);
        source.setUsername(user);
        source.setPassword(password);
        source.setPoolName("replica");
        source.setMaximumPoolSize(2);
        source.setMinimumIdle(0);
        source.setConnectionTimeout(3000);
        source.setInitializationFailTimeout(-1);
        source.setReadOnly(true);
        source.addDataSourceProperty("connectTimeout", "3");
        source.addDataSourceProperty("socketTimeout", "25");
        source.addDataSourceProperty("logServerErrorDetail", "false");
        transaction.setReadOnly(true);
        transaction.setIsolationLevel(TransactionDefinition.ISOLATION_REPEATABLE_READ);
        reader = new ClothReader(sql, json, fibres);
    }

    /**
     * Reads in one snapshot of the copy, if that holds all changes up to a tick.
     *
     * @param reading is given the newest tick in the snapshot and what reads it
     * @return what was read; empty where the copy is behind or was left alone after a failure
     */
    <T> Optional<T> at(long tick, BiFunction<Long, ClothReader, T> reading) {
        if (System.nanoTime() - restsUntil < 0) {
            return Optional.empty();
        }
        return Objects.requireNonNull(transaction.execute(status -> {
            long newest = Objects.requireNonNull(sql.queryForObject("select tick from cloth_clock", Long.class));
            return newest < tick ? Optional.<T>empty() : Optional.of(reading.apply(newest, reader));
        }));
    }

    /** Leaves it alone for a while. */
    void failed(RuntimeException failure) {
        restsUntil = System.nanoTime() + REST.toNanos();
        LOG.warn("The copy of the database cannot be read, so the first one is: {}", failure.getMessage());
    }

    @Override
    public void close() {
        source.close();
    }
}
