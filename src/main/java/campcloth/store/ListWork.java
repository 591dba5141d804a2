package campcloth.store;

import campcloth.cloth.Cloth;
import campcloth.cloth.KeptCloth.Origin;
import campcloth.fibre.Fibres;
import campcloth.supply.ListMerge;
import campcloth.supply.ListReport.Outcome;
import campcloth.supply.Listed;
import campcloth.supply.SupplierLists;
import campcloth.supply.Trait;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Rows of a list that are staged become cloths: finds what is kept of each, decides what comes of it, and writes that, within a
 * transaction of the caller's.
 */
final class ListWork {

    private static final String NAMED = """
            update staged_row s set kept_id = c.id from cloth c
            where c.id = s.named_id and c.owner is null and s.outcome is null
            """;
    /** An id that is not known here, or of a cloth that is somebody's own, is a key like any other. */
    private static final String NAMED_ELSEWHERE = """
            update staged_row set key = named_id, named_id = null where named_id is not null and kept_id is null
            """;

    private static final String LISTED = """
            update staged_row s set kept_id = l.cloth_id from cloth_listing l
            where s.kept_id is null and s.outcome is null and l.supplier = ? and l.supplier_key = s.key
            """;
    private static final String REMOVED = """
            update staged_row s set outcome = 'UNCHANGED', notes = '["you removed this cloth; it stays removed"]'
            from cloth c where c.id = s.kept_id and c.removed_by is not null and s.outcome is null
            """;
    private static final String SAYS_THE_SAME = """
            update staged_row s set outcome = 'UNCHANGED' from cloth_listing l
            where s.outcome is null and l.cloth_id = s.kept_id and l.supplier = ? and l.supplier_key = s.key
                and s.named_id is null and l.said = s.body
            """;
    private static final String SAYS_SOMETHING_ELSE = """
            select s.line, s.key, s.body as listed, s.unsaid, s.notes, s.kept_id, c.body as kept, c.origin,
                case when s.named_id = s.kept_id then null else l.said end as said
            from staged_row s join cloth c on c.id = s.kept_id left join cloth_listing l on l.cloth_id = c.id
            where s.outcome is null order by s.line
            """;
    private static final String NEW = """
            update staged_row set outcome = 'ADDED', new_id = gen_random_uuid()::text where outcome is null
            """;
    private static final String ADD = """
            insert into cloth (id, version, tick, origin, body, changed_at)
            select new_id, 0, ?, 'OWN', body, ? from staged_row
            where outcome = 'ADDED' and line >= ? and line < ?
            """;
    private static final String ADD_LISTING = """
            insert into cloth_listing (supplier, supplier_key, cloth_id, said)
            select ?, key, new_id, body from staged_row where outcome = 'ADDED' and line >= ? and line < ?
            """;
    private static final String CHANGE = """
            update cloth set body = ?::jsonb, version = version + 1, tick = ?, origin = ?, catalogue_digest = null, changed_at = ?
            where id = ?
            """;

    private static final long LINES_AT_ONCE = 2000;

    private final Connection connection;
    private final StagedRows staged;
    private final SupplierLists.Order order;
    private final Json json;
    private final Fibres fibres;
    private final Instant now;
    private long tick;

    ListWork(
            Connection connection,
            StagedRows staged,
            SupplierLists.Order order,
            Json json,
            Fibres fibres,
            Instant now) {
        this.connection = connection;
        this.staged = staged;
        this.order = order;
        this.json = json;
        this.fibres = fibres;
        this.now = now;
    }

    /** Keeps all others from changing cloths until the transaction ends, as everyone does who changes one. */
    void lock() throws SQLException {
        staged.execute("select tick from cloth_clock for update");
    }

    /** Decides what comes of every row, and changes the cloths that the list says something else of. */
    void decide(boolean writing) throws SQLException {
        staged.execute("analyze pg_temp.staged_row");
        staged.execute(NAMED);
        staged.execute(NAMED_ELSEWHERE);
        staged.execute(LISTED, order.supplier());
        staged.execute(REMOVED);
        staged.execute(SAYS_THE_SAME, order.supplier());
        joinThoseThatSaySomethingElse(writing);
        staged.execute(NEW);
    }

    /** Adds the cloths that are new. */
    void add(SupplierLists.Watcher watcher) throws SQLException {
        long last = number("select coalesce(max(line), 0) from staged_row where outcome = 'ADDED'");
        long written = 0;
        for (long line = 0; line <= last; line += LINES_AT_ONCE) {
            long end = line + LINES_AT_ONCE;
            written += staged.execute(ADD, tick(), Timestamp.from(now), line, end);
            staged.execute(ADD_LISTING, order.supplier(), line, end);
            watcher.written(written);
        }
    }

    private void joinThoseThatSaySomethingElse(boolean writing) throws SQLException {
        try (Statement query = connection.createStatement();
                PreparedStatement came =
                        connection.prepareStatement("update staged_row set outcome = ?, notes = ? where line = ?");
                PreparedStatement change = connection.prepareStatement(CHANGE);
                PreparedStatement said =
                        connection.prepareStatement("update cloth_listing set said = ?::jsonb where cloth_id = ?")) {
            query.setFetchSize(StagedRows.AT_ONCE);
            int waiting = 0;
            try (ResultSet row = query.executeQuery(SAYS_SOMETHING_ELSE)) {
                while (row.next()) {
                    Cloth kept = cloth(row.getString("kept"));
                    Optional<String> before = Optional.ofNullable(row.getString("said"));
                    ListMerge.Merged merged =
                            ListMerge.of(kept, before.map(this::cloth).orElse(kept), listed(row));
                    boolean changes = !merged.cloth().equals(kept);
                    came.setString(1, (changes ? Outcome.CHANGED : Outcome.UNCHANGED).name());
                    came.setString(2, notes(row.getString("notes"), merged.notes()));
                    came.setLong(3, row.getLong("line"));
                    came.addBatch();
                    if (writing && changes) {
                        change(change, merged.cloth(), row);
                    }
                    if (writing && before.isPresent()) {
                        said.setString(1, json.write(ClothBody.of(merged.said())));
                        said.setString(2, row.getString("kept_id"));
                        said.addBatch();
                    }
                    if (++waiting % StagedRows.AT_ONCE == 0) {
                        flush(came, change, said);
                    }
                }
            }
            flush(came, change, said);
        }
    }

    private void change(PreparedStatement change, Cloth cloth, ResultSet row) throws SQLException {
        Origin origin = Origin.valueOf(row.getString("origin")) == Origin.OWN ? Origin.OWN : Origin.EDITED;
        ClothBody kept = json.read(row.getString("kept"), ClothBody.class);
        change.setString(1, json.write(kept.becoming(cloth)));
        change.setLong(2, tick());
        change.setString(3, origin.name());
        change.setTimestamp(4, Timestamp.from(now));
        change.setString(5, row.getString("kept_id"));
        change.addBatch();
    }

    private static void flush(PreparedStatement... batches) throws SQLException {
        for (PreparedStatement batch : batches) {
            batch.executeBatch();
        }
    }

    private Listed listed(ResultSet row) throws SQLException {
        Set<Trait> unsaid = EnumSet.noneOf(Trait.class);
        Arrays.stream(row.getString("unsaid").split(" "))
                .filter(name -> !name.isEmpty())
                .map(Trait::valueOf)
                .forEach(unsaid::add);
        return new Listed(row.getString("key"), Optional.empty(), cloth(row.getString("listed")), unsaid);
    }

    private Cloth cloth(String body) {
        return json.read(body, ClothBody.class).cloth(fibres);
    }

    private String notes(String before, List<String> more) {
        List<String> notes = new ArrayList<>(List.of(json.read(before, String[].class)));
        notes.addAll(more);
        return json.write(notes);
    }

    /** One tick for the whole list, taken only if anything changes. */
    private long tick() throws SQLException {
        if (tick == 0) {
            tick = number("update cloth_clock set tick = tick + 1 returning tick");
        }
        return tick;
    }

    private long number(String query) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet found = statement.executeQuery(query)) {
            found.next();
            return found.getLong(1);
        }
    }
}
