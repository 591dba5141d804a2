package campcloth.store.postgres;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.awaitility.Awaitility;
import org.springframework.util.FileSystemUtils;

/**
 * Two servers of PostgreSQL of which the second is a hot standby of the first: made from a copy of its folder, and fed by streaming. Each
 * can be stopped and started by itself; the second can become a first one.
 */
public final class StandbyForTests implements AutoCloseable {

    private static final String MAY_FOLLOW = "host replication " + Settings.SUPERUSER + " 127.0.0.1/32 trust\n";
    private static final Duration PATIENCE = Duration.ofMinutes(3);

    private final TestFolder folder;
    private final Secret secret;
    private final Node first;
    private final Node second;

    /** One of the two. */
    public final class Node {

        private final DataFolder folder;
        private final Cluster cluster;
        private final Programs programs;
        private int port;

        private Node(DataFolder folder, Binaries binaries, Path home, List<String> prefix) {
            this.folder = folder;
            this.cluster = new Cluster(folder, binaries.major());
            this.programs = new Programs(home, prefix, folder.log());
        }

        public PostgresForTests.Database database() {
            return new PostgresForTests.Database(
                    new Entry(port, secret).url(Settings.DATABASE), Settings.USER, secret.password());
        }

        public boolean runs() throws IOException {
            return new Orphan(folder, cluster.path()).serves();
        }

        public void start() throws IOException {
            port = Server.start(programs, cluster, ServerLog.in(folder), port, false)
                    .port();
        }

        public void stop() throws IOException {
            if (runs()) {
                Server.stop(programs, cluster.path());
            }
        }

        /** Has it follow another from its next start on, from where it stands. */
        public void follow(Node other) throws IOException {
            Files.createFile(cluster.path().resolve("standby.signal"));
            Files.writeString(
                    cluster.path().resolve("postgresql.auto.conf"),
                    "primary_conninfo = 'host=127.0.0.1 port=" + other.port + " user=" + Settings.SUPERUSER + "'\n"
                            + "wal_retrieve_retry_interval = '200ms'\n");
        }

        /** What it heard from another that it followed: it would look for those changes for ever. */
        private void forgetOtherTimelines() throws IOException {
            try (Stream<Path> log = Files.list(cluster.path().resolve("pg_wal"))) {
                for (Path file : log.toList()) {
                    if (file.toString().endsWith(".history")) {
                        Files.delete(file);
                    }
                }
            }
        }

        /** What one value is, for the superuser. */
        public String ask(String query) throws SQLException {
            try (Connection connection = DriverManager.getConnection(
                            new Entry(port, secret).url(Settings.DATABASE), Settings.SUPERUSER, secret.password());
                    Statement statement = connection.createStatement();
                    ResultSet rows = statement.executeQuery(query)) {
                return rows.next() ? String.valueOf(rows.getString(1)) : "";
            }
        }

        public void promote() throws SQLException {
            if (!ask("select pg_promote(true, 180)").equals("t")) {
                throw new IllegalStateException("the standby does not come to be a database of its own");
            }
        }

        /** Asks until it is told that. */
        public void await(String query, String told) {
            Awaitility.await(query)
                    .pollInSameThread()
                    .pollDelay(Duration.ZERO)
                    .pollInterval(Duration.ofMillis(20))
                    .atMost(PATIENCE)
                    .until(() -> ask(query).equals(told));
        }

        /** Waits until all is here that the other has written by now. */
        public void catchUpWith(Node other) throws SQLException {
            String written = other.ask("select pg_current_wal_flush_lsn()");
            await("select pg_last_wal_replay_lsn() >= pg_lsn '" + written + "'", "t");
        }
    }

    private StandbyForTests(TestFolder folder) throws IOException {
        this.folder = folder;
        DataFolder one = DataFolder.prepared(folder.path().resolve("first").toString());
        DataFolder other = DataFolder.prepared(folder.path().resolve("second").toString());
        Binaries binaries = Binaries.onClassPath();
        Programs programs = binaries.unpacked(one, Unprivileged.prefix(new Ownership(one.root()).isRoot()));
        first = new Node(one, binaries, programs.home(), programs.prefix());
        second = new Node(other, binaries, programs.home(), programs.prefix());
        secret = Secret.of(one, first.cluster.path());
        first.cluster.makeIfMissing(programs);
        Files.writeString(first.cluster.path().resolve("pg_hba.conf"), MAY_FOLLOW, StandardOpenOption.APPEND);
        first.start();
        new Entry(first.port, secret).makeIfMissing();
    }

    /** Both run; the second holds nothing yet that the first does not get from now on. */
    public static StandbyForTests start() throws IOException {
        StandbyForTests both = new StandbyForTests(TestFolder.fresh());
        both.copyAnew();
        return both;
    }

    public Node first() {
        return first;
    }

    public Node second() {
        return second;
    }

    /** Makes the second a standby of the first as that stands, whatever became of either. */
    public void copyAnew() throws IOException {
        second.stop();
        first.stop();
        Files.deleteIfExists(first.cluster.path().resolve("standby.signal"));
        first.forgetOtherTimelines();
        FileSystemUtils.deleteRecursively(second.cluster.path());
        copy(first.cluster.path(), second.cluster.path());
        first.start();
        second.follow(first);
        second.start();
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : (Iterable<Path>) all::iterator) {
                Files.copy(path, to.resolve(from.relativize(path)), StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
    }

    @Override
    public void close() throws IOException {
        second.stop();
        first.stop();
        folder.close();
    }
}
