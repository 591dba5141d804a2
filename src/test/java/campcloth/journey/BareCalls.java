package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** JSON posted to one address of the running service. */
public final class BareCalls {

    private static final JsonMapper JSON = new JsonMapper();

    private final HttpClient http = HttpClient.newHttpClient();
    private final URI address;

    public BareCalls(int port, String path) {
        this.address = URI.create("http://127.0.0.1:" + port + path);
    }

    /** What is answered to a body that can be used. */
    public JsonNode answer(String body) {
        HttpResponse<String> response = post(body);
        assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
        return JSON.readTree(response.body());
    }

    /** The message of a refusal that names a field starting with those words. */
    public String refused(String body, int status, String field) {
        HttpResponse<String> response = post(body);
        assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
        JsonNode error = JSON.readTree(response.body()).path("errors").path(0);
        assertThat(error.path("field").asString()).as(response.body()).startsWith(field);
        assertThat(error.path("message").asString()).isNotBlank();
        return error.path("message").asString();
    }

    public HttpResponse<String> post(String body) {
        HttpRequest request = HttpRequest.newBuilder(address)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        try {
            return http.send(request, HttpResponse.BodyHandlers.ofString());
        } catch (IOException failure) {
            throw new AssertionError(address.toString(), failure);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(address.toString(), stopped);
        }
    }
}
