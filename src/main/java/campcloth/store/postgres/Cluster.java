package campcloth.store.postgres;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.util.FileSystemUtils;

/**
 * The data of one major version of PostgreSQL, in a folder of its own. Made beside its place and then renamed to it, so it
 * is whole or not there. Text sorts by code point and changes case by PostgreSQL's own tables, the same on all machines.
 */
record Cluster(DataFolder folder, int major) {

    private static final Logger LOG = LoggerFactory.getLogger(Cluster.class);
    private static final Duration LIMIT = Duration.ofMinutes(5);
    private static final String SETTINGS = "campcloth.conf";

    /**
     * What counts as a letter when text is cut into words and trigrams is still asked of the system: with {@code C}, "Köper"
     * is not found by "köper". The first that the system knows is taken.
     */
    private static final List<String> LETTERS = List.of("C.UTF-8", "en_US.UTF-8", "C");

    Path path() {
        return folder.cluster(major);
    }

    /** Refuses data that another major version made, before anything touches it. */
    void refuseOtherMajor() throws IOException {
        if (Files.exists(path())) {
            Path versionFile = path().resolve("PG_VERSION");
            String made = Files.isRegularFile(versionFile)
                    ? Files.readString(versionFile).strip()
                    : "";
            if (made.isEmpty()) {
                throw new DatabaseUnavailable(
                        "The database in " + path() + " is damaged: it has no PG_VERSION.",
                        "Put the folder back from a backup, or move it away to start fresh.");
            }
            if (!made.equals(Integer.toString(major))) {
                throw madeBy(made, path());
            }
            new Ownership(path()).check();
            return;
        }
        for (Path other : folder.matching("postgres-*")) {
            String version = other.getFileName().toString().substring("postgres-".length());
            if (version.matches("\\d+")) {
                throw madeBy(version, other);
            }
        }
    }

    private DatabaseUnavailable madeBy(String other, Path where) {
        return new DatabaseUnavailable(
                "The database in " + where + " was made by PostgreSQL " + other + "; this Campcloth brings PostgreSQL "
                        + major + ", which cannot read it. Nothing was changed.",
                "Start the Campcloth that made it and export with pg_dump (user " + Settings.USER
                        + ", port from its log, password in " + folder.secret() + "); stop it, move " + where
                        + " out of the folder and keep it; start this one and import the export with psql.");
    }

    /** Makes the cluster if there is none. */
    void makeIfMissing(Programs programs) throws IOException {
        if (Files.exists(path())) {
            return;
        }
        LOG.info("Creating the database in {} (only the first time)", path());
        Path unfinished = folder.unfinished(path());
        try {
            initialize(programs, unfinished);
            Files.writeString(unfinished.resolve("pg_hba.conf"), Settings.ACCESS);
            Files.writeString(
                    unfinished.resolve("postgresql.conf"), "include '" + SETTINGS + "'\n", StandardOpenOption.APPEND);
            Files.move(unfinished, path(), StandardCopyOption.ATOMIC_MOVE);
        } finally {
            FileSystemUtils.deleteRecursively(unfinished);
        }
    }

    private void initialize(Programs programs, Path into) throws IOException {
        Programs.Outcome outcome = new Programs.Outcome(1, "");
        for (String letters : LETTERS) {
            outcome = programs.run(
                    LIMIT,
                    "initdb",
                    "--pgdata=" + into,
                    "--username=" + Settings.SUPERUSER,
                    "--pwfile=" + folder.secret(),
                    "--auth=scram-sha-256",
                    "--encoding=UTF8",
                    "--locale-provider=builtin",
                    "--builtin-locale=C.UTF-8",
                    "--locale=C",
                    "--lc-ctype=" + letters,
                    "--no-instructions");
            if (outcome.succeeded()) {
                return;
            }
            if (!outcome.said().contains("invalid locale name")) {
                break;
            }
        }
        throw ServerLog.failure("PostgreSQL could not make its database", outcome.said(), programs.log());
    }

    /** Writes the settings, which hold once the server starts or reads them again. */
    void configure(int port, boolean readOnly) throws IOException {
        Path draft = path().resolve(SETTINGS + ".draft");
        Files.writeString(draft, Settings.on(port, readOnly));
        Files.move(draft, path().resolve(SETTINGS), StandardCopyOption.ATOMIC_MOVE);
    }
}
