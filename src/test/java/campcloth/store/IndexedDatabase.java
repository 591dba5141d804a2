package campcloth.store;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.NewIds;
import campcloth.cloth.Cloth;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.ClothTraiter;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.ShippedCatalogue;
import campcloth.fibre.Fibres;
import campcloth.fibre.LabelVocabulary;
import campcloth.store.postgres.PostgresForTests;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.StringReader;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.flywaydb.core.Flyway;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** A database of its own with cloths in it, written as any writer writes them, and the index beside them. */
final class IndexedDatabase implements AutoCloseable {

    private static final int LOT = 1000;

    private final PostgresForTests.Database database;
    private final HikariDataSource source = new HikariDataSource();
    private final JdbcTransactionManager transactions = new JdbcTransactionManager(source);
    private final TransactionTemplate transaction = new TransactionTemplate(transactions);
    private final Json json = new Json();
    private final Fibres fibres = ShippedCatalogue.get().fibres();
    private final JdbcTemplate sql = new JdbcTemplate(source);

    IndexedDatabase() {
        this(PostgresForTests.fresh());
    }

    /** Another way into a database, as a second instance of the program has it. */
    IndexedDatabase(PostgresForTests.Database database) {
        this.database = database;
        source.setJdbcUrl(database.url());
        source.setUsername(database.user());
        source.setPassword(database.password());
        source.setMaximumPoolSize(6);
        source.setMinimumIdle(1);
        Flyway.configure().dataSource(source).load().migrate();
    }

    PostgresForTests.Database database() {
        return database;
    }

    JdbcTemplate sql() {
        return sql;
    }

    /** One instance's catalogue in memory. */
    ClothSnapshot snapshot() {
        return snapshot(20_000);
    }

    /** The same where hardly any cloth is kept whole. */
    ClothSnapshot snapshot(int mostWhole) {
        return new ClothSnapshot(sql, transactions, new ClothReader(sql, json, fibres), mostWhole, Optional.empty());
    }

    /** Every cloth that is in it, by its id. */
    static Map<String, KeptCloth> all(ClothSnapshot snapshot) {
        Map<String, KeptCloth> all = new TreeMap<>();
        snapshot.byIds(snapshot.columns().ids()).forEach(kept -> all.put(kept.id(), kept));
        return all;
    }

    /** One instance's watch, which has something brought up to date. */
    ClothWatch watch(Runnable bringUpToDate, Duration atLeastEvery) {
        return new ClothWatch(
                () -> BesideThePool.open(database.url(), database.user(), database.password(), ClothWatch.NAME),
                bringUpToDate,
                atLeastEvery);
    }

    /** One instance's cloths, to be read alone: what only changes need is not there. */
    @SuppressWarnings("NullAway")
    Cloths cloths(ClothSnapshot snapshot, ClothTraiter traiter) {
        return new ClothsInPostgres(
                null,
                snapshot,
                index(traiter),
                traits(snapshot),
                finder(),
                null,
                new Guard(new Askers(Asker.LOCAL)),
                null,
                json,
                Clock.systemUTC(),
                new NewIds());
    }

    /** One instance's traits of the index in memory. */
    IndexedTraits traits(ClothSnapshot snapshot) {
        return new IndexedTraits(sql, transactions, snapshot);
    }

    String body(Cloth cloth) {
        return json.write(ClothBody.of(cloth));
    }

    /** Work in one transaction. */
    void writing(Consumer<JdbcTemplate> work) {
        transaction.executeWithoutResult(status -> work.accept(sql));
    }

    /** Makes some cloths a little heavier, as one change. */
    void touch(int count, int seed) {
        writing(any -> sql.update("""
                update cloth set tick = ?, version = version + 1, body = jsonb_set(body, '{figures,weightGsm}',
                    jsonb_build_object('value', w + 1, 'low', w + 1, 'high', w + 1, 'basis', 'MEASURED', 'source', 'own scales'))
                from (select id as touched, coalesce(weight_gsm, 200) as w from cloth
                    order by md5(id || cast(? as text)) limit ?) picked where id = touched""", nextTick(), seed, count));
    }

    /** Takes no connection again that was open before: its server was started anew. */
    void connectAnew() {
        source.getHikariPoolMXBean().softEvictConnections();
    }

    /** Reads every row of a query, a few at a time; answers with how many there are. */
    long walk(String query) {
        long[] rows = {0};
        transaction.executeWithoutResult(status -> Cursor.each(sql, query, row -> {
            row.getString(1);
            row.getString(2);
            rows[0]++;
        }));
        return rows[0];
    }

    /** One instance's keeper of the index. */
    ClothIndex index(ClothTraiter traiter) {
        return new ClothIndex(sql, transactions, stems(), traiter, fibres, json);
    }

    ClothFinder finder() {
        return new ClothFinder(JdbcClient.create(sql), stems(), new FibreNames(fibres, labels(), stems()));
    }

    /** What a search finds in the index as it stands. */
    ClothFinder.Found found(ClothSearch search, int size) {
        return Optional.ofNullable(transaction.execute(status -> finder().page(search, "owner is null", 0, size)))
                .orElseThrow();
    }

    ClothFinder.Found found(String text) {
        return found(new ClothSearch(Optional.of(text), Set.of(), Optional.empty(), Optional.empty()), 500);
    }

    /** How PostgreSQL goes about the first page of a search. */
    List<String> plan(ClothSearch search) {
        return Optional.ofNullable(transaction.execute(status -> {
                    ClothFinder.Asked asked =
                            finder().orNearest(finder().asked(search, "owner is null"), "owner is null");
                    return JdbcClient.create(sql)
                            .sql("explain " + asked.page())
                            .params(asked.params())
                            .param("size", 50)
                            .param("before", 0)
                            .query(String.class)
                            .list();
                }))
                .orElseThrow();
    }

    /** Writes cloths as one change. */
    void write(Map<String, Cloth> cloths) {
        transaction.executeWithoutResult(status -> {
            long tick = nextTick();
            List<Object[]> rows = new ArrayList<>();
            cloths.forEach((id, cloth) -> rows.add(new Object[] {id, tick, json.write(ClothBody.of(cloth))}));
            for (int from = 0; from < rows.size(); from += LOT) {
                sql.batchUpdate("""
                        insert into cloth (id, version, tick, origin, body) values (?, 0, ?, 'OWN', cast(? as jsonb))
                        on conflict (id) do update set
                            tick = excluded.tick, body = excluded.body, version = cloth.version + 1, removed_by = null""", rows.subList(from, Math.min(rows.size(), from + LOT)));
            }
        });
    }

    void remove(String id) {
        transaction.executeWithoutResult(status -> sql.update(
                "update cloth set removed_by = 'USER', version = version + 1, tick = ? where id = ?", nextTick(), id));
    }

    /** Leaves a body behind that no program can read. */
    void spoil(String id) {
        sql.update("update cloth set body = body || '{\"blend\": 7}' where id = ?", id);
    }

    /** All of the index. */
    Map<String, String> rows() {
        Map<String, String> rows = new TreeMap<>();
        sql.query("select cloth_id, cast(cloth_index as text) as whole from cloth_index", row -> {
            rows.put(row.getString("cloth_id"), row.getString("whole"));
        });
        return rows;
    }

    @Override
    public void close() {
        source.close();
    }

    long newestTick() {
        Long tick = sql.queryForObject("select tick from cloth_clock", Long.class);
        return tick == null ? -1 : tick;
    }

    long nextTick() {
        Long tick = sql.queryForObject("update cloth_clock set tick = tick + 1 returning tick", Long.class);
        return Optional.ofNullable(tick).orElseThrow();
    }

    private Stems stems() {
        return new Stems(JdbcClient.create(sql));
    }

    private LabelVocabulary labels() {
        try {
            return LabelVocabulary.read(Map.<String, StringReader>of(), fibres, new ArrayList<>());
        } catch (IOException nothingIsRead) {
            throw new IllegalStateException(nothingIsRead);
        }
    }
}
