package campcloth.comfort.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class AgreementTableTest {

    @Test
    void everyFigureLiesWithinWhatIsAllowed() {
        for (AgreementTable.Line line : AgreementTable.LINES) {
            assertThat(line.worst()).as(line.what()).isLessThanOrEqualTo(line.tolerance());
        }
    }

    @Test
    void theGuideShowsTheTable() throws IOException {
        String table = AgreementTable.markdown();
        assertThat(Files.readString(Path.of("DEVELOPERS.md")).contains("\n" + table + "\n"))
                .as("DEVELOPERS.md should show%n%s%n", table)
                .isTrue();
    }
}
