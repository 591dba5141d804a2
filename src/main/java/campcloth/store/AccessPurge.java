package campcloth.store;

import campcloth.access.AuditTrail;
import campcloth.access.LockOut;
import jakarta.annotation.PreDestroy;
import java.sql.Timestamp;
import java.time.Clock;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/** Removes, at the start and once a day, what is kept for a time only: lines of the audit log, tokens that have run out, wrong attempts. */
@Component
class AccessPurge implements SmartInitializingSingleton {

    private static final Logger LOG = LoggerFactory.getLogger(AccessPurge.class);
    private static final int TOKENS_SHOWN_DAYS = 30;

    private final AuditTrail audit;
    private final JdbcTemplate sql;
    private final Clock clock;
    private final ScheduledExecutorService broom;

    AccessPurge(AuditTrail audit, JdbcTemplate sql, Clock clock) {
        this.audit = audit;
        this.sql = sql;
        this.clock = clock;
        this.broom = Executors.newSingleThreadScheduledExecutor(task -> {
            Thread thread = new Thread(task, "access-expiry");
            thread.setDaemon(true);
            return thread;
        });
    }

    @Override
    public void afterSingletonsInstantiated() {
        broom.scheduleWithFixedDelay(this::swept, 1, TimeUnit.DAYS.toMinutes(1), TimeUnit.MINUTES);
    }

    private void swept() {
        try {
            purge();
        } catch (RuntimeException later) {
            LOG.warn("What has run out is removed later: {}", later.getMessage());
        }
    }

    void purge() {
        audit.purge();
        sql.update(
                "delete from access_token where expires_at < ?::timestamptz - make_interval(days => ?)",
                Timestamp.from(clock.instant()),
                TOKENS_SHOWN_DAYS);
        sql.update(
                "delete from login_wait where last_at < ?",
                Timestamp.from(clock.instant().minus(LockOut.FORGOTTEN)));
    }

    @PreDestroy
    void end() {
        broom.shutdownNow();
    }
}
