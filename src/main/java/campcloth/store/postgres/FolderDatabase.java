package campcloth.store.postgres;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;

/**
 * The way into the database of a data folder from another program than the one that serves: through the running server where there
 * is one, else a server is started for the time being.
 */
public final class FolderDatabase implements AutoCloseable {

    /** Line of {@code postmaster.pid} that holds the port, after process, folder and time. */
    private static final int PORT_LINE = 3;

    private final Optional<OwnPostgres> started;
    private final String url;
    private final String password;

    private FolderDatabase(Optional<OwnPostgres> started, String url, String password) {
        this.started = started;
        this.url = url;
        this.password = password;
    }

    /** Opens what is there already, whether the application is running or not. */
    public static FolderDatabase shared(String dataFolder) {
        Path root = DataFolder.wanted(dataFolder);
        DataFolder folder = new DataFolder(root);
        Path cluster = folder.cluster(Binaries.onClassPath().major());
        if (!Files.isDirectory(cluster)) {
            throw new DatabaseUnavailable(
                    "There is no database in " + root + ".",
                    "Name the folder with CAMPCLOTH_DATA_DIR, or a database of your own with SPRING_DATASOURCE_URL.");
        }
        try {
            DataFolder real = new DataFolder(root.toRealPath());
            Path realCluster = real.cluster(Binaries.onClassPath().major());
            if (new Orphan(real, realCluster).serves()) {
                List<String> told = Files.readAllLines(realCluster.resolve("postmaster.pid"));
                int port = Integer.parseInt(told.get(PORT_LINE).strip());
                Entry entry = new Entry(port, Secret.of(real, realCluster));
                return new FolderDatabase(
                        Optional.empty(),
                        entry.url(Settings.DATABASE),
                        entry.secret().password());
            }
        } catch (IOException failure) {
            throw DatabaseUnavailable.because(failure, root);
        }
        return alone(dataFolder);
    }

    /** Opens it for oneself, and makes it where it is missing; refuses a folder that an application uses. */
    public static FolderDatabase alone(String dataFolder) {
        OwnPostgres postgres = OwnPostgres.start(dataFolder, 0);
        return new FolderDatabase(Optional.of(postgres), postgres.url(), postgres.password());
    }

    public Connection connect() throws SQLException {
        return DriverManager.getConnection(url, Settings.USER, password);
    }

    @Override
    public void close() {
        started.ifPresent(OwnPostgres::close);
    }
}
