package campcloth.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;

/** Plan sheets made over the form, without a browser. */
final class SheetSamples {

    /** A name that would take over a page, a drawing or a document that lets it. */
    static final String HOSTILE =
            "</text><script>document.title='taken'</script>&\"']]>\u202Eemag <!DOCTYPE x [<!ENTITY e SYSTEM"
                    + " 'file:///etc/passwd'>]>&e;" + "w".repeat(60);

    private final HttpClient http = HttpClient.newHttpClient();
    private final int port;

    SheetSamples(int port) {
        this.port = port;
    }

    /** The path of a sheet made of a query that tells event and garment, a cloth and more fields of the form. */
    String made(String asked, String cloth, String more) {
        HttpResponse<String> answer =
                post("/plan/sheets", "asked=" + encoded(asked) + "&cloth=" + encoded(cloth) + "&prewash=true" + more);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(302);
        String location = answer.headers().firstValue("Location").orElseThrow();
        return location.substring(location.indexOf("/sheets/"));
    }

    HttpResponse<String> post(String path, String form) {
        return sent(
                HttpRequest.newBuilder(uri(path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<byte[]> get(String path) {
        return sent(HttpRequest.newBuilder(uri(path)).build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private URI uri(String path) {
        return URI.create("http://localhost:" + port + path);
    }

    private <T> HttpResponse<T> sent(HttpRequest request, HttpResponse.BodyHandler<T> body) {
        try {
            return http.send(request, body);
        } catch (IOException failure) {
            throw new AssertionError(request.uri().toString(), failure);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(request.uri().toString(), stopped);
        }
    }
}
