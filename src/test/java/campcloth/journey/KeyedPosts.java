package campcloth.journey;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;

/** Calls that make something, sent with a key: JSON, or a list where the body begins as one. */
final class KeyedPosts {

    private final HttpClient http = HttpClient.newHttpClient();

    private final int port;

    KeyedPosts(int port) {
        this.port = port;
    }

    /** @param keys each in a header of its own */
    HttpResponse<String> send(String path, String body, String... keys) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .header("Content-Type", body.startsWith("key,") ? "text/csv" : "application/json")
                .POST(BodyPublishers.ofString(body));
        for (String key : keys) {
            request.header("Idempotency-Key", key);
        }
        return http.send(request.build(), BodyHandlers.ofString());
    }
}
