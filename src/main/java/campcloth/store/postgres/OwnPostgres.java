package campcloth.store.postgres;

import campcloth.outage.Storage;
import java.io.IOException;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The application's own PostgreSQL, from the folder to the open door, watched while it runs; closing it stops the server and
 * lets go of the folder. A start that fails leaves neither a server nor a lock behind.
 */
final class OwnPostgres implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(OwnPostgres.class);

    private final DataFolder folder;
    private final InstanceLock lock;
    private final Server server;
    private final Entry entry;
    private final Watch watch;

    private OwnPostgres(DataFolder folder, InstanceLock lock, Server server, Entry entry, Watch watch) {
        this.folder = folder;
        this.lock = lock;
        this.server = server;
        this.entry = entry;
        this.watch = watch;
    }

    /**
     * Starts the server, making what is missing.
     *
     * @param dataFolder the folder to use, or nothing for {@code ~/.campcloth}
     * @param port the port to listen on, or 0 for a free one
     */
    static OwnPostgres start(String dataFolder, int port) {
        DataFolder folder = DataFolder.prepared(dataFolder);
        InstanceLock lock = InstanceLock.take(folder);
        try {
            return started(folder, lock, port);
        } catch (IOException failure) {
            release(lock);
            throw DatabaseUnavailable.because(failure, folder.root());
        } catch (RuntimeException failure) {
            release(lock);
            throw failure;
        }
    }

    private static OwnPostgres started(DataFolder folder, InstanceLock lock, int port) throws IOException {
        List<String> prefix = Unprivileged.prefix(new Ownership(folder.root()).isRoot());
        Binaries binaries = Binaries.onClassPath();
        Cluster cluster = new Cluster(folder, binaries.major());
        cluster.refuseOtherMajor();
        Secret secret = Secret.of(folder, cluster.path());
        Programs programs = binaries.unpacked(folder, prefix);
        new Orphan(folder, cluster.path()).clear(programs);
        folder.sweep();
        cluster.makeIfMissing(programs);
        Server server = Server.start(programs, cluster, ServerLog.in(folder), port, false);
        try {
            Entry entry = new Entry(server.port(), secret);
            entry.makeIfMissing();
            binaries.removeOthers(folder);
            LOG.info("PostgreSQL {} is ready on 127.0.0.1:{}", binaries.version(), server.port());
            Watch watch = new Watch(folder, programs, cluster, server.port()).begun();
            return new OwnPostgres(folder, lock, server, entry, watch);
        } catch (IOException | RuntimeException failure) {
            server.stop();
            throw failure;
        }
    }

    private static void release(InstanceLock lock) {
        try {
            lock.close();
        } catch (IOException failure) {
            LOG.warn("The lock of the data folder was not let go: {}", failure.getMessage());
        }
    }

    String url() {
        return entry.url(Settings.DATABASE);
    }

    String password() {
        return entry.secret().password();
    }

    Entry entry() {
        return entry;
    }

    DataFolder folder() {
        return folder;
    }

    /** What is known of its disk. */
    Storage storage() {
        return watch;
    }

    /** Has changes refused where less than so many bytes are left on the disk. */
    void keepFree(long bytes) {
        watch.keepFree(bytes);
    }

    @Override
    public void close() {
        watch.close();
        try {
            server.stop();
        } catch (IOException | RuntimeException failure) {
            LOG.warn("PostgreSQL was not stopped in order; the next start will do it: {}", failure.getMessage());
        } finally {
            release(lock);
        }
    }
}
