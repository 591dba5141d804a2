package campcloth.store.postgres;

import campcloth.outage.Outage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.regex.Pattern;

/** What the server writes about itself: kept over several starts, read to say in one sentence why a start failed. */
record ServerLog(Path file) {

    private static final long KEPT_BYTES = 4L << 20;
    private static final Pattern TELLING = Pattern.compile("(FATAL|PANIC|ERROR|error): ");

    static ServerLog in(DataFolder folder) throws IOException {
        Path file = folder.log().resolve("postgres.log");
        if (Files.exists(file) && Files.size(file) > KEPT_BYTES) {
            Files.move(file, file.resolveSibling("postgres.log.1"), StandardCopyOption.REPLACE_EXISTING);
        }
        return new ServerLog(file);
    }

    long length() throws IOException {
        return Files.exists(file) ? Files.size(file) : 0;
    }

    String since(long position) throws IOException {
        if (!Files.exists(file)) {
            return "";
        }
        byte[] all = Files.readAllBytes(file);
        int from = (int) Math.min(position, all.length);
        return new String(all, from, all.length - from, StandardCharsets.UTF_8);
    }

    /** The failure that a program's words tell of. */
    static DatabaseUnavailable failure(String happened, String said, Path log) {
        if (Outage.tellsOfAFullDisk(said)) {
            return DatabaseUnavailable.because(new IOException("No space left on device"), log);
        }
        List<String> lines = said.lines().filter(line -> !line.isBlank()).toList();
        String why = lines.stream()
                .filter(line -> TELLING.matcher(line).find())
                .findFirst()
                .orElse(lines.isEmpty() ? "it said nothing" : lines.get(lines.size() - 1));
        return new DatabaseUnavailable(
                happened + ": " + why.strip(),
                "The whole story is in " + log + "; the data was not touched beyond what PostgreSQL itself repairs.");
    }
}
