package campcloth.store;

import campcloth.cloth.KeptCloth;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The catalogue in memory, brought up to date at each use: asks for the newest tick and reads only the rows that changed
 * since. Never behind a change that was committed before it was asked, whoever made the change. Rests on READ COMMITTED, which
 * the connections are set to. Where another database has taken the place of the first, all is read again.
 *
 * <p>All cloths are kept in columns; whole only while they are at most {@value #MOST_WHOLE}. Of a greater catalogue those that
 * somebody asked for lately are kept whole, the others are read from the table.
 */
@Component
class ClothSnapshot {

    /** Some 60 MB of cloths: project choice. */
    private static final int MOST_WHOLE = 20_000;

    /** @param whole every cloth by id; empty where they are too many */
    private record State(ClothClock at, Columns columns, Optional<Map<String, KeptCloth>> whole) {

        static State empty() {
            return new State(ClothClock.NONE, Columns.none(), Optional.of(Map.of()));
        }

        /** What of it can be brought up to a clock: nothing where that is on another timeline. */
        State towards(ClothClock clock) {
            return at.isOnTheLineOf(clock) ? this : empty();
        }
    }

    record Refreshes(long count, long nanos) {

        Refreshes andOne(long took) {
            return new Refreshes(count + 1, nanos + took);
        }
    }

    private final JdbcTemplate sql;
    private final TransactionTemplate transaction;
    private final ClothReader reader;
    private final LatelyAsked lately;
    private final int mostWhole;
    private final Optional<ClothReplica> replica;
    private final Makes makes = new Makes();
    private volatile Refreshes refreshes = new Refreshes(0, 0);
    private volatile State state = State.empty();

    @Autowired
    ClothSnapshot(
            JdbcTemplate sql,
            PlatformTransactionManager transactions,
            ClothReader reader,
            ObjectProvider<ClothReplica> replica) {
        this(sql, transactions, reader, MOST_WHOLE, replica.stream().findFirst());
    }

    ClothSnapshot(
            JdbcTemplate sql,
            PlatformTransactionManager transactions,
            ClothReader reader,
            int mostWhole,
            Optional<ClothReplica> replica) {
        this.replica = replica;
        this.sql = sql;
        this.transaction = new TransactionTemplate(transactions);
        this.transaction.setReadOnly(true);
        this.transaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        this.reader = reader;
        this.lately = new LatelyAsked(mostWhole);
        this.mostWhole = mostWhole;
    }

    /** Every cloth in columns, whoever it belongs to. */
    Columns columns() {
        return current().columns();
    }

    /** The columns and the clock that they stand at; a row stays a cloth's on one timeline. */
    record Now(ClothClock at, Columns columns) {}

    Now now() {
        State seen = current();
        return new Now(seen.at(), seen.columns());
    }

    /** The cloths of those ids that are there, whoever they belong to, in the order of the ids. */
    List<KeptCloth> byIds(Collection<String> ids) {
        List<String> asked = ids.stream().distinct().toList();
        if (changesAreGoingOn()) {
            return inOrder(asked, reader.byIds(asked));
        }
        State seen = current();
        return inOrder(asked, seen.whole().orElseGet(() -> lately(asked, seen.columns())));
    }

    /** The tick up to which changes are in memory by now, whether somebody asks or not. */
    long tickInMemory() {
        return state.at().tick();
    }

    /** Brings in every change that was committed before this was called. */
    void bringUpToDate() {
        current();
    }

    /** How many cloths are in memory now; asks nobody. */
    int held() {
        return state.columns().cloths();
    }

    /** How often it was brought up to date since the start, and how long that took. */
    Refreshes refreshes() {
        return refreshes;
    }

    KeptCloth kept(ClothRow row) {
        return reader.kept(row);
    }

    private State current() {
        ClothClock newest = ClothClock.now(sql);
        State seen = state;
        return seen.at().hasReached(newest) ? seen : refreshed(newest);
    }

    /** Of the threads that wait here none holds a connection, unless it came within a transaction. */
    private synchronized State refreshed(ClothClock newest) {
        State seen = state;
        if (seen.at().hasReached(newest)) {
            return seen;
        }
        long begun = System.nanoTime();
        try {
            state = atReplica(seen, newest)
                    .orElseGet(() -> Objects.requireNonNull(
                            transaction.execute(status -> changed(state, ClothClock.now(sql), reader))));
        } catch (RuntimeException failure) {
            indexAnew(seen);
            throw failure;
        }
        if (!state.at().isOnTheLineOf(seen.at())) {
            lately.forget();
        }
        refreshes = refreshes.andOne(System.nanoTime() - begun);
        return state;
    }

    /** Empty where there is no copy of the database, or none that can be read and has come that far. */
    private Optional<State> atReplica(State seen, ClothClock asked) {
        try {
            return replica.flatMap(copy -> copy.at(asked, (newest, rows) -> changed(seen, newest, rows)));
        } catch (RuntimeException failure) {
            replica.ifPresent(copy -> copy.failed(failure));
            indexAnew(seen);
            return Optional.empty();
        }
    }

    /** Forgets what was begun and not brought to its end. */
    private void indexAnew(State seen) {
        state = new State(seen.at(), seen.columns().indexedAnew(), seen.whole());
    }

    /**
     * In a transaction of its own, so that it sees nothing that is not committed, whoever asks.
     *
     * @param newest the clock of the database that the rows are read from
     */
    private State changed(State before, ClothClock newest, ClothReader rows) {
        if (before.at().hasReached(newest)) {
            return before;
        }
        State seen = before.towards(newest);
        ColumnsEdit edit = new ColumnsEdit(seen.columns(), makes);
        Wholes wholes = new Wholes(seen.whole(), mostWhole);
        long tick = rows.changedSince(seen.at().tick(), changed -> {
            if (changed.isRemoved()) {
                edit.remove(changed.id());
            } else {
                edit.put(changed.kept(), changed.numbers());
            }
            wholes.take(changed, edit.cloths());
        });
        return new State(newest.atLeast(tick), edit.done(), wholes.done());
    }

    private Map<String, KeptCloth> lately(List<String> ids, Columns columns) {
        Map<String, KeptCloth> found = lately.known(ids, columns);
        List<String> missing = ids.stream()
                .filter(id -> !found.containsKey(id) && columns.row(id).isPresent())
                .toList();
        if (!missing.isEmpty()) {
            Map<String, KeptCloth> read = reader.byIds(missing);
            lately.keep(read.values());
            found.putAll(read);
        }
        return found;
    }

    private static List<KeptCloth> inOrder(List<String> ids, Map<String, KeptCloth> cloths) {
        return ids.stream().map(cloths::get).filter(Objects::nonNull).toList();
    }

    /** Whether this thread is changing something: what it reads may never be committed and belongs in nobody's snapshot. */
    private static boolean changesAreGoingOn() {
        return TransactionSynchronizationManager.isActualTransactionActive()
                && !TransactionSynchronizationManager.isCurrentTransactionReadOnly();
    }
}
