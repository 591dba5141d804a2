package campcloth.journey;

import java.io.IOException;
import java.io.InputStream;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The packed program as a process of its own, as a user starts it. It takes a free port itself and prints which: one that was looked for
 * beforehand could be another's by the time it listens.
 */
final class PackedProgram implements AutoCloseable {

    static final Path JAR = Path.of("target", "campcloth.jar").toAbsolutePath();
    private static final Duration PATIENCE = Duration.ofMinutes(8);
    private static final Pattern LISTENS = Pattern.compile("Tomcat started on port (\\d+) \\(http\\)");
    private static final List<String> SETTINGS = List.of("SPRING_", "SERVER_", "MANAGEMENT_", "CAMPCLOTH_");

    private final HttpClient http =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(5)).build();
    private final Process process;
    private final Path log;

    /** Zero until it is known. */
    private volatile int port;

    private PackedProgram(Process process, Path log) {
        this.process = process;
        this.log = log;
    }

    /** Starts it without waiting. */
    static PackedProgram start(Path dataFolder, Map<String, String> more) throws IOException {
        return start(dataFolder, more, List.of());
    }

    /** The same with options for the Java machine. */
    static PackedProgram start(Path dataFolder, Map<String, String> more, List<String> options) throws IOException {
        return start(JAR, dataFolder, more, options);
    }

    /** The same of a jar that lies elsewhere. */
    static PackedProgram start(Path jar, Path dataFolder, Map<String, String> more, List<String> options)
            throws IOException {
        Path log = Files.createTempFile("campcloth", ".log");
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-jar", jar.toString()));
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile());
        builder.environment().keySet().removeIf(name -> SETTINGS.stream().anyMatch(name::startsWith));
        builder.environment().put("SERVER_PORT", "0");
        builder.environment().put("CAMPCLOTH_DATA_DIR", dataFolder.toString());
        builder.environment().putAll(more);
        return new PackedProgram(builder.start(), log);
    }

    /** Waits until it answers as healthy. */
    PackedProgram ready() throws IOException, InterruptedException {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (System.nanoTime() < end) {
            if (!process.isAlive()) {
                throw new AssertionError("it ended with " + process.exitValue() + ":\n" + printed());
            }
            try {
                if (get("/actuator/health").statusCode() == 200) {
                    return this;
                }
            } catch (IOException notYet) {
                // asked again below
            }
            process.waitFor(200, TimeUnit.MILLISECONDS);
        }
        throw new AssertionError("it was not ready in time:\n" + printed());
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(uri(path)).timeout(PATIENCE).build();
        return http.send(request, HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<String> post(String path, String json) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(uri(path))
                .header("Content-Type", "application/json")
                .timeout(PATIENCE)
                .POST(HttpRequest.BodyPublishers.ofString(json))
                .build();
        return http.send(request, HttpResponse.BodyHandlers.ofString());
    }

    /** Sends a list as it is written, and gives the answer as it comes. */
    HttpResponse<InputStream> list(String query, Path csv) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(uri("/api/cloths/import?" + query))
                .header("Content-Type", "text/csv")
                .header("Accept", "application/x-ndjson")
                .POST(HttpRequest.BodyPublishers.ofFile(csv))
                .build();
        return http.send(request, HttpResponse.BodyHandlers.ofInputStream());
    }

    int port() {
        if (port == 0) {
            throw new IllegalStateException("it does not listen yet");
        }
        return port;
    }

    long pid() {
        return process.pid();
    }

    /** Ends it at once, with no chance to tidy up: {@code kill -9}. */
    void kill() throws InterruptedException {
        process.destroyForcibly();
        process.waitFor();
    }

    /** Asks it to end, and waits until it has. */
    int terminate() throws InterruptedException {
        process.destroy();
        return waitFor();
    }

    int waitFor() throws InterruptedException {
        if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("it did not end in time");
        }
        return process.exitValue();
    }

    String printed() throws IOException {
        return Files.readString(log, StandardCharsets.UTF_8);
    }

    private URI uri(String path) throws IOException {
        if (port == 0) {
            port = printedPort();
        }
        return URI.create("http://127.0.0.1:" + port + path);
    }

    private int printedPort() throws IOException {
        try (Stream<String> lines = Files.lines(log, StandardCharsets.UTF_8)) {
            return lines.map(LISTENS::matcher)
                    .filter(Matcher::find)
                    .map(found -> Integer.parseInt(found.group(1)))
                    .findFirst()
                    .orElseThrow(() -> new ConnectException("it does not listen yet"));
        }
    }

    /** It ends in order however long that takes here: one that was cut off would leave its database at work in a folder that is to go. */
    @Override
    public void close() throws InterruptedException, IOException {
        process.destroy();
        if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
            kill();
        }
        Files.deleteIfExists(log);
    }
}
