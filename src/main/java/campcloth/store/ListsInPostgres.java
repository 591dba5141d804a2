package campcloth.store;

import campcloth.access.Role;
import campcloth.cloth.KeptCloth;
import campcloth.fibre.Fibres;
import campcloth.supply.ListHead;
import campcloth.supply.ListReport;
import campcloth.supply.ListWriter;
import campcloth.supply.SupplierLists;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Suppliers' lists over PostgreSQL. A list is read and looked at in a table of its own connection, while others go on working; then
 * it is written in one transaction, for which alone others that change cloths wait. It writes common cloths alone. At last it is brought into the index, while
 * others go on again.
 */
@Component
class ListsInPostgres implements SupplierLists {

    private static final Logger LOG = LoggerFactory.getLogger(ListsInPostgres.class);
    private static final int NETWORK_GRACE_MILLIS = 5_000;
    private static final long TELL_EVERY = 1000;
    private static final String ALL = """
            select c.id, c.version, c.origin, c.body, c.owner, c.share_key, l.supplier, l.supplier_key
            from cloth c left join cloth_listing l on l.cloth_id = c.id
            where c.removed_by is null and %s and c.origin = any (string_to_array(?, ' ')) order by lower(c.name), c.id
            """;

    private final JdbcTemplate sql;
    private final Guard guard;
    private final CommonNotes notes;
    private final Json json;
    private final Fibres fibres;
    private final ClothIndex index;
    private final Fence fence;
    private final Clock clock;
    private final Duration statementLimit;

    ListsInPostgres(
            JdbcTemplate sql,
            Guard guard,
            CommonNotes notes,
            Json json,
            Fibres fibres,
            ClothIndex index,
            Fence fence,
            Clock clock,
            @Value("${campcloth.database.list-statement-timeout:5m}") Duration statementLimit) {
        this.statementLimit = statementLimit;
        this.sql = sql;
        this.index = index;
        this.fence = fence;
        this.guard = guard;
        this.notes = notes;
        this.json = json;
        this.fibres = fibres;
        this.clock = clock;
    }

    @Override
    public ListReport take(Order order, Source list, Watcher watcher) throws IOException {
        guard.checkIs(Role.KEEPER, KEEPERS_ONLY);
        try {
            ListReport report = sql.execute((Connection connection) -> alone(connection, order, list, watcher));
            if (report == null) {
                throw new IllegalStateException("no report");
            }
            if (report.written()) {
                makeFindable(watcher);
            }
            return report;
        } catch (UncheckedIOException failure) {
            throw failure.getCause();
        }
    }

    /** So that whoever searches next need not wait. The list is written by now, so a failure here is left to the next search. */
    private void makeFindable(Watcher watcher) {
        try {
            index.follow(watcher::indexed);
        } catch (DataAccessException failure) {
            LOG.warn("The cloths of a list are not indexed yet; the next search does that: {}", failure.getMessage());
        }
    }

    private ListReport alone(Connection connection, Order order, Source list, Watcher watcher) throws SQLException {
        connection.setAutoCommit(false);
        try {
            takeYourTime(connection);
            return taken(connection, order, list, watcher);
        } catch (StagedRows.Interrupted failure) {
            throw failure.failure();
        } finally {
            tidy(connection);
        }
    }

    /** A statement over a whole list takes longer than one of a request. The pool sets back what is the connection's. */
    private void takeYourTime(Connection connection) throws SQLException {
        int limitMillis = Math.toIntExact(statementLimit.toMillis());
        connection.setNetworkTimeout(Runnable::run, limitMillis + NETWORK_GRACE_MILLIS);
        try (Statement bounds = connection.createStatement()) {
            bounds.execute("set local statement_timeout = " + limitMillis);
            bounds.execute("set local lock_timeout = " + limitMillis);
        }
    }

    private ListReport taken(Connection connection, Order order, Source list, Watcher watcher) throws SQLException {
        StagedRows staged = StagedRows.on(connection, json);
        ListHead head = fill(staged, list, watcher);
        boolean writing = !order.dryRun() && (order.onBadRow() == OnBadRow.SKIP || !hasRefused(connection));
        ListWork work = new ListWork(connection, staged, order, json, fibres, clock.instant());
        if (writing) {
            work.lock();
        }
        work.decide(writing);
        if (writing) {
            work.add(watcher);
        }
        ListReport.Counts counts = staged.counts();
        if (writing) {
            notes.note(
                    connection,
                    "changed",
                    "list",
                    order.supplier(),
                    counts.added() + " cloths added, " + counts.changed() + " changed");
        }
        fence.holds(connection);
        connection.commit();
        List<ListReport.Row> rows = new ArrayList<>();
        staged.foremost(rows::add);
        if (watcher.wantsRows()) {
            staged.each(watcher::row);
        }
        return new ListReport(head, writing, counts, rows);
    }

    private static boolean hasRefused(Connection connection) throws SQLException {
        try (PreparedStatement query =
                        connection.prepareStatement("select 1 from staged_row where outcome = 'REFUSED' limit 1");
                ResultSet found = query.executeQuery()) {
            return found.next();
        }
    }

    private static ListHead fill(StagedRows staged, Source list, Watcher watcher) throws SQLException {
        try (StagedRows.Filling filling = staged.new Filling()) {
            ListHead head = list.read(row -> {
                filling.accept(row);
                if (filling.count() % TELL_EVERY == 0) {
                    watcher.read(filling.count());
                }
            });
            filling.flush();
            watcher.read(filling.count());
            return head;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Leaves nothing on the connection, whatever happened; what was not committed by now is undone. */
    private static void tidy(Connection connection) {
        try {
            connection.rollback();
            try (PreparedStatement drop = connection.prepareStatement("drop table if exists pg_temp.staged_row")) {
                drop.execute();
            }
            connection.commit();
            connection.setAutoCommit(true);
        } catch (SQLException away) {
            LOG.warn("The connection of a list could not be tidied and is given up: {}", away.getMessage());
        }
    }

    @Override
    @Transactional(readOnly = true)
    public void each(Set<KeptCloth.Origin> origins, Consumer<ListWriter.Line> lines) {
        Cursor.each(
                sql,
                ALL.formatted(guard.listed()),
                row -> lines.accept(line(row)),
                origins.stream().map(Enum::name).collect(Collectors.joining(" ")));
    }

    private ListWriter.Line line(ResultSet row) throws SQLException {
        KeptCloth kept = new KeptCloth(
                row.getString("id"),
                row.getLong("version"),
                KeptCloth.Origin.valueOf(row.getString("origin")),
                json.read(row.getString("body"), ClothBody.class).cloth(fibres),
                Held.of(row));
        return new ListWriter.Line(
                kept,
                Optional.ofNullable(row.getString("supplier")),
                Optional.ofNullable(row.getString("supplier_key")));
    }
}
