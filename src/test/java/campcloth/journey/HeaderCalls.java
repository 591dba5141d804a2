package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.json.JsonMapper;

/** Requests of whoever a header names ({@link AskersByHeader}), as programs and as browsers send them. */
final class HeaderCalls {

    static final UUID OWNER_ID = new UUID(9, 1);
    static final String OWNER = OWNER_ID + ":MAKER";
    static final String OTHER = new UUID(9, 2) + ":MAKER";
    static final String MARSHAL = new UUID(9, 3) + ":MAKER,MARSHAL";
    static final String KEEPER = new UUID(9, 4) + ":MAKER,KEEPER";
    static final String NOBODY = "";

    private static final JsonMapper JSON = new JsonMapper();
    private static final Pattern LINK = Pattern.compile("(?:href|src)=\"([^\"#]+)\"");

    private final HttpClient http = HttpClient.newHttpClient();
    private final int port;

    HeaderCalls(int port) {
        this.port = port;
    }

    static String id(HttpResponse<String> kept) {
        assertThat(kept.statusCode()).as(kept.body()).isEqualTo(201);
        return JSON.readTree(kept.body()).path("id").asString();
    }

    static String key(HttpResponse<String> shared) {
        assertThat(shared.statusCode()).as(shared.body()).isEqualTo(200);
        return JSON.readTree(shared.body()).path("link").asString().replaceAll(".*\\?key=", "");
    }

    HttpResponse<String> get(String who, String path) throws IOException, InterruptedException {
        return send("GET", who, path, "");
    }

    HttpResponse<String> get(String who, String path, String cookie) throws IOException, InterruptedException {
        return http.send(request(who, path).header("Cookie", cookie).build(), HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<String> post(String who, String path, String body) throws IOException, InterruptedException {
        return send("POST", who, path, body);
    }

    HttpResponse<String> send(String method, String who, String path, String body)
            throws IOException, InterruptedException {
        return send(method, who, path, body, "\"0\"");
    }

    HttpResponse<String> send(String method, String who, String path, String body, String version)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = request(who, path).method(method, BodyPublishers.ofString(body));
        if (!body.isEmpty()) {
            request.header("Content-Type", "application/json");
        }
        return http.send(request.header("If-Match", version).build(), HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<String> form(String who, String path, Map<String, String> fields)
            throws IOException, InterruptedException {
        String body = fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return http.send(
                request(who, path)
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private HttpRequest.Builder request(String who, String path) {
        URI uri = path.startsWith("http") ? URI.create(path) : URI.create("http://127.0.0.1:" + port + path);
        HttpRequest.Builder request = HttpRequest.newBuilder(uri);
        return who.isEmpty() ? request : request.header(AskersByHeader.HEADER, who);
    }

    /** Everything that a page leads to and that is about the same thing opens for who was given the link. */
    void everyLinkTo(String page, String html, String who, int least) throws Exception {
        List<String> links = LINK.matcher(html)
                .results()
                .map((MatchResult found) -> found.group(1).replace("&amp;", "&"))
                .filter(link -> link.contains(page.substring(page.lastIndexOf('/') + 1)) && !link.startsWith("/plan?"))
                .distinct()
                .toList();
        assertThat(links).hasSizeGreaterThanOrEqualTo(least);
        for (String link : links) {
            assertThat(get(who, link).statusCode()).as(link).isEqualTo(200);
        }
    }
}
