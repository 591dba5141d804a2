package campcloth.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DataFolderTest {

    private TestFolder folder;

    @BeforeEach
    void make() throws IOException {
        folder = TestFolder.fresh();
    }

    @AfterEach
    void remove() throws IOException {
        folder.close();
    }

    @Test
    void itLiesInTheHomeOfTheUserUnlessToldOtherwise() throws IOException {
        String home = System.getProperty("user.home");
        System.setProperty("user.home", folder.path().toString());
        try {
            assertThat(DataFolder.prepared("").root())
                    .isEqualTo(folder.path().resolve(".campcloth").toRealPath());
            assertThat(DataFolder.prepared("~/cloth").root())
                    .isEqualTo(folder.path().resolve("cloth").toRealPath());
        } finally {
            System.setProperty("user.home", home);
        }
    }

    @Test
    void anOpenFolderIsClosed() throws IOException {
        assumeTrue(DataFolder.knowsPosix(folder.path()), "needs POSIX permissions");
        Files.createDirectory(folder.data());
        Files.setPosixFilePermissions(folder.data(), PosixFilePermissions.fromString("rwxrwxrwx"));
        DataFolder.prepared(folder.data().toString());
        assertThat(OwnPostgresTest.permissions(folder.data())).isEqualTo("rwx------");
    }

    @Test
    void aFolderOfOtherThingsIsRefusedAndLeftOpen() throws IOException {
        Path photographs = Files.createDirectories(folder.data().resolve("photographs"));
        String before = OwnPostgresTest.permissions(folder.data());
        assertThatThrownBy(() -> DataFolder.prepared(folder.data().toString()))
                .isInstanceOf(DatabaseUnavailable.class)
                .hasMessageContaining("holds other things");
        assertThat(photographs).isDirectory();
        assertThat(OwnPostgresTest.permissions(folder.data())).isEqualTo(before);
    }

    @Test
    void aFileInTheWayIsNamed() throws IOException {
        Path file = Files.createFile(folder.path().resolve("file"));
        assertThatThrownBy(() -> DataFolder.prepared(file.resolve("data").toString()))
                .isInstanceOf(DatabaseUnavailable.class)
                .hasMessageContaining(file.toString())
                .hasMessageContaining("CAMPCLOTH_DATA_DIR");
    }

    @Test
    void aNameThatAShellWouldReadIsRefused() {
        assertThatThrownBy(() -> DataFolder.prepared(
                        folder.path().resolve("$(touch owned)").toString()))
                .isInstanceOf(DatabaseUnavailable.class)
                .hasMessageContaining("Choose a folder without them");
    }

    @Test
    void aLinkLeadsToTheFolderItself() throws IOException {
        Path link = Files.createSymbolicLink(folder.path().resolve("link"), Files.createDirectory(folder.data()));
        assertThat(DataFolder.prepared(link.toString()).root())
                .isEqualTo(folder.data().toRealPath());
    }
}
