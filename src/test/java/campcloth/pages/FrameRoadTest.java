package campcloth.pages;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.journey.WholeService;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What holds for every address of a page. */
@WholeService
class FrameRoadTest {

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @ParameterizedTest
    @ValueSource(strings = {"/", "/nowhere", "/api/fibres"})
    void onlyThisServerMayBeAskedForAnything(String path) throws Exception {
        HttpResponse<String> answer = get(path);
        assertThat(answer.headers().firstValue("Content-Security-Policy").orElseThrow())
                .contains("default-src 'none'", "script-src 'self'", "frame-ancestors 'none'")
                .doesNotContain("unsafe", "*", "http:", "data:");
        assertThat(answer.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
    }

    @ParameterizedTest
    @CsvSource({"/nowhere, 404", "/preferences, 405"})
    void whatGoesWrongOnAPageIsToldOnAPage(String path, int status) throws Exception {
        HttpResponse<String> answer = get(path);
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/html");
        assertThat(answer.body()).contains("<h1>");
    }

    @Test
    void forProgramsItStaysAProblemDocument() throws Exception {
        HttpResponse<String> answer = get("/api/nowhere");
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
    }

    @ParameterizedTest
    @CsvSource({
        "Sec-Fetch-Site, same-origin, 302",
        "Sec-Fetch-Site, none, 302",
        "Sec-Fetch-Site, cross-site, 403",
        "Sec-Fetch-Site, same-site, 403",
        "Origin, http://elsewhere.example, 403",
        "Origin, null, 403",
        "X-Nothing, x, 302",
    })
    void formsAreTakenFromOurOwnPagesOnly(String header, String value, int status) throws Exception {
        assertThat(post("/preferences", "units=imperial&back=/", Map.of(header, value))
                        .statusCode())
                .isEqualTo(status);
    }

    @Test
    void anOriginOfOurOwnIsOurs() throws Exception {
        assertThat(post("/preferences", "units=metric", Map.of("Origin", "http://localhost:" + port))
                        .statusCode())
                .isEqualTo(302);
    }

    @Test
    void unitsAreKeptInTheBrowserAndLeadBackHere() throws Exception {
        HttpResponse<String> answer = post("/preferences", "units=imperial&back=//elsewhere.example", Map.of());
        assertThat(answer.headers().firstValue("Set-Cookie").orElseThrow())
                .startsWith("units=imperial;")
                .contains("HttpOnly", "SameSite=Lax");
        assertThat(answer.headers().firstValue("Location").orElseThrow()).endsWith(":" + port + "/");
    }

    @Test
    void whatIsLookedAtIsKeptByItsContent() throws Exception {
        String style = get("/").body().replaceAll("(?s).*?\"(/look/base-[0-9a-f]{32}\\.css)\".*", "$1");
        assertThat(get(style).headers().firstValue("Cache-Control").orElseThrow())
                .contains("max-age=31536000");
    }

    @ParameterizedTest
    @CsvSource({
        "measures%5BchestCm%5D=38%2C5&typedIn=imperial, 97.79",
        "measures%5BchestCm%5D=98%2C5, 98.5",
        "measures%5BchestCm%5D=%2098.5%20&typedIn=nonsense, 98.5",
        "measures%5BchestCm%5D=wide, wide",
    })
    void numbersAreReadAsPeopleTypeThem(String typed, String shown) throws Exception {
        assertThat(get("/plan?season=SUMMER&design=tunic&" + typed).body())
                .contains("name=\"measures[chestCm]\" value=\"" + shown + "\"");
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return http.send(HttpRequest.newBuilder(uri(path)).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, String form, Map<String, String> headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(uri(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form));
        headers.forEach(request::header);
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private URI uri(String path) {
        return URI.create("http://localhost:" + port + path);
    }
}
