package campcloth.store;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.NewIds;
import campcloth.access.NotAllowed;
import campcloth.access.Role;
import campcloth.job.Bell;
import campcloth.job.Job;
import campcloth.job.Jobs;
import campcloth.job.KeptJob;
import campcloth.job.NewJob;
import campcloth.job.TooManyJobs;
import campcloth.supply.Spool;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.sql.PreparedStatement;
import java.sql.Types;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.zip.GZIPOutputStream;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** The jobs over PostgreSQL, for those who hand them in. Hands in one at a time, so that the bounds hold. */
@Component
class JobsInPostgres implements Jobs {

    private static final int PACKED_AT_ONCE = 8192;
    private static final String ALONE = "select pg_advisory_xact_lock(hashtext('campcloth.job'))";
    private static final String BOUNDS = """
            select count(*) filter (where state in ('QUEUED', 'RUNNING')) as waiting,
                count(*) filter (where state in ('QUEUED', 'RUNNING') and owner is not distinct from ?) as own,
                coalesce(sum(payload_bytes), 0) as bytes
            from job where state in ('QUEUED', 'RUNNING') or payload_bytes > 0
            """;
    private static final String ADD = """
            insert into job (id, kind, state, request, payload, payload_bytes, keeps_payload, owner, roles, made_at, not_before)
            values (?, ?, 'QUEUED', ?::json, ?, ?, ?, ?, ?, clock_timestamp(), clock_timestamp())
            """;
    private static final String ADD_ON_PAYLOAD = """
            insert into job (id, kind, state, request, payload, payload_bytes, keeps_payload, owner, roles, made_at, not_before)
            select ?, kind, 'QUEUED', ?::json, payload, payload_bytes, true, ?, ?, clock_timestamp(), clock_timestamp()
            from job where id = ? and payload is not null and state in ('DONE', 'FAILED', 'CANCELLED')
            """;
    private static final String BY_ID = "select " + JobRows.ALL_COLUMNS + " from job where id = ?";
    private static final String LATEST = "select " + JobRows.COLUMNS
            + " from job where owner is not distinct from ? order by made_at desc, id limit ?";
    private static final String CANCEL = """
            update job set cancel_asked = true,
                state = case when state = 'QUEUED' then 'CANCELLED' else state end,
                ended_at = case when state = 'QUEUED' then clock_timestamp() end,
                payload = case when state = 'QUEUED' and not keeps_payload then null else payload end,
                payload_bytes = case when state = 'QUEUED' and not keeps_payload then 0 else payload_bytes end
            where id = ? and state in ('QUEUED', 'RUNNING')
            """;
    private static final String REMOVE = "delete from job where id = ? and state in ('DONE', 'FAILED', 'CANCELLED')";

    private final JdbcTemplate sql;
    private final TransactionTemplate transaction;
    private final JobRows rows;
    private final Askers askers;
    private final NewIds ids;
    private final Bell bell;

    JobsInPostgres(
            JdbcTemplate sql,
            PlatformTransactionManager transactions,
            JobRows rows,
            Askers askers,
            NewIds ids,
            Bell bell) {
        this.sql = sql;
        this.transaction = new TransactionTemplate(transactions);
        this.rows = rows;
        this.askers = askers;
        this.ids = ids;
        this.bell = bell;
    }

    @Override
    public Job add(NewJob job) throws IOException {
        if (job.payload().isEmpty()) {
            return added(job, Optional.empty());
        }
        try (Spool packed = new Spool()) {
            try (InputStream bytes = job.payload().get().open()) {
                GZIPOutputStream out = new GZIPOutputStream(packed.out(), PACKED_AT_ONCE);
                bytes.transferTo(out);
                out.finish();
            }
            return added(job, Optional.of(packed));
        } catch (UncheckedIOException broken) {
            throw broken.getCause();
        }
    }

    private Job added(NewJob job, Optional<Spool> packed) {
        return handedIn(packed.map(JobsInPostgres::size).orElse(0L), id -> {
                    sql.update(connection -> {
                        PreparedStatement add = connection.prepareStatement(ADD);
                        add.setObject(1, id);
                        add.setString(2, job.kind().name());
                        add.setString(3, job.request());
                        if (packed.isPresent()) {
                            add.setBinaryStream(4, packed.get().in(), size(packed.get()));
                        } else {
                            add.setNull(4, Types.BINARY);
                        }
                        add.setLong(5, packed.map(JobsInPostgres::size).orElse(0L));
                        add.setBoolean(6, job.keepsPayload());
                        add.setObject(7, owner().orElse(null), Types.OTHER);
                        add.setArray(8, connection.createArrayOf("text", roles()));
                        return add;
                    });
                    return true;
                })
                .orElseThrow();
    }

    @Override
    public Optional<Job> addOnPayloadOf(String id, String request) {
        Optional<KeptJob> other = byId(id).filter(KeptJob::isPayloadKept);
        if (other.isEmpty()) {
            return Optional.empty();
        }
        return handedIn(
                0,
                fresh -> sql.update(connection -> {
                            PreparedStatement add = connection.prepareStatement(ADD_ON_PAYLOAD);
                            add.setObject(1, fresh);
                            add.setString(2, request);
                            add.setObject(3, owner().orElse(null), Types.OTHER);
                            add.setArray(4, connection.createArrayOf("text", roles()));
                            add.setObject(5, other.get().job().id());
                            return add;
                        })
                        > 0);
    }

    /** Writes a job under a new id, where there is room for it; one that is there from the first time is answered as it is. */
    private Optional<Job> handedIn(long bytes, Predicate<UUID> written) {
        UUID id = ids.next("job");
        Optional<Job> job = Optional.ofNullable(transaction.execute(status -> {
                    sql.query(ALONE, row -> {});
                    Optional<Job> there = ids.mayBeThere() ? row(id).map(KeptJob::job) : Optional.empty();
                    if (there.isPresent()) {
                        return there;
                    }
                    checkRoom(bytes);
                    return written.test(id) ? row(id).map(KeptJob::job) : Optional.<Job>empty();
                }))
                .flatMap(found -> found);
        bell.ring();
        return job;
    }

    private void checkRoom(long bytes) {
        sql.query(
                BOUNDS,
                row -> {
                    if (row.getLong("own") >= MOST_OWN) {
                        throw TooManyJobs.own();
                    }
                    if (row.getLong("waiting") >= MOST || row.getLong("bytes") + bytes > MOST_PAYLOAD_BYTES) {
                        throw TooManyJobs.altogether();
                    }
                },
                owner().orElse(null));
    }

    @Override
    public Optional<KeptJob> byId(String id) {
        return Ids.uuid(id)
                .flatMap(this::row)
                .filter(kept -> kept.job().holding().mayRead(askers.now()));
    }

    private Optional<KeptJob> row(UUID id) {
        return sql.query(BY_ID, (row, number) -> rows.kept(row), id).stream().findFirst();
    }

    @Override
    public List<Job> latest(int most) {
        return sql.query(LATEST, (row, number) -> rows.job(row), owner().orElse(null), most);
    }

    @Override
    public Cancelling cancel(String id) {
        Optional<Job> job = mine(id);
        if (job.isEmpty()) {
            return new Cancelling.Missing();
        }
        boolean asked = sql.update(CANCEL, job.get().id()) > 0;
        Optional<Job> now = row(job.get().id()).map(KeptJob::job);
        if (now.isEmpty()) {
            return new Cancelling.Missing();
        }
        return asked ? new Cancelling.Asked(now.get()) : new Cancelling.Ended(now.get());
    }

    @Override
    public boolean remove(String id) {
        return mine(id).map(job -> sql.update(REMOVE, job.id()) > 0).orElse(false);
    }

    private Optional<Job> mine(String id) {
        Optional<Job> job = byId(id).map(KeptJob::job);
        if (job.isPresent() && !job.get().holding().mayChange(askers.now(), Role.ADMINISTRATOR)) {
            throw new NotAllowed("This job belongs to nobody; ask an administrator to end it.");
        }
        return job;
    }

    /** A job belongs to whoever hands it in, whichever role that is: a keeper who makes nothing takes lists over. */
    private Optional<UUID> owner() {
        Asker asker = askers.now();
        if (!asker.isKnown()) {
            throw new NotAllowed("Only who is logged in hands in jobs. Log in, or show a token.");
        }
        return asker.account();
    }

    private String[] roles() {
        Asker asker = askers.now();
        return asker.roles().stream().map(Role::name).sorted().toArray(String[]::new);
    }

    private static long size(Spool packed) {
        try {
            return packed.size();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
