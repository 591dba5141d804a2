package campcloth.store.postgres;

import static campcloth.store.postgres.OwnPostgresTest.answer;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.store.BackupCommand;
import campcloth.store.StoredSamples;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;

/** The two commands on data folders: while the application works there, and while it does not. */
class FolderBackupTest {

    @Test
    void aFolderIsBackedUpWhileItIsServedAndAfterwardsAndComesBackInANewFolder() throws Exception {
        try (TestFolder folder = TestFolder.fresh();
                TestFolder other = TestFolder.fresh()) {
            Path during = folder.path().resolve("during.zip");
            Path after = folder.path().resolve("after.zip");
            try (OwnPostgres serving = folder.start()) {
                fill(serving);
                assertThat(backup(folder, during)).isZero();
                assertThat(backup(folder, during)).as("a file that is there").isOne();
                assertThat(restore(folder, during)).as("a folder in use").isOne();
                assertThat(answer(serving, "select count(*) from errand")).isEqualTo("1");
            }
            assertThat(backup(folder, after)).isZero();
            assertThat(restore(folder, after)).as("a folder with data").isOne();
            assertThat(restore(other, during)).isZero();
            try (OwnPostgres restored = other.start()) {
                assertThat(answer(restored, "select name from cloth")).isEqualTo("Remnant from the bin");
            }
            assertThat(Files.size(after)).isPositive();
        }
    }

    @Test
    void aFolderWithoutADatabaseIsNotMadeByAskingForABackupOfIt() throws Exception {
        try (TestFolder folder = TestFolder.fresh()) {
            assertThat(backup(folder, folder.path().resolve("nothing.zip"))).isOne();
            assertThat(folder.data()).doesNotExist();
            assertThat(BackupCommand.run("backup")).as("no file named").isEqualTo(2);
        }
    }

    private static int backup(TestFolder folder, Path file) {
        return BackupCommand.run("backup", file.toString(), "--campcloth.data-dir=" + folder.data());
    }

    private static int restore(TestFolder folder, Path file) {
        return BackupCommand.run("restore", file.toString(), "--campcloth.data-dir=" + folder.data());
    }

    private static void fill(OwnPostgres serving) throws Exception {
        Flyway.configure()
                .dataSource(serving.url(), Settings.USER, serving.password())
                .target("8")
                .load()
                .migrate();
        try (Connection connection = DriverManager.getConnection(serving.url(), Settings.USER, serving.password())) {
            StoredSamples.fill(connection, 8);
        }
    }
}
