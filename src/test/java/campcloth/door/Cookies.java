package campcloth.door;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;

/** Bare requests, with a session that is told by hand. */
final class Cookies {

    private static final HttpClient HTTP = HttpClient.newHttpClient();

    private Cookies() {}

    static HttpResponse<String> get(int port, String path, String session) {
        return send(HttpRequest.newBuilder(at(port, path)).header("Cookie", "SESSION=" + session));
    }

    static HttpResponse<String> get(int port, String path) {
        return send(HttpRequest.newBuilder(at(port, path)));
    }

    static HttpResponse<String> elsewhere(String address) {
        return send(HttpRequest.newBuilder(URI.create(address)));
    }

    static HttpResponse<String> post(int port, String path, String form) {
        return send(HttpRequest.newBuilder(at(port, path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form)));
    }

    static HttpRequest.Builder request(int port, String path) {
        return HttpRequest.newBuilder(at(port, path));
    }

    static HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return HTTP.send(request.build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException failure) {
            throw new AssertionError(failure);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(stopped);
        }
    }

    private static URI at(int port, String path) {
        return URI.create("http://localhost:" + port + path);
    }
}
