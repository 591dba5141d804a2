package campcloth.store;

import campcloth.access.Asker;
import campcloth.access.Role;
import campcloth.job.Claim;
import campcloth.job.Failure;
import campcloth.job.GivenUp;
import campcloth.job.Job;
import campcloth.job.JobKind;
import campcloth.job.JobQueue;
import campcloth.job.Pace;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.zip.GZIPInputStream;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * The jobs over PostgreSQL, for those who work on them. Time is the database's, the same for all instances. A row that another
 * worker is just claiming is skipped, so that nobody waits and no job is claimed twice. What runs may be taken over as {@link Lapse} says.
 */
@Component
class JobQueueInPostgres implements JobQueue {

    private static final Duration RESULTS_KEPT = Duration.ofDays(7);
    private static final Duration PAYLOAD_KEPT = Duration.ofMinutes(30);

    private static final String LAPSED = "state = 'RUNNING' and " + Lapse.of("lease_until");

    private static final String GIVE_UP = """
            update job set state = case when cancel_asked then 'CANCELLED' else 'FAILED' end, ended_at = clock_timestamp(),
                failure = case when cancel_asked then null else ?::json end, claim = null, claimed_by = null, lease_until = null,
                payload = case when keeps_payload then payload end,
                payload_bytes = case when keeps_payload then payload_bytes else 0 end
            where id in (select id from job where (cancel_asked or attempts >= ?) and %s
                for update skip locked)
            """.formatted(LAPSED);
    private static final String CLAIM = """
            update job set state = 'RUNNING', claim = ?, claimed_by = ?, attempts = attempts + 1, progress = '{}',
                lease_until = clock_timestamp() + ?::bigint * interval '1 ms',
                started_at = coalesce(started_at, clock_timestamp())
            where id = (select id from job where kind = any (string_to_array(?, ' '))
                and (state = 'QUEUED' and not_before <= clock_timestamp() or %s)
                order by made_at, id limit 1 for update skip locked)
            returning id, claim, kind, attempts, owner, roles, request,
                (select case when a.disabled then '' else a.roles end from account a where a.id = job.owner) as roles_now
            """.formatted(LAPSED);
    private static final String BEAT = """
            update job set progress = ?::json, claimed_by = ?, lease_until = clock_timestamp() + ?::bigint * interval '1 ms'
            where id = ? and claim = ? and state = 'RUNNING' returning cancel_asked
            """;
    private static final String PAYLOAD = "select payload from job where id = ? and claim = ?";
    private static final String END = """
            update job set state = ?, result = ?::json, failure = ?::json, ended_at = clock_timestamp(), claim = null,
                claimed_by = null, lease_until = null, payload = case when keeps_payload then payload end,
                payload_bytes = case when keeps_payload then payload_bytes else 0 end
            where id = ? and claim = ? and state = 'RUNNING'
            """;
    private static final String PUT_BACK = """
            update job set state = case when cancel_asked then 'CANCELLED' else 'QUEUED' end,
                ended_at = case when cancel_asked then clock_timestamp() end, claim = null, claimed_by = null,
                lease_until = null, attempts = attempts - ?, not_before = clock_timestamp() + ?::bigint * interval '1 ms'
            where id = ? and claim = ? and state = 'RUNNING'
            """;
    private static final String SWEEP =
            "delete from job where ended_at < clock_timestamp() - ?::bigint * interval '1 ms'";
    private static final String SWEEP_PAYLOAD = """
            update job set payload = null, payload_bytes = 0
            where payload is not null and ended_at < clock_timestamp() - ?::bigint * interval '1 ms'
            """;

    private final JdbcTemplate sql;
    private final Json json;
    private final Presence presence;
    private final Pace pace;
    private final Lapse lapse;

    JobQueueInPostgres(JdbcTemplate sql, Json json, Presence presence, Pace pace) {
        this.sql = sql;
        this.json = json;
        this.presence = presence;
        this.pace = pace;
        this.lapse = new Lapse(presence, pace);
    }

    @Override
    @Transactional
    public Optional<Claim> claim(Set<JobKind> kinds) {
        long earlyMs = lapse.earlyMillis();
        sql.update(GIVE_UP, json.write(GivenUp.afterLosses()), Job.MOST_ATTEMPTS, earlyMs);
        String names = kinds.stream().map(Enum::name).collect(Collectors.joining(" "));
        return sql
                .query(
                        CLAIM,
                        (row, number) -> claim(row),
                        UUID.randomUUID(),
                        presence.number().orElse(null),
                        pace.lease().toMillis(),
                        names,
                        earlyMs)
                .stream()
                .findFirst();
    }

    /** It asks as whoever handed it in, with no role that was taken away since; of a closed account with none. */
    private static Claim claim(ResultSet row) throws SQLException {
        Array roles = row.getArray("roles");
        Set<Role> known =
                Arrays.stream((String[]) roles.getArray()).map(Role::valueOf).collect(Collectors.toSet());
        Optional.ofNullable(row.getString("roles_now")).ifPresent(now -> known.retainAll(AccountsInPostgres.roles(now)));
        return new Claim(
                row.getObject("id", UUID.class),
                row.getObject("claim", UUID.class),
                JobKind.valueOf(row.getString("kind")),
                row.getInt("attempts"),
                new Asker(Optional.ofNullable(row.getObject("owner", UUID.class)), known, Set.of()),
                row.getString("request"));
    }

    @Override
    @Transactional
    public Beat beat(Claim claim, Map<String, Double> progress) {
        return sql
                .query(
                        BEAT,
                        (row, number) -> row.getBoolean("cancel_asked") ? Beat.CANCEL : Beat.GO_ON,
                        json.write(progress),
                        presence.number().orElse(null),
                        pace.lease().toMillis(),
                        claim.id(),
                        claim.token())
                .stream()
                .findFirst()
                .orElse(Beat.LOST);
    }

    @Override
    @Transactional(readOnly = true)
    public InputStream payload(Claim claim) throws IOException {
        byte[] packed = sql.query(PAYLOAD, (row, number) -> row.getBytes("payload"), claim.id(), claim.token()).stream()
                .findFirst()
                .orElseThrow(() -> new IOException("the payload of the job is not here"));
        return new GZIPInputStream(new ByteArrayInputStream(packed));
    }

    @Override
    @Transactional
    public boolean done(Claim claim, String result) {
        return sql.update(END, "DONE", result, null, claim.id(), claim.token()) > 0;
    }

    @Override
    @Transactional
    public boolean failed(Claim claim, Failure why) {
        return sql.update(END, "FAILED", null, json.write(why), claim.id(), claim.token()) > 0;
    }

    @Override
    @Transactional
    public boolean cancelled(Claim claim) {
        return sql.update(END, "CANCELLED", null, null, claim.id(), claim.token()) > 0;
    }

    @Override
    @Transactional
    public boolean giveBack(Claim claim) {
        return sql.update(PUT_BACK, 1, 0, claim.id(), claim.token()) > 0;
    }

    @Override
    @Transactional
    public boolean putOff(Claim claim) {
        long waitMs = pace.putOff().multipliedBy(claim.attempt()).toMillis();
        return sql.update(PUT_BACK, 0, waitMs, claim.id(), claim.token()) > 0;
    }

    @Override
    @Transactional
    public void sweep() {
        sql.update(SWEEP, RESULTS_KEPT.toMillis());
        sql.update(SWEEP_PAYLOAD, PAYLOAD_KEPT.toMillis());
    }
}
