package campcloth.figure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Pictures kept under {@code target/pictures} to be looked at. */
public final class Shown {

    private Shown() {}

    public static String kept(String name, String svg) throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "pictures"));
        Files.writeString(folder.resolve(name + ".svg"), svg);
        return svg;
    }
}
