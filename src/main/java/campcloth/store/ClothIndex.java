package campcloth.store;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothTraiter;
import campcloth.fibre.Fibres;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Keeps the table {@code cloth_index} as the table {@code cloth} is. Whoever writes a cloth need not know of it: before each search
 * the rows whose tick is newer are brought in, a batch a transaction, by one instance at a time. Made anew at start where it was
 * computed by other rules; two instances with different rules at one database are not provided for.
 */
@Component
class ClothIndex implements SmartInitializingSingleton {

    private static final Logger LOG = LoggerFactory.getLogger(ClothIndex.class);
    private static final int BATCH = 500;

    /** Any number that nothing else in the database locks. */
    private static final long LOCK = 0x636c6f74_68696478L;

    /** To be raised whenever the same cloth may get other words than before. */
    private static final int WORD_RULES = 2;

    private static final String CHANGED = """
            select id, tick, removed_by is not null as removed, owner, body from cloth
            where tick > :tick or (tick = :tick and id > cast(:through as text)) order by tick, id limit :batch""";

    private record State(long tick, @Nullable String throughId, String rules) {

        boolean isBehind(long newest) {
            return tick < newest || throughId != null;
        }
    }

    private record Changed(
            String id, long tick, boolean removed, @Nullable UUID owner, String body) {}

    private final JdbcClient sql;
    private final JdbcTemplate batches;
    private final TransactionTemplate transaction;
    private final Stems stems;
    private final ClothTraiter traiter;
    private final Fibres fibres;
    private final Json json;

    ClothIndex(
            JdbcTemplate batches,
            PlatformTransactionManager transactions,
            Stems stems,
            ClothTraiter traiter,
            Fibres fibres,
            Json json) {
        this.sql = JdbcClient.create(batches);
        this.batches = batches;
        this.transaction = new TransactionTemplate(transactions);
        this.transaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        this.stems = stems;
        this.traiter = traiter;
        this.fibres = fibres;
        this.json = json;
    }

    @Override
    public void afterSingletonsInstantiated() {
        String rules = rules();
        transaction.executeWithoutResult(status -> {
            lock();
            if (!state().rules().equals(rules)) {
                LOG.info("The index of the cloths is made anew.");
                sql.sql("delete from cloth_index").update();
                sql.sql("update cloth_index_state set tick = -1, through_id = null, rules = ?")
                        .param(rules)
                        .update();
            }
        });
        bringUpToDate();
    }

    /** Brings in every change that was committed before this was called. */
    void bringUpToDate() {
        follow(indexed -> {});
    }

    /**
     * The same.
     *
     * @param watcher is told after each batch how many cloths are brought in by now
     */
    void follow(LongConsumer watcher) {
        if (state().isBehind(newestTick())) {
            catchUp(watcher);
        }
    }

    /** Of the threads that wait here none holds a connection. */
    private synchronized void catchUp(LongConsumer watcher) {
        long indexed = 0;
        while (Boolean.TRUE.equals(transaction.execute(status -> broughtInAFullBatch()))) {
            indexed += BATCH;
            watcher.accept(indexed);
        }
    }

    private boolean broughtInAFullBatch() {
        lock();
        long newest = newestTick();
        State state = state();
        if (!state.isBehind(newest)) {
            return false;
        }
        List<Changed> changed = changedSince(state);
        write(changed);
        boolean full = changed.size() == BATCH;
        long tick = changed.isEmpty() ? newest : changed.get(changed.size() - 1).tick();
        sql.sql("update cloth_index_state set tick = ?, through_id = ?")
                .param(full ? tick : Math.max(tick, newest))
                .param(full ? changed.get(BATCH - 1).id() : null)
                .update();
        return full;
    }

    private List<Changed> changedSince(State state) {
        return sql.sql(CHANGED)
                .param("tick", state.tick())
                .param("through", state.throughId())
                .param("batch", BATCH)
                .query((row, number) -> new Changed(
                        row.getString("id"),
                        row.getLong("tick"),
                        row.getBoolean("removed"),
                        row.getObject("owner", UUID.class),
                        row.getString("body")))
                .list();
    }

    private void write(List<Changed> changed) {
        List<Object[]> gone = changed.stream()
                .filter(Changed::removed)
                .map(row -> new Object[] {row.id()})
                .toList();
        batches.batchUpdate("delete from cloth_index where cloth_id = ?", gone);
        List<ClothIndexRow> rows = changed.parallelStream()
                .filter(row -> !row.removed())
                .map(this::indexed)
                .toList();
        Map<String, String> stem =
                stems.of(rows.stream().flatMap(row -> row.words().all()).collect(Collectors.toSet()));
        batches.batchUpdate(
                ClothIndexRow.WRITE,
                rows.stream()
                        .map(row -> row.values(row.words().vector(word -> stem.getOrDefault(word, word))))
                        .toList());
    }

    private ClothIndexRow indexed(Changed row) {
        Cloth cloth = json.read(row.body(), ClothBody.class).cloth(fibres);
        return new ClothIndexRow(
                row.id(), Optional.ofNullable(row.owner()), cloth, ClothWords.of(cloth), traiter.of(cloth));
    }

    private void lock() {
        sql.sql("select pg_advisory_xact_lock(?)")
                .param(LOCK)
                .query((row, number) -> true)
                .single();
    }

    private long newestTick() {
        return sql.sql("select tick from cloth_clock").query(Long.class).single();
    }

    private State state() {
        return sql.sql("select tick, through_id, rules from cloth_index_state")
                .query((row, number) ->
                        new State(row.getLong("tick"), row.getString("through_id"), row.getString("rules")))
                .single();
    }

    /** Stems belong to the rules, too. */
    private String rules() {
        String server = sql.sql("show server_version").query(String.class).single();
        return Digest.of(WORD_RULES + "\n" + server + "\n" + traiter.rules());
    }
}
