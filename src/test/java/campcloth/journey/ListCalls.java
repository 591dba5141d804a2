package campcloth.journey;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Lists of one supplier, whom nobody else knows, sent to the running service. */
final class ListCalls {

    /** Two cloths, as a German mill writes them. */
    static final String LIST = """
            Artikel-Nr.;Bezeichnung;Zusammensetzung;Gewicht (g/m²);Breite cm;Farbe
            A;Leinen;100% linen;185,5;150;natur
            B;Wolle;100% wool;300;140;grau
            """;

    private static final JsonMapper JSON = new JsonMapper();

    private final HttpClient http = HttpClient.newHttpClient();
    private final String supplier = "Mill " + UUID.randomUUID();
    private final int port;

    ListCalls(int port) {
        this.port = port;
    }

    String supplier() {
        return supplier;
    }

    HttpResponse<String> take(String list, String query) throws IOException, InterruptedException {
        return send(list(list.getBytes(StandardCharsets.UTF_8), "text/csv", query));
    }

    /** The report on a list that was taken. */
    JsonNode report(String list, String query) throws IOException, InterruptedException {
        return json(take(list, query));
    }

    HttpRequest.Builder list(byte[] body, String type, String query) {
        return request("/api/cloths/import?supplier=" + URLEncoder.encode(supplier, StandardCharsets.UTF_8) + query)
                .header("Content-Type", type)
                .POST(HttpRequest.BodyPublishers.ofByteArray(body));
    }

    HttpResponse<String> post(String path, String type, String body) throws IOException, InterruptedException {
        return send(request(path).header("Content-Type", type).POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send(request(path));
    }

    HttpResponse<byte[]> bytes(String path) throws IOException, InterruptedException {
        return http.send(request(path).build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    static JsonNode json(HttpResponse<String> answer) {
        return JSON.readTree(answer.body());
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path));
    }
}
