package campcloth.store.postgres;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * A server that outlived its application, which was killed before it could stop it. It is stopped cleanly, its commits
 * kept. Only for the holder of the lock.
 *
 * <p>The server is known by the number in {@code postmaster.pid}, and believed only if that process runs the program
 * {@code postgres} on our cluster: numbers are given anew after a restart of the machine, and another's process is never
 * touched. A file with such a number is removed, since PostgreSQL would take it for a running server. A file with the
 * number of no process is left to PostgreSQL, which then also looks for shared memory still in use.
 */
record Orphan(DataFolder folder, Path cluster) {

    private static final Logger LOG = LoggerFactory.getLogger(Orphan.class);
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final long POLL_MILLIS = 50;

    /** Leaves no server on the cluster, nor a file that claims one. */
    void clear(Programs programs) throws IOException {
        Path pidFile = cluster.resolve("postmaster.pid");
        Optional<ProcessHandle> named = process(pidFile);
        if (named.filter(this::serves).isPresent()) {
            stop(programs, named.get());
        }
        awaitLeftovers();
        if (named.isPresent() || isUnreadable(pidFile)) {
            Files.deleteIfExists(pidFile);
        }
    }

    /** Whether a server runs on the cluster. */
    boolean serves() throws IOException {
        return process(cluster.resolve("postmaster.pid")).filter(this::serves).isPresent();
    }

    private static Optional<ProcessHandle> process(Path pidFile) throws IOException {
        return firstLine(pidFile)
                .filter(line -> line.matches("\\d{1,18}"))
                .flatMap(line -> ProcessHandle.of(Long.parseLong(line)));
    }

    /** A file without a number, as a full disk leaves it. */
    private static boolean isUnreadable(Path pidFile) throws IOException {
        return Files.exists(pidFile)
                && firstLine(pidFile).filter(line -> line.matches("\\d{1,18}")).isEmpty();
    }

    private static Optional<String> firstLine(Path file) throws IOException {
        return Files.exists(file) ? Files.readString(file).lines().findFirst().map(String::strip) : Optional.empty();
    }

    /** Where the system does not tell the arguments (Windows), the program must lie in our folder. */
    private boolean serves(ProcessHandle process) {
        String program = program(process);
        if (!program.endsWith("/postgres") && !program.endsWith("\\postgres.exe")) {
            return false;
        }
        return process.info()
                .arguments()
                .map(arguments -> List.of(arguments).contains(cluster.toString()))
                .orElseGet(() -> runsFromOurFolder(process));
    }

    private boolean runsFromOurFolder(ProcessHandle process) {
        return program(process).startsWith(folder.binaries("").toString());
    }

    private static String program(ProcessHandle process) {
        String program = process.info().command().orElse("");
        return program.endsWith(" (deleted)")
                ? program.substring(0, program.length() - " (deleted)".length())
                : program;
    }

    private void stop(Programs programs, ProcessHandle server) throws IOException {
        LOG.info("Stopping the PostgreSQL (process {}) that a killed Campcloth left running", server.pid());
        if (!Server.stop(programs, cluster)) {
            throw new DatabaseUnavailable(
                    "A PostgreSQL (process " + server.pid() + ") left running in " + cluster + " could not be stopped.",
                    "Stop that process and start again.");
        }
    }

    /**
     * A server that was killed itself leaves helpers for a moment, which must not meet the next server; an application
     * killed while it made the database leaves a program that goes on making it.
     */
    private void awaitLeftovers() {
        long end = System.nanoTime() + PATIENCE.toNanos();
        String leftovers = leftovers();
        while (!leftovers.isEmpty()) {
            if (System.nanoTime() > end) {
                throw new DatabaseUnavailable(
                        "Programs of this folder's PostgreSQL are still at work (processes " + leftovers + ").",
                        "Wait for them or stop them, and start again.");
            }
            pause();
            leftovers = leftovers();
        }
    }

    private String leftovers() {
        return ProcessHandle.allProcesses()
                .filter(this::runsFromOurFolder)
                .map(process -> Long.toString(process.pid()))
                .collect(Collectors.joining(", "));
    }

    private static void pause() {
        try {
            Thread.sleep(POLL_MILLIS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new DatabaseUnavailable("The start of PostgreSQL was interrupted.", "Start again.", interrupted);
        }
    }
}
