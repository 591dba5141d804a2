package campcloth.store;

import campcloth.cloth.ShippedCatalogue;
import campcloth.store.postgres.PostgresForTests;
import campcloth.store.postgres.StandbyForTests;
import java.io.IOException;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.jdbc.support.JdbcTransactionManager;

/** A database with the shipped cloths and a hot standby of it, and catalogues in memory that are read from either. */
final class CopiedDatabase implements AutoCloseable {

    /** A copy on a machine that is busy with other tests is not away. */
    private static final ClothReplica.Patience LONG =
            new ClothReplica.Patience(Duration.ofMinutes(1), Duration.ofMinutes(2));

    private final StandbyForTests both;
    private final IndexedDatabase first;

    CopiedDatabase() throws IOException {
        both = StandbyForTests.start();
        first = new IndexedDatabase(both.first().database());
        first.write(ShippedCatalogue.get().cloths());
    }

    StandbyForTests both() {
        return both;
    }

    IndexedDatabase first() {
        return first;
    }

    /** The standby is one again, of the first as that stands. */
    void anew() throws IOException {
        both.copyAnew();
        first.connectAnew();
    }

    /** The standby goes on hearing of changes, and makes none from now on. */
    void paused() throws SQLException {
        both.second().ask("select pg_wal_replay_pause()");
        both.second().await("select pg_get_wal_replay_pause_state()", "paused");
    }

    void resumed() throws SQLException {
        both.second().ask("select pg_wal_replay_resume()");
    }

    static ClothReplica copy(StandbyForTests.Node node) {
        return copy(node, LONG);
    }

    static ClothReplica copy(StandbyForTests.Node node, ClothReplica.Patience patience) {
        PostgresForTests.Database database = node.database();
        return new ClothReplica(
                database.url(),
                database.user(),
                database.password(),
                patience,
                new Json(),
                ShippedCatalogue.get().fibres());
    }

    static DataSource at(StandbyForTests.Node node) {
        PostgresForTests.Database database = node.database();
        return new DriverManagerDataSource(database.url(), database.user(), database.password());
    }

    /** A catalogue in memory that is read from a copy where that will do; tells each time that rows are read at the address instead. */
    static ClothSnapshot snapshot(DataSource address, ClothReplica copy, Runnable readThere) {
        return snapshot(address, 20_000, Optional.of(copy), since -> readThere.run());
    }

    /** One without a copy, which keeps no more than that many cloths whole. */
    static ClothSnapshot snapshot(DataSource address, int mostWhole) {
        return snapshot(address, mostWhole, Optional.empty(), since -> {});
    }

    private static ClothSnapshot snapshot(
            DataSource address, int mostWhole, Optional<ClothReplica> copy, Consumer<Long> asked) {
        JdbcTemplate sql = new JdbcTemplate(address);
        ClothReader reader =
                new ClothReader(sql, new Json(), ShippedCatalogue.get().fibres()) {
                    @Override
                    long changedSince(long tick, Consumer<Changed> visitor) {
                        asked.accept(tick);
                        return super.changedSince(tick, visitor);
                    }
                };
        return new ClothSnapshot(sql, new JdbcTransactionManager(address), reader, mostWhole, copy);
    }

    @Override
    public void close() throws IOException {
        first.close();
        both.close();
    }
}
