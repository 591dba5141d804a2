package campcloth.store.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is not whole, not ours or in the way is refused, and nothing is written. */
class BackupRefusedTest {

    /** A ZIP file ends with the list of its entries and where that begins; a byte in there may lead to before or behind the file. */
    private static final int LIST_OF_ENTRIES_BYTES = 1500;

    private final Path folder;
    private final TwoDatabases two;

    BackupRefusedTest(@TempDir Path folder) {
        this.folder = folder;
        this.two = new TwoDatabases(folder);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.5, 0.9, 0.999})
    void aFileThatWasCutShortIsRefusedAndNothingWritten(double share) throws Exception {
        two.migrate(TwoDatabases.OURS, "8");
        two.fill(8);
        Path file = two.backup();
        byte[] all = Files.readAllBytes(file);
        Files.write(file, java.util.Arrays.copyOf(all, (int) (all.length * share)));
        refuses(file, "no whole backup");
    }

    @Test
    void aTableThatWasChangedIsRefusedAndNothingWritten() throws Exception {
        two.migrate(TwoDatabases.OURS, "8");
        two.fill(8);
        Path file = two.backup();
        Zips.change(file, "tables/cloth", text -> text.replace("Remnant", "Garment"));
        refuses(file, "its table cloth is not as it was written");
    }

    @Test
    void aListOfContentsThatWasChangedIsRefusedAndNothingWritten() throws Exception {
        two.migrate(TwoDatabases.OURS, "8");
        two.fill(8);
        Path file = two.backup();
        Zips.change(file, BackupFile.MANIFEST, text -> text.replace("\"rows\" : 1", "\"rows\" : 2"));
        refuses(file, "its list of contents was changed");
    }

    @Test
    void noByteThatIsSpoiltGetsThrough() throws Exception {
        two.migrate(TwoDatabases.OURS, "8");
        two.fill(8);
        Path file = two.backup();
        Manifest whole = BackupFile.verified(file);
        byte[] all = Files.readAllBytes(file);
        Path spoilt = folder.resolve("spoilt.zip");
        int tried = 0;
        int refused = 0;
        for (int at = 0; at < all.length; at += at < all.length - LIST_OF_ENTRIES_BYTES ? 37 : 1) {
            tried++;
            byte[] other = all.clone();
            other[at] ^= 0x20;
            Files.write(spoilt, other);
            try {
                assertThat(BackupFile.verified(spoilt)).as("byte %d", at).isEqualTo(whole);
            } catch (BackupRefused expected) {
                refused++;
            }
        }
        assertThat(refused).isGreaterThan(tried / 2);
    }

    @Test
    void aDatabaseThatHoldsSomethingIsLeftAlone() throws Exception {
        two.migrate(TwoDatabases.OURS, "8");
        two.fill(8);
        Path file = two.backup();
        TwoDatabases.execute(two.to, "create table mine (a int)");
        assertThatThrownBy(() -> two.restore(file, TwoDatabases.OURS))
                .isInstanceOf(BackupRefused.class)
                .hasMessageContaining("not empty");
        assertThat(TwoDatabases.texts(two.to, "select relname from pg_class where relname in ('mine', 'cloth')"))
                .containsExactly("mine");
    }

    @Test
    void aBackupOfANewerProgramIsRefused() throws Exception {
        two.migrate(TwoDatabases.OURS, "8");
        TwoDatabases.execute(two.from, "update flyway_schema_history set version = '9999' where version = '8'");
        refuses(two.backup(), "newer Campcloth");
    }

    @Test
    void whatFailsInTheMiddleLeavesTheDatabaseEmpty() throws Exception {
        two.migrate(TwoDatabases.EVERY_KIND, "1");
        TwoDatabases.execute(two.from, "alter table no_key drop constraint no_key_checked_check");
        TwoDatabases.execute(two.from, "insert into no_key values ('spoilt', -1)");
        Path file = two.backup();
        assertThatThrownBy(() -> two.restore(file, TwoDatabases.EVERY_KIND)).isInstanceOf(SQLException.class);
        two.checkNothingIsThere();
    }

    @Test
    void aDatabaseOfSomethingElseIsNotBackedUpAndNoFileIsLeft() throws Exception {
        assertThatThrownBy(two::backup).isInstanceOf(BackupRefused.class).hasMessageContaining("nothing of Campcloth");
        assertThat(Files.list(folder)).isEmpty();
    }

    @Test
    void aFileThatIsThereIsNotOverwritten() throws Exception {
        two.migrate(TwoDatabases.OURS, "8");
        Files.writeString(folder.resolve("backup.zip"), "precious");
        assertThatThrownBy(two::backup).isInstanceOf(BackupRefused.class).hasMessageContaining("is there already");
        assertThat(folder.resolve("backup.zip")).hasContent("precious");
    }

    private void refuses(Path file, String because) throws SQLException {
        assertThatThrownBy(() -> two.restore(file, TwoDatabases.OURS))
                .isInstanceOf(BackupRefused.class)
                .hasMessageContaining(because);
        two.checkNothingIsThere();
    }
}
