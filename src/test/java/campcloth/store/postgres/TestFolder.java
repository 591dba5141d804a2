package campcloth.store.postgres;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.util.FileSystemUtils;

/** A new folder under {@code target/} for one test, removed when it is closed. */
record TestFolder(Path path) implements AutoCloseable {

    static TestFolder fresh() throws IOException {
        Path all = Files.createDirectories(Path.of("target", "own-postgres").toAbsolutePath());
        return new TestFolder(Files.createTempDirectory(all, "it's a test "));
    }

    /** The data folder, not made yet. */
    Path data() {
        return path.resolve("data");
    }

    OwnPostgres start() {
        return OwnPostgres.start(data().toString(), 0);
    }

    @Override
    public void close() throws IOException {
        FileSystemUtils.deleteRecursively(path);
    }
}
