package campcloth.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Data of another major version, or damaged data, is refused before anything is touched. */
class ClusterTest {

    private TestFolder folder;

    @BeforeEach
    void make() throws IOException {
        folder = TestFolder.fresh();
    }

    @AfterEach
    void remove() throws IOException {
        folder.close();
    }

    @ParameterizedTest
    @CsvSource({"postgres-17, 17", "postgres-16, 16", "postgres-19, 19", "postgres-18, 17", "postgres-18, 19"})
    void anotherMajorVersionIsRefusedWithTheWayOut(String name, String version) throws IOException {
        Path cluster = Files.createDirectories(folder.data().resolve(name));
        Files.writeString(cluster.resolve("PG_VERSION"), version + "\n");
        assertThatThrownBy(folder::start)
                .isInstanceOf(DatabaseUnavailable.class)
                .hasMessageContaining("was made by PostgreSQL " + version)
                .hasMessageContaining("brings PostgreSQL 18")
                .hasMessageContaining("pg_dump")
                .hasMessageContaining("psql");
        assertThat(contents(cluster)).containsExactly("PG_VERSION");
        assertThat(folder.data().resolve("secret")).doesNotExist();
    }

    @Test
    void aClusterWithoutItsVersionIsRefusedAsDamaged() throws IOException {
        Path cluster = folder.data().resolve("postgres-18");
        Files.createDirectories(cluster.resolve("base"));
        assertThatThrownBy(folder::start)
                .isInstanceOf(DatabaseUnavailable.class)
                .hasMessageContaining("damaged")
                .hasMessageContaining("backup");
        assertThat(contents(cluster)).containsExactly("base");
    }

    @Test
    void anOlderClusterKeptBesideOursIsNoObstacle() throws IOException {
        Cluster cluster = new Cluster(DataFolder.prepared(folder.data().toString()), 18);
        Files.createDirectories(folder.data().resolve("postgres-17"));
        Files.createDirectories(cluster.path());
        Files.writeString(cluster.path().resolve("PG_VERSION"), "18\n");
        cluster.refuseOtherMajor();
        assertThat(cluster.path()).isDirectory();
    }

    private static List<String> contents(Path path) throws IOException {
        try (Stream<Path> list = Files.list(path)) {
            return list.map(entry -> entry.getFileName().toString()).toList();
        }
    }
}
