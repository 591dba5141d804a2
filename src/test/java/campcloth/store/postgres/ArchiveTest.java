package campcloth.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveOutputStream;
import org.apache.commons.compress.archivers.tar.TarConstants;
import org.apache.commons.compress.compressors.xz.XZCompressorOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArchiveTest {

    private static final int REGULAR_FILE = 0100000;

    private final Path folder;

    ArchiveTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void filesFoldersAndLinksComeOutAsTheyWentIn() throws IOException {
        Archive.unpack(new ByteArrayInputStream(packed("bin/run", 0755, "it runs", "lib/link", "../bin/run")), folder);
        assertThat(folder.resolve("bin/run")).hasContent("it runs").isExecutable();
        assertThat(folder.resolve("lib/link")).isSymbolicLink().hasContent("it runs");
    }

    @Test
    void aPathThatLeadsOutOfTheFolderIsRefused() throws IOException {
        byte[] file = packed("../escaped", 0644, "out", "link", "escaped");
        byte[] link = packed("inside", 0644, "in", "link", "../../etc");
        assertThatThrownBy(() -> Archive.unpack(new ByteArrayInputStream(file), folder))
                .hasMessageContaining("leads out");
        assertThatThrownBy(() -> Archive.unpack(new ByteArrayInputStream(link), folder))
                .hasMessageContaining("leads out");
        assertThat(folder.resolveSibling("escaped")).doesNotExist();
    }

    @Test
    void anArchiveThatBreaksOffLeavesNothingBehind() throws IOException {
        byte[] whole = packed("bin/postgres", 0755, "x".repeat(100_000), "lib/link", "../bin/postgres");
        Path broken = Files.write(
                folder.resolve("broken.txz"), List.of(new String(whole, 0, 40, StandardCharsets.ISO_8859_1)));
        URL url = broken.toUri().toURL();
        DataFolder data = DataFolder.prepared(folder.resolve("data").toString());
        assertThatThrownBy(() -> new Binaries("18.6", url).unpacked(data, List.of()))
                .isInstanceOf(IOException.class);
        assertThat(data.matching("bin-*")).isEmpty();
    }

    @Test
    void programsThatDoNotRunHereAreRefusedAndRemoved() throws IOException {
        byte[] foreign = packed("bin/postgres", 0755, "#!/no/such/interpreter\n", "lib/link", "../bin/postgres");
        URL url = Files.write(folder.resolve("foreign.txz"), foreign).toUri().toURL();
        DataFolder data = DataFolder.prepared(folder.resolve("data").toString());
        assertThatThrownBy(() -> new Binaries("18.6", url).unpacked(data, List.of()))
                .isInstanceOf(DatabaseUnavailable.class)
                .hasMessageContaining("does not run on this machine")
                .hasMessageContaining("SPRING_DATASOURCE_URL");
        assertThat(data.matching("bin-*")).isEmpty();
    }

    @Test
    void theVersionIsReadFromTheJarThatTheBuildBrings() {
        assertThat(Binaries.onClassPath().version()).matches("18\\.\\d+");
        assertThat(Binaries.onClassPath().major()).isEqualTo(18);
    }

    private static byte[] packed(String file, int mode, String content, String link, String pointsAt)
            throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (TarArchiveOutputStream tar = new TarArchiveOutputStream(new XZCompressorOutputStream(bytes))) {
            byte[] data = content.getBytes(StandardCharsets.UTF_8);
            TarArchiveEntry entry = new TarArchiveEntry(file, true);
            entry.setMode(REGULAR_FILE | mode);
            entry.setSize(data.length);
            tar.putArchiveEntry(entry);
            tar.write(data);
            tar.closeArchiveEntry();
            TarArchiveEntry pointer = new TarArchiveEntry(link, TarConstants.LF_SYMLINK);
            pointer.setLinkName(pointsAt);
            tar.putArchiveEntry(pointer);
            tar.closeArchiveEntry();
        }
        return bytes.toByteArray();
    }
}
