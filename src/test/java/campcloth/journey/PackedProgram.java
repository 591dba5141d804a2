package campcloth.journey;

import java.io.IOException;
import java.io.InputStream;
import java.net.ServerSocket;
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

/** The packed program as a process of its own, as a user starts it. */
final class PackedProgram implements AutoCloseable {

    static final Path JAR = Path.of("target", "campcloth.jar").toAbsolutePath();
    private static final Duration PATIENCE = Duration.ofSeconds(240);

    private final HttpClient http =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(5)).build();
    private final Process process;
    private final Path log;
    private final int port;

    private PackedProgram(Process process, Path log, int port) {
        this.process = process;
        this.log = log;
        this.port = port;
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
        int port;
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        Path log = Files.createTempFile("campcloth", ".log");
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-jar", jar.toString()));
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile());
        builder.environment().keySet().removeIf(name -> name.startsWith("SPRING_") || name.startsWith("SERVER_"));
        builder.environment().put("SERVER_PORT", Integer.toString(port));
        // Health is asked for where the pages are, in either mode.
        builder.environment().put("MANAGEMENT_SERVER_PORT", Integer.toString(port));
        builder.environment().put("CAMPCLOTH_DATA_DIR", dataFolder.toString());
        builder.environment().putAll(more);
        return new PackedProgram(builder.start(), log, port);
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
                process.waitFor(200, TimeUnit.MILLISECONDS);
            }
        }
        throw new AssertionError("it was not ready in time:\n" + printed());
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return http.send(HttpRequest.newBuilder(uri(path)).build(), HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<String> post(String path, String json) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(uri(path))
                .header("Content-Type", "application/json")
                .timeout(Duration.ofSeconds(30))
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

    private URI uri(String path) {
        return URI.create("http://127.0.0.1:" + port + path);
    }

    @Override
    public void close() throws InterruptedException, IOException {
        process.destroy();
        if (!process.waitFor(30, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
        Files.deleteIfExists(log);
    }
}
