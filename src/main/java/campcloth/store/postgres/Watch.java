package campcloth.store.postgres;

import campcloth.outage.Storage;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Looks after the running server, twice a second. One that died, whoever killed it, is started again on the same port, so that
 * the pool finds it where it was. Where the disk is nearly full, the server is told to take no changes: PostgreSQL stops whole
 * when it has no room for its log, while a server that only reads needs none.
 */
final class Watch implements Storage, AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(Watch.class);
    private static final long LOOK_MILLIS = 500;
    private static final long LONGEST_PAUSE_MILLIS = 15_000;
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final DataFolder folder;
    private final Programs programs;
    private final Cluster cluster;
    private final int port;
    private final Thread thread = new Thread(this::lookOn, "postgres-watch");
    private volatile long reserveBytes;
    private volatile boolean low;
    private volatile boolean ended;

    Watch(DataFolder folder, Programs programs, Cluster cluster, int port) {
        this.folder = folder;
        this.programs = programs;
        this.cluster = cluster;
        this.port = port;
        thread.setDaemon(true);
    }

    Watch begun() {
        thread.start();
        return this;
    }

    /** From now on, no changes are taken where less room than this is left. */
    void keepFree(long bytes) {
        reserveBytes = bytes;
    }

    @Override
    public boolean isLow() {
        return low;
    }

    private void lookOn() {
        long pause = LOOK_MILLIS;
        while (!ended) {
            try {
                Thread.sleep(pause);
                look();
                pause = LOOK_MILLIS;
            } catch (InterruptedException over) {
                return;
            } catch (IOException | RuntimeException failure) {
                if (!ended) {
                    pause = Math.min(2 * pause, LONGEST_PAUSE_MILLIS);
                    LOG.warn("PostgreSQL is not well, another try in {} ms: {}", pause, failure.getMessage());
                }
            }
        }
    }

    private void look() throws IOException {
        Orphan server = new Orphan(folder, cluster.path());
        if (!server.serves()) {
            restart(server);
        }
        reserve();
    }

    private void restart(Orphan server) throws IOException {
        LOG.warn("PostgreSQL is gone; it is started again");
        server.clear(programs);
        if (!ended) {
            Server.start(programs, cluster, ServerLog.in(folder), port, low);
            LOG.info("PostgreSQL is back on 127.0.0.1:{}", port);
        }
    }

    private void reserve() throws IOException {
        long free = Files.getFileStore(cluster.path()).getUsableSpace();
        boolean lowNow = free < (low ? reserveBytes + reserveBytes / 4 : reserveBytes);
        if (lowNow != low) {
            cluster.configure(port, lowNow);
            Server.reload(programs, cluster.path());
            low = lowNow;
            if (lowNow) {
                LOG.error(
                        "Only {} MB are free on the disk of {}: no changes are taken until there is more room",
                        free >> 20,
                        folder.root());
            } else {
                LOG.info("There is room on the disk again: changes are taken");
            }
        }
    }

    /** Ends the looking, so that a server that is stopped is not started again. */
    @Override
    public void close() {
        ended = true;
        thread.interrupt();
        try {
            thread.join(PATIENCE.toMillis());
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
