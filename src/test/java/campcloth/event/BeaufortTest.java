package campcloth.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The forces of wind against the published limits. */
class BeaufortTest {

    @Test
    void everyForceBeginsWhereItIsPublished() throws IOException {
        List<String[]> rows = Files.readAllLines(Path.of("src/test/resources/published/beaufort.csv")).stream()
                .filter(line -> !line.startsWith("#") && !line.startsWith("force"))
                .map(line -> line.split(","))
                .toList();
        assertThat(rows).hasSameSizeAs(Beaufort.values());
        for (String[] row : rows) {
            int force = Integer.parseInt(row[0]);
            double from = Double.parseDouble(row[1]);
            assertThat(Beaufort.of(from).force()).isEqualTo(force);
            assertThat(Beaufort.of(from).fromMs()).isEqualTo(from);
            if (force > 0) {
                assertThat(Beaufort.of(Math.nextDown(from)).force()).isEqualTo(force - 1);
            }
        }
    }
}
