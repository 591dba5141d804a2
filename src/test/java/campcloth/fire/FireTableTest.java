package campcloth.fire;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The table of cloths at a fire in the README is what the grading says. */
class FireTableTest {

    @Test
    void theReadmeShowsWhatTheGradingSays() throws IOException {
        String table = FireTable.markdown();
        assertThat(Files.readString(Path.of("README.md")).contains("\n" + table + "\n"))
                .as("README.md should show%n%s%n", table)
                .isTrue();
    }
}
