package campcloth.store;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/** Watches over the cloths from when the service is up until it goes down, on a connection beside the pool. */
@Component
class ClothWatchStart implements SmartLifecycle {

    private final JdbcConnectionDetails database;
    private final ClothSnapshot snapshot;
    private @Nullable ClothWatch watch;

    ClothWatchStart(JdbcConnectionDetails database, ClothSnapshot snapshot) {
        this.database = database;
        this.snapshot = snapshot;
    }

    @Override
    public synchronized void start() {
        watch = new ClothWatch(
                BesideThePool.of(database, ClothWatch.NAME), snapshot::bringUpToDate, ClothWatch.AT_LEAST_EVERY);
        watch.start();
    }

    @Override
    public synchronized void stop() {
        if (watch != null) {
            watch.close();
            watch = null;
        }
    }

    @Override
    public synchronized boolean isRunning() {
        return watch != null;
    }
}
