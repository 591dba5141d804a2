package campcloth.store.postgres;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;

/** The own PostgreSQL of a program that runs in another process on a data folder: a way in beside the program, to hold something up. */
public final class PostgresOfAProgram {

    /** The line of the file {@code postmaster.pid} that says the port. */
    private static final int PORT_LINE = 3;

    private PostgresOfAProgram() {}

    public static Connection connect(Path dataFolder) throws IOException, SQLException {
        DataFolder folder = new DataFolder(dataFolder);
        Path cluster = folder.cluster(Binaries.onClassPath().major());
        String port = Files.readAllLines(cluster.resolve("postmaster.pid"))
                .get(PORT_LINE)
                .strip();
        Secret secret = Secret.of(folder, cluster);
        return DriverManager.getConnection(
                new Entry(Integer.parseInt(port), secret).url(Settings.DATABASE), Settings.USER, secret.password());
    }
}
