package campcloth.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.springframework.util.FileSystemUtils;

/**
 * The same start by a user without any power, and folders that belong to somebody else. Needs root, who alone can act as
 * another; where the build runs as an ordinary user, every other test here is that test already.
 */
@Timeout(value = 600, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class OrdinaryUserIT {

    private static final int NOBODY = 65534;
    private static final List<String> AS_NOBODY =
            List.of("setpriv", "--reuid=" + NOBODY, "--regid=" + NOBODY, "--clear-groups");

    private Path place;

    @BeforeEach
    void makeAPlaceThatNobodyCanReach() throws IOException {
        assumeTrue(isRoot(), "needs root, to act as another user");
        place = Files.createTempDirectory("campcloth-ordinary-user");
        Files.setPosixFilePermissions(place, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    @AfterEach
    void remove() throws IOException {
        if (place != null) {
            FileSystemUtils.deleteRecursively(place);
        }
    }

    @Test
    void anOrdinaryUserStartsAndStopsTheServer() throws IOException {
        Path home = ownedBy(NOBODY, Files.createDirectory(place.resolve("home")));
        try (ChildProcess child =
                ChildProcess.start(AS_NOBODY, readableClassPath(), home.resolve(".campcloth"), "stop")) {
            assertThat(Integer.parseInt(child.await("READY"))).isPositive();
            assertThat(child.lastWords()).anyMatch(line -> line.contains("Stopping PostgreSQL"));
        }
        Path cluster = home.resolve(".campcloth/postgres-18");
        assertThat(Files.getAttribute(cluster.resolve("PG_VERSION"), "unix:uid"))
                .isEqualTo(NOBODY);
        assertThat(cluster.resolve("postmaster.pid")).doesNotExist();
    }

    @Test
    void anOrdinaryUserIsToldWhoseFolderItIs() throws IOException {
        Path data = Files.createDirectory(place.resolve("data"));
        try (ChildProcess child = ChildProcess.start(AS_NOBODY, readableClassPath(), data, "stop")) {
            assertThat(child.await("REFUSED"))
                    .contains("belongs to the user " + Files.getOwner(data).getName())
                    .contains("CAMPCLOTH_DATA_DIR");
        }
    }

    @Test
    void anOrdinaryUserIsToldThatTheFolderCannotBeMade() throws IOException {
        try (ChildProcess child = ChildProcess.start(AS_NOBODY, readableClassPath(), place.resolve("data"), "stop")) {
            assertThat(child.await("REFUSED")).contains("cannot be written by the user");
        }
    }

    @Test
    void rootIsToldWhoseFolderItIsAndLeavesItAlone() throws IOException {
        Path data = ownedBy(NOBODY, Files.createDirectory(place.resolve("data")));
        assertThatThrownBy(() -> OwnPostgres.start(data.toString(), 0))
                .isInstanceOf(DatabaseUnavailable.class)
                .hasMessageContaining(
                        "belongs to the user " + Files.getOwner(data).getName())
                .hasMessageContaining("CAMPCLOTH_DATA_DIR");
        assertThat(data).isEmptyDirectory();
    }

    @Test
    void aClusterOfAnotherInOurOwnFolderIsRefused() throws IOException {
        Path cluster = Files.createDirectories(place.resolve("data/postgres-18"));
        Files.writeString(cluster.resolve("PG_VERSION"), "18\n");
        ownedBy(NOBODY, cluster);
        assertThatThrownBy(() -> OwnPostgres.start(place.resolve("data").toString(), 0))
                .isInstanceOf(DatabaseUnavailable.class)
                .hasMessageContaining(cluster + " belongs to the user ");
    }

    private static boolean isRoot() throws IOException {
        Path probe = Files.createTempFile("campcloth", "probe");
        try {
            return DataFolder.knowsPosix(probe)
                    && Integer.valueOf(0).equals(Files.getAttribute(probe, "unix:uid"))
                    && Files.exists(Path.of("/usr/bin/setpriv"));
        } finally {
            Files.delete(probe);
        }
    }

    private static Path ownedBy(int user, Path path) throws IOException {
        Files.setAttribute(path, "unix:uid", user);
        Files.setAttribute(path, "unix:gid", user);
        return path;
    }

    /** The class path, copied out of root's home into a place that all can read. */
    private List<String> readableClassPath() throws IOException {
        Path copies = Files.createDirectory(place.resolve("classes"));
        List<String> readable = new ArrayList<>();
        for (String entry : ChildProcess.classPath()) {
            Path original = Path.of(entry);
            Path copy = copies.resolve(readable.size() + "-" + original.getFileName());
            if (Files.exists(original)) {
                copy(original, copy);
                readable.add(copy.toString());
            }
        }
        return readable;
    }

    private static void copy(Path original, Path copy) throws IOException {
        Files.walkFileTree(original, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) throws IOException {
                Files.createDirectories(copy.resolve(original.relativize(folder).toString()));
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Path target = file.equals(original)
                        ? copy
                        : copy.resolve(original.relativize(file).toString());
                Files.copy(file, target);
                Files.setPosixFilePermissions(target, PosixFilePermissions.fromString("rw-r--r--"));
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
