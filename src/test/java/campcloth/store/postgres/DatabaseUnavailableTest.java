package campcloth.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.boot.diagnostics.FailureAnalysis;
import org.springframework.boot.diagnostics.FailureAnalyzer;
import org.springframework.core.io.support.SpringFactoriesLoader;

class DatabaseUnavailableTest {

    private static final Path WHERE = Path.of("/srv/cloth");

    @Test
    void aFullDiskIsCalledThat() {
        assertThat(List.of(
                        new IOException("No space left on device"),
                        new FileSystemException("/srv/cloth/x", null, "Disk quota exceeded")))
                .allSatisfy(failure -> assertThat(DatabaseUnavailable.because(failure, WHERE))
                        .hasMessageContaining("The disk that holds /srv/cloth is full.")
                        .hasMessageContaining("CAMPCLOTH_DATA_DIR"));
    }

    @Test
    void aFolderThatCannotBeWrittenIsNamedWithTheUser() {
        assertThat(List.of(
                        new AccessDeniedException("/srv/cloth"),
                        new FileSystemException("/srv/cloth", null, "Read-only file system")))
                .allSatisfy(failure -> assertThat(DatabaseUnavailable.because(failure, WHERE))
                        .hasMessageContaining(
                                "/srv/cloth cannot be written by the user " + System.getProperty("user.name")));
    }

    @Test
    void aFullDiskInTheServersOwnWordsIsCalledThatToo() {
        assertThat(ServerLog.failure(
                        "PostgreSQL did not start",
                        "FATAL:  could not write lock file \"postmaster.pid\": No space left on device",
                        WHERE))
                .hasMessageContaining("is full");
    }

    @Test
    void rootWithoutANamespaceIsToldBothWaysOut() {
        assertThatThrownBy(() -> Unprivileged.prefixThatWorks(List.of("false")))
                .isInstanceOf(DatabaseUnavailable.class)
                .hasMessageContaining("ordinary user")
                .hasMessageContaining("SPRING_DATASOURCE_URL");
        assertThatThrownBy(() -> Unprivileged.prefixThatWorks(List.of("no-such-program")))
                .isInstanceOf(DatabaseUnavailable.class);
        assertThat(Unprivileged.prefix(false)).isEmpty();
    }

    @Test
    void theStartEndsWithDescriptionAndActionInsteadOfATrace() {
        RuntimeException wrapped = new IllegalStateException(
                "bean", new IllegalStateException("inner", new DatabaseUnavailable("It rained.", "Wait.")));
        List<FailureAnalysis> analyses = SpringFactoriesLoader.forDefaultResourceLocation(
                        DatabaseUnavailable.class.getClassLoader())
                .load(FailureAnalyzer.class, (type, name, failure) -> {})
                .stream()
                .filter(DatabaseUnavailableAnalyzer.class::isInstance)
                .map(analyzer -> analyzer.analyze(wrapped))
                .toList();
        assertThat(analyses).singleElement().satisfies(analysis -> {
            assertThat(analysis.getDescription()).isEqualTo("It rained.");
            assertThat(analysis.getAction()).isEqualTo("Wait.");
        });
    }
}
