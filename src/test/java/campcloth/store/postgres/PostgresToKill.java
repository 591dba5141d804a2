package campcloth.store.postgres;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;

/** A PostgreSQL that stands outside of the application, as somebody's own does: killed and started again by whoever tries things out. */
public final class PostgresToKill implements AutoCloseable {

    private final DataFolder folder;
    private final Programs programs;
    private final Cluster cluster;
    private final Secret secret;
    private final int port;

    private PostgresToKill(DataFolder folder, Programs programs, Cluster cluster, Secret secret, int port) {
        this.folder = folder;
        this.programs = programs;
        this.cluster = cluster;
        this.secret = secret;
        this.port = port;
    }

    public static PostgresToKill start(Path where) throws IOException {
        DataFolder folder = DataFolder.prepared(where.toString());
        Binaries binaries = Binaries.onClassPath();
        Cluster cluster = new Cluster(folder, binaries.major());
        Secret secret = Secret.of(folder, cluster.path());
        Programs programs = binaries.unpacked(folder, Unprivileged.prefix(new Ownership(folder.root()).isRoot()));
        cluster.makeIfMissing(programs);
        Server server = Server.start(programs, cluster, ServerLog.in(folder), 0, false);
        new Entry(server.port(), secret).makeIfMissing();
        return new PostgresToKill(folder, programs, cluster, secret, server.port());
    }

    public int port() {
        return port;
    }

    /** The address under another port, from which a line leads here. */
    public String url(int throughPort) {
        return new Entry(throughPort, secret).url(Settings.DATABASE);
    }

    public String user() {
        return Settings.USER;
    }

    public String password() {
        return secret.password();
    }

    public Connection connect() throws SQLException {
        return DriverManager.getConnection(url(port), Settings.USER, secret.password());
    }

    public boolean runs() throws IOException {
        return new Orphan(folder, cluster.path()).serves();
    }

    /** {@code kill -9} of the server; its helpers end by themselves. */
    public void kill() throws IOException {
        String pid =
                Files.readAllLines(cluster.path().resolve("postmaster.pid")).get(0);
        ProcessHandle.of(Long.parseLong(pid.strip())).ifPresent(ProcessHandle::destroyForcibly);
    }

    public void startAgain() throws IOException {
        new Orphan(folder, cluster.path()).clear(programs);
        Server.start(programs, cluster, ServerLog.in(folder), port, false);
    }

    @Override
    public void close() throws IOException {
        Server.stop(programs, cluster.path());
    }
}
