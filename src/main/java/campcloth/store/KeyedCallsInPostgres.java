package campcloth.store;

import campcloth.access.Asker;
import campcloth.access.CallAnswer;
import campcloth.access.KeyedCall;
import campcloth.access.KeyedCalls;
import campcloth.access.Turn;
import campcloth.job.Pace;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The calls with keys over PostgreSQL. The row of a call is its lock; what is older than a day goes as others come. A claim is held by
 * beats while it is worked on here ({@link CallsAtWork}), and may be taken over as a job's may ({@link Lapse}).
 */
@Component
class KeyedCallsInPostgres implements KeyedCalls {

    private static final Duration KEPT = Duration.ofHours(24);

    private static final String SWEEP = """
            delete from keyed_call where (asker, call) in (select asker, call from keyed_call
                where claimed_at < clock_timestamp() - ?::bigint * interval '1 ms'
                order by claimed_at limit 200 for update skip locked)
            """;
    private static final String BEGIN = """
            insert into keyed_call (asker, call, fingerprint, seed, claim, claimed_by, claimed_at, busy_until)
            values (?, ?, ?, ?, ?, ?, clock_timestamp(), clock_timestamp() + ?::bigint * interval '1 ms')
            on conflict (asker, call) do nothing
            """;
    private static final String BEFORE = "select fingerprint, seed, claim, claimed_by, (busy_until is null or "
            + Lapse.of("busy_until") + ") as lapsed, status, headers, body"
            + " from keyed_call where asker = ? and call = ? for update";
    private static final String GO_ON = """
            update keyed_call set claim = ?, claimed_by = ?, attempts = attempts + 1, busy_until = clock_timestamp() + ?::bigint * interval '1 ms'
            where asker = ? and call = ?
            """;
    private static final String ANSWERED = """
            update keyed_call set status = ?, headers = ?::json, body = ?, busy_until = null, claim = null, claimed_by = null
            where asker = ? and call = ? and claim = ?
            """;
    private static final String LEAVE = """
            update keyed_call set busy_until = null, claim = null, claimed_by = null
            where asker = ? and call = ? and claim = ?
            """;

    /** What was begun before may have been made then, so that its key stays with its seed. */
    private static final String FORGET =
            "delete from keyed_call where asker = ? and call = ? and claim = ? and attempts = 1";

    private final JdbcTemplate sql;
    private final TransactionTemplate alone;
    private final Json json;
    private final CallsAtWork atWork;
    private final Presence presence;
    private final Pace pace;
    private final Lapse lapse;

    KeyedCallsInPostgres(
            JdbcTemplate sql,
            PlatformTransactionManager transactions,
            Json json,
            CallsAtWork atWork,
            Presence presence,
            Pace pace) {
        this.sql = sql;
        this.alone = new TransactionTemplate(transactions);
        this.alone.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        this.json = json;
        this.atWork = atWork;
        this.presence = presence;
        this.pace = pace;
        this.lapse = new Lapse(presence, pace);
    }

    @Override
    public Start begin(KeyedCall call) {
        UUID claim = UUID.randomUUID();
        atWork.begin(claim);
        boolean mine = false;
        try {
            Start start = Objects.requireNonNull(alone.execute(status -> begun(call, claim)));
            mine = start instanceof Start.First;
            return start;
        } finally {
            if (!mine) {
                atWork.end(claim);
            }
        }
    }

    private Start begun(KeyedCall call, UUID claim) {
        sql.update(SWEEP, KEPT.toMillis());
        UUID seed = UUID.randomUUID();
        String asker = asker(call);
        String name = name(call);
        Long here = presence.number().orElse(null);
        long leaseMs = pace.lease().toMillis();
        if (sql.update(BEGIN, asker, name, call.fingerprint(), seed, claim, here, leaseMs) > 0) {
            return new Start.First(new Turn(Turn.Of.CALL, seed, claim));
        }
        Start before =
                sql.query(BEFORE, (row, number) -> start(row, call, claim), lapse.earlyMillis(), asker, name).stream()
                        .findFirst()
                        .orElseGet(Start.Running::new);
        if (before instanceof Start.First) {
            sql.update(GO_ON, claim, here, leaseMs, asker, name);
        }
        return before;
    }

    private Start start(ResultSet row, KeyedCall call, UUID claim) throws SQLException {
        if (!row.getString("fingerprint").equals(call.fingerprint())) {
            return new Start.Other();
        }
        int status = row.getInt("status");
        if (!row.wasNull()) {
            return new Start.Answered(new CallAnswer(status, headers(row.getString("headers")), row.getString("body")));
        }
        return isWorkedOn(row)
                ? new Start.Running()
                : new Start.First(new Turn(Turn.Of.CALL, row.getObject("seed", UUID.class), claim));
    }

    /** Of its own claims the instance knows itself: one whose end could not be told, the database being away, is worked on no more. */
    private boolean isWorkedOn(ResultSet row) throws SQLException {
        Optional<UUID> claim = Optional.ofNullable(row.getObject("claim", UUID.class));
        if (claim.filter(atWork::has).isPresent()) {
            return true;
        }
        Optional<Long> by = Optional.ofNullable(row.getObject("claimed_by", Long.class));
        boolean forgottenHere = by.isPresent() && by.equals(presence.number());
        return !forgottenHere && !row.getBoolean("lapsed");
    }

    private Map<String, String> headers(String text) {
        Map<?, ?> read = json.read(text, Map.class);
        return read.entrySet().stream()
                .collect(Collectors.toMap(
                        entry -> String.valueOf(entry.getKey()), entry -> String.valueOf(entry.getValue())));
    }

    @Override
    public void answered(KeyedCall call, Turn turn, CallAnswer answer) {
        String headers = json.write(answer.headers());
        ended(
                turn,
                () -> sql.update(
                        ANSWERED, answer.status(), headers, answer.body(), asker(call), name(call), turn.claim()));
    }

    @Override
    public void leave(KeyedCall call, Turn turn) {
        ended(turn, () -> sql.update(LEAVE, asker(call), name(call), turn.claim()));
    }

    @Override
    public void forget(KeyedCall call, Turn turn) {
        ended(turn, () -> {
            if (sql.update(FORGET, asker(call), name(call), turn.claim()) == 0) {
                sql.update(LEAVE, asker(call), name(call), turn.claim());
            }
        });
    }

    /** The work has ended, whether that can be told or not. */
    private void ended(Turn turn, Runnable telling) {
        try {
            alone.executeWithoutResult(status -> telling.run());
        } finally {
            atWork.end(turn.claim());
        }
    }

    private static String asker(KeyedCall call) {
        Asker asker = call.asker();
        return asker.account().map(UUID::toString).orElse("");
    }

    private static String name(KeyedCall call) {
        return Digest.of(call.operation() + "\n" + call.key());
    }
}
