package campcloth.store;

import campcloth.job.Pace;
import jakarta.annotation.PreDestroy;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/** The calls with keys that this instance works on, and the beat that holds its claims on them, as workers hold those on jobs. */
@Component
class CallsAtWork implements SmartInitializingSingleton {

    private static final Logger LOG = LoggerFactory.getLogger(CallsAtWork.class);

    /** A row that is being committed under, or taken over, is let be until the next beat. */
    private static final String HOLD = """
            update keyed_call set busy_until = clock_timestamp() + ?::bigint * interval '1 ms', claimed_by = ?
            where (asker, call) in (select asker, call from keyed_call
                where claim = any (string_to_array(?, ' ')::uuid[]) for update skip locked)
            """;

    private final JdbcTemplate sql;
    private final Presence presence;
    private final Pace pace;
    private final Set<UUID> claims = ConcurrentHashMap.newKeySet();
    private final ScheduledExecutorService clockwork;

    CallsAtWork(JdbcTemplate sql, Presence presence, Pace pace) {
        this.sql = sql;
        this.presence = presence;
        this.pace = pace;
        this.clockwork = Executors.newSingleThreadScheduledExecutor(task -> {
            Thread thread = new Thread(task, "call-beat");
            thread.setDaemon(true);
            return thread;
        });
    }

    @Override
    public void afterSingletonsInstantiated() {
        long beatMs = pace.beat().toMillis();
        clockwork.scheduleWithFixedDelay(this::beat, beatMs, beatMs, TimeUnit.MILLISECONDS);
    }

    void begin(UUID claim) {
        claims.add(claim);
    }

    void end(UUID claim) {
        claims.remove(claim);
    }

    boolean has(UUID claim) {
        return claims.contains(claim);
    }

    private void beat() {
        if (claims.isEmpty()) {
            return;
        }
        String held = claims.stream().map(UUID::toString).collect(Collectors.joining(" "));
        try {
            sql.update(HOLD, pace.lease().toMillis(), presence.number().orElse(null), held);
        } catch (RuntimeException away) {
            LOG.debug("The calls that are worked on could not be held on: {}", away.getMessage());
        }
    }

    @PreDestroy
    void stop() {
        clockwork.shutdownNow();
    }
}
