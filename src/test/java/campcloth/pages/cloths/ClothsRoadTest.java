package campcloth.pages.cloths;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.journey.WholeService;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What the pages about cloths answer to requests that no form of ours would send. */
@WholeService
class ClothsRoadTest {

    private static final String LONG_WORD = "w".repeat(10_000);

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @ParameterizedTest
    @CsvSource({
        "/cloths?fibre=unobtainium, 422",
        "/cloths?weightClass=FEATHER, 422",
        "/cloths?origin=OWN, 200",
        "/cloths?origin=NOBODY, 422",
        "/cloths?minPricePerMetre=cheap, 422",
        "/cloths?page=-7, 200",
        "/cloths?page=99999, 200",
        "/cloths?fibre=&season=&text=, 200",
        "/cloths?text=%00%01, 422",
        "/cloths/nowhere, 404",
        "/cloths/nowhere/edit, 404",
        "/cloths/nowhere/remove, 404",
        "/cloths/new?from=nowhere, 404",
        "/cloths/compare, 200",
        "/cloths/compare?cloth=nowhere&cloth=neither, 200",
        "/cloths/compare?cloth=linen-plain-185&cloth=acetate-lining-75&distanceM=-3, 422",
        "/cloths/sources, 200",
    })
    void everyRequestIsAnsweredOnAPage(String path, int status) throws Exception {
        HttpResponse<String> answer = get(path);
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.body()).contains("<h1>");
    }

    @Test
    void aWordTooLongIsRefusedAndShownAsItWasTyped() throws Exception {
        assertThat(get("/cloths?text=" + LONG_WORD.substring(0, 4000)).statusCode())
                .isEqualTo(422);
        HttpResponse<String> answer =
                post("/cloths/new", "name=" + LONG_WORD + "&blend%5B0%5D.fibre=wool&blend%5B0%5D.percent=100");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(LONG_WORD, "has 10000 characters");
    }

    @Test
    void whatWasTypedIsWrittenBackWithoutRunning() throws Exception {
        String typed = "\"><script>alert(1)</script><svg onload=alert(1)>";
        HttpResponse<String> answer = post(
                "/cloths/new",
                "act=read&label=" + encoded(typed) + "&name=" + encoded(typed) + "&note=" + encoded(typed));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("&lt;script&gt;").doesNotContain("<script>alert", "<svg onload");
    }

    @Test
    void controlCharactersAreToldAtTheirField() throws Exception {
        HttpResponse<String> answer =
                post("/cloths/new", "name=a%00b&blend%5B0%5D.fibre=wool&blend%5B0%5D.percent=100");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("Write text without control characters");
    }

    @Test
    void aStaleRemovalRemovesNothing() throws Exception {
        assertThat(post("/cloths/acetate-lining-75/remove", "version=77").statusCode())
                .isEqualTo(409);
        assertThat(get("/cloths/acetate-lining-75").statusCode()).isEqualTo(200);
    }

    private HttpResponse<String> get(String path) throws Exception {
        return sent(HttpRequest.newBuilder(at(path)));
    }

    private HttpResponse<String> post(String path, String form) throws Exception {
        return sent(HttpRequest.newBuilder(at(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form)));
    }

    private HttpResponse<String> sent(HttpRequest.Builder request) throws Exception {
        return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private URI at(String path) {
        return URI.create("http://localhost:" + port + path);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
