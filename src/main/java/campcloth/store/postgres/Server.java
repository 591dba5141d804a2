package campcloth.store.postgres;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The running server of a cluster. It is started in a session of its own, so Ctrl-C in the terminal reaches the
 * application alone, which stops the server in order.
 */
record Server(Programs programs, Path cluster, int port) {

    private static final Logger LOG = LoggerFactory.getLogger(Server.class);

    /** Long, since a server that repairs itself after a power cut is not to be disturbed. */
    private static final int START_SECONDS = 300;

    private static final int STOP_SECONDS = 60;
    private static final int TRIES = 3;

    /** Starts the server on the given port, or on a free one where it is 0; with {@code readOnly} it takes no changes. */
    static Server start(Programs programs, Cluster cluster, ServerLog log, int wantedPort, boolean readOnly)
            throws IOException {
        String said = "";
        for (int attempt = 0; attempt < TRIES; attempt++) {
            int port = wantedPort == 0 ? freePort() : wantedPort;
            LOG.info("Starting PostgreSQL in {} on port {}", cluster.path(), port);
            cluster.configure(port, readOnly);
            long before = log.length();
            if (launch(programs, cluster.path(), log)) {
                return new Server(programs, cluster.path(), port);
            }
            said = log.since(before);
            boolean portTaken = said.contains("could not bind");
            if (portTaken && wantedPort != 0) {
                throw new DatabaseUnavailable(
                        "The port " + wantedPort + ", set for PostgreSQL, is taken.",
                        "Set CAMPCLOTH_POSTGRES_PORT to another, or leave it out to have a free one chosen.");
            }
            if (!portTaken) {
                break;
            }
        }
        throw ServerLog.failure("PostgreSQL did not start", said, log.file());
    }

    private static boolean launch(Programs programs, Path cluster, ServerLog log) throws IOException {
        Programs.Outcome outcome = programs.run(
                Duration.ofSeconds(START_SECONDS + 30L),
                "pg_ctl",
                "start",
                "--pgdata=" + cluster,
                "--log=" + log.file(),
                "--wait",
                "--timeout=" + START_SECONDS);
        return outcome.succeeded();
    }

    /** Has the running server read its settings again. */
    static void reload(Programs programs, Path cluster) throws IOException {
        Programs.Outcome outcome =
                programs.run(Duration.ofSeconds(STOP_SECONDS), "pg_ctl", "reload", "--pgdata=" + cluster);
        if (!outcome.succeeded()) {
            throw new IOException("pg_ctl reload: " + outcome.said().strip());
        }
    }

    /** Stops the server: connections are ended, open transactions rolled back, everything written. */
    void stop() throws IOException {
        LOG.info("Stopping PostgreSQL in {}", cluster);
        if (!stop(programs, cluster)) {
            LOG.warn("PostgreSQL in {} could not be stopped; the next start will do it", cluster);
        }
    }

    /** In order if it can be had, else at once, which the next start repairs from the log of changes. */
    static boolean stop(Programs programs, Path cluster) throws IOException {
        return stop(programs, cluster, "fast") || stop(programs, cluster, "immediate");
    }

    private static boolean stop(Programs programs, Path cluster, String mode) throws IOException {
        return programs.run(
                        Duration.ofSeconds(STOP_SECONDS + 30L),
                        "pg_ctl",
                        "stop",
                        "--pgdata=" + cluster,
                        "--mode=" + mode,
                        "--wait",
                        "--timeout=" + STOP_SECONDS)
                .succeeded();
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            return socket.getLocalPort();
        }
    }
}
