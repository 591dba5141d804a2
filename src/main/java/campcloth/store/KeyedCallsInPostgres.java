package campcloth.store;

import campcloth.access.Asker;
import campcloth.access.CallAnswer;
import campcloth.access.KeyedCall;
import campcloth.access.KeyedCalls;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The calls with keys over PostgreSQL. The row of a call is its lock; what is older than a day goes as others come. */
@Component
@Transactional(propagation = Propagation.REQUIRES_NEW)
class KeyedCallsInPostgres implements KeyedCalls {

    private static final Duration KEPT = Duration.ofHours(24);

    /** How long a call is taken to be worked on, should it be cut short without a word. */
    private static final Duration BUSY = Duration.ofMinutes(1);

    private static final String SWEEP = """
            delete from keyed_call where (asker, call) in (select asker, call from keyed_call
                where claimed_at < clock_timestamp() - ?::bigint * interval '1 ms'
                order by claimed_at limit 200 for update skip locked)
            """;
    private static final String BEGIN = """
            insert into keyed_call (asker, call, fingerprint, seed, claimed_at, busy_until)
            values (?, ?, ?, ?, clock_timestamp(), clock_timestamp() + ?::bigint * interval '1 ms')
            on conflict (asker, call) do nothing
            """;
    private static final String BEFORE = """
            select fingerprint, seed, coalesce(busy_until > clock_timestamp(), false) as busy, status, headers, body
            from keyed_call where asker = ? and call = ? for update
            """;
    private static final String GO_ON = """
            update keyed_call set busy_until = clock_timestamp() + ?::bigint * interval '1 ms' where asker = ? and call = ?
            """;
    private static final String ANSWERED = """
            update keyed_call set status = ?, headers = ?::json, body = ?, busy_until = null
            where asker = ? and call = ? and seed = ?
            """;
    private static final String LEAVE =
            "update keyed_call set busy_until = null where asker = ? and call = ? and seed = ? and status is null";
    private static final String FORGET =
            "delete from keyed_call where asker = ? and call = ? and seed = ? and status is null";

    private final JdbcTemplate sql;
    private final Json json;

    KeyedCallsInPostgres(JdbcTemplate sql, Json json) {
        this.sql = sql;
        this.json = json;
    }

    @Override
    public Start begin(KeyedCall call) {
        sql.update(SWEEP, KEPT.toMillis());
        UUID seed = UUID.randomUUID();
        String asker = asker(call);
        String name = name(call);
        if (sql.update(BEGIN, asker, name, call.fingerprint(), seed, BUSY.toMillis()) > 0) {
            return new Start.First(seed);
        }
        Start before = sql.query(BEFORE, (row, number) -> start(row, call), asker, name).stream()
                .findFirst()
                .orElseGet(Start.Running::new);
        if (before instanceof Start.First) {
            sql.update(GO_ON, BUSY.toMillis(), asker, name);
        }
        return before;
    }

    private Start start(ResultSet row, KeyedCall call) throws SQLException {
        if (!row.getString("fingerprint").equals(call.fingerprint())) {
            return new Start.Other();
        }
        int status = row.getInt("status");
        if (!row.wasNull()) {
            return new Start.Answered(new CallAnswer(status, headers(row.getString("headers")), row.getString("body")));
        }
        return row.getBoolean("busy") ? new Start.Running() : new Start.First(row.getObject("seed", UUID.class));
    }

    private Map<String, String> headers(String text) {
        Map<?, ?> read = json.read(text, Map.class);
        return read.entrySet().stream()
                .collect(Collectors.toMap(
                        entry -> String.valueOf(entry.getKey()), entry -> String.valueOf(entry.getValue())));
    }

    @Override
    public void answered(KeyedCall call, UUID seed, CallAnswer answer) {
        sql.update(
                ANSWERED, answer.status(), json.write(answer.headers()), answer.body(), asker(call), name(call), seed);
    }

    @Override
    public void leave(KeyedCall call, UUID seed) {
        sql.update(LEAVE, asker(call), name(call), seed);
    }

    @Override
    public void forget(KeyedCall call, UUID seed) {
        sql.update(FORGET, asker(call), name(call), seed);
    }

    private static String asker(KeyedCall call) {
        Asker asker = call.asker();
        return asker.account().map(UUID::toString).orElse("");
    }

    private static String name(KeyedCall call) {
        return Digest.of(call.operation() + "\n" + call.key());
    }
}
