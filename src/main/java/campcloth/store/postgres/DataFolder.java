package campcloth.store.postgres;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.springframework.util.FileSystemUtils;

/**
 * The one folder that holds everything of the application's own database.
 *
 * <pre>
 * campcloth.lock   held while an application uses the folder; names its process
 * secret           the password of the database, readable by the owner only
 * bin-18.6/        the programs of PostgreSQL, unpacked
 * postgres-18/     the cluster: the data; its name carries the major version
 * log/             what the server and its programs said
 * </pre>
 *
 * Copying the folder while the application is stopped is a backup. It belongs to one user and is closed to all others;
 * where the file system knows no POSIX permissions (Windows) it is as private as the folder above it.
 *
 * @param root the folder itself, with links resolved
 */
record DataFolder(Path root) {

    /** Marks a folder that is still being filled; it gets its real name when it is whole. */
    private static final String UNFINISHED = ".unfinished-";

    /** The folder the settings name, or {@code ~/.campcloth}; made if missing, closed to others, checked for its owner. */
    static DataFolder prepared(String configured) {
        Path wanted = wanted(configured);
        try {
            Path parent = wanted.getParent();
            if (parent != null) {
                Files.createDirectories(parent);
            }
            if (!Files.isDirectory(wanted)) {
                Files.createDirectory(wanted, privately(wanted, "rwx------"));
            }
            DataFolder folder = new DataFolder(wanted.toRealPath());
            folder.refuseNamesTheShellReads();
            new Ownership(folder.root).check();
            folder.refuseWhatIsNotOurs();
            if (knowsPosix(wanted)) {
                Files.setPosixFilePermissions(folder.root, PosixFilePermissions.fromString("rwx------"));
            }
            Files.createDirectories(folder.log());
            return folder;
        } catch (IOException failure) {
            throw DatabaseUnavailable.because(failure, wanted);
        }
    }

    /** The folder that is meant, whether it is there or not. */
    static Path wanted(String configured) {
        Path home = home();
        String given = configured.strip();
        if (given.isEmpty()) {
            return home.resolve(".campcloth").toAbsolutePath().normalize();
        }
        Path path = given.startsWith("~/") ? home.resolve(given.substring(2)) : Path.of(given);
        return path.toAbsolutePath().normalize();
    }

    /** An account without an entry of its own, as in a container, has its home in the environment alone. */
    private static Path home() {
        Path known = Path.of(System.getProperty("user.home"));
        String other = System.getenv("HOME");
        return Files.isDirectory(known) || other == null ? known : Path.of(other);
    }

    /** The program that starts the server hands the path to a shell, in double quotes. */
    private void refuseNamesTheShellReads() {
        if (knowsPosix(root) && root.toString().chars().anyMatch(c -> "\"$`\\\n".indexOf(c) >= 0)) {
            throw new DatabaseUnavailable(
                    "PostgreSQL cannot be started in " + root + ": the name holds one of \" $ ` \\.",
                    "Choose a folder without them, with CAMPCLOTH_DATA_DIR.");
        }
    }

    /** Guards a folder that holds other things: it would be closed to everybody else. */
    private void refuseWhatIsNotOurs() throws IOException {
        boolean known = Files.exists(lock())
                || Files.exists(secret())
                || !matching("postgres-*").isEmpty();
        if (!known && !matching("[!.]*").stream().allMatch(path -> path.endsWith("lost+found"))) {
            throw new DatabaseUnavailable(
                    root + " holds other things and was not made by Campcloth.",
                    "Choose an empty or a new folder with CAMPCLOTH_DATA_DIR.");
        }
    }

    Path lock() {
        return root.resolve("campcloth.lock");
    }

    Path secret() {
        return root.resolve("secret");
    }

    Path log() {
        return root.resolve("log");
    }

    Path binaries(String version) {
        return root.resolve("bin-" + version);
    }

    Path cluster(int major) {
        return root.resolve("postgres-" + major);
    }

    /** A new private folder beside {@code whole}, to be filled and then renamed to it. */
    Path unfinished(Path whole) throws IOException {
        return Files.createTempDirectory(root, whole.getFileName() + UNFINISHED, privately(root, "rwx------"));
    }

    /** Removes what a killed application left half made. For the holder of the lock, once no program works on it. */
    void sweep() throws IOException {
        for (Path leftover : matching("*" + UNFINISHED + "*")) {
            FileSystemUtils.deleteRecursively(leftover);
        }
    }

    List<Path> matching(String glob) throws IOException {
        List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(root, glob)) {
            stream.forEach(found::add);
        } catch (UncheckedIOException failure) {
            throw failure.getCause();
        }
        return found;
    }

    static boolean knowsPosix(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    static FileAttribute<?>[] privately(Path path, String permissions) {
        return knowsPosix(path)
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }
}
