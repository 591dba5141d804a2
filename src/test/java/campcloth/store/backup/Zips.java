package campcloth.store.backup;

import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Changes one entry of a ZIP file so that the file itself is well formed. */
final class Zips {

    private Zips() {}

    static void change(Path file, String entry, UnaryOperator<String> change) throws IOException {
        try (FileSystem zip = FileSystems.newFileSystem(URI.create("jar:" + file.toUri()), Map.of())) {
            Path inside = zip.getPath(entry);
            String before = Files.readString(inside);
            String after = change.apply(before);
            if (after.equals(before)) {
                throw new IllegalStateException("nothing was changed in " + entry);
            }
            Files.writeString(inside, after);
        }
    }
}
