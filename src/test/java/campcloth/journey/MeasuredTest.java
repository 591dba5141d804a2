package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalManagementPort;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/** What the service says of its own work, on a port of its own: it counts what was done, and nothing that people wrote is in it. */
@WholeService
@TestPropertySource(properties = "management.server.port=0")
class MeasuredTest {

    private static final String MARK = "Quillfeather";

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @LocalManagementPort
    private int management;

    @Test
    void rankingsAreCountedWithTheirTimeAndTheirCloths() throws Exception {
        double before = value("campcloth_ranking_seconds_count");
        double cloths = value("campcloth_ranking_cloths_sum");
        assertThat(post("/api/advice", Bodies.ADVICE).statusCode()).isEqualTo(200);
        double held = value("campcloth_catalogue_cloths");
        assertThat(held).isGreaterThanOrEqualTo(160);
        assertThat(value("campcloth_ranking_seconds_count")).isEqualTo(before + 1);
        assertThat(value("campcloth_ranking_cloths_sum")).isEqualTo(cloths + held);
        assertThat(value("campcloth_ranking_seconds_sum")).isPositive();
        assertThat(value("campcloth_catalogue_refresh_seconds_count")).isPositive();
    }

    @Test
    void searchesForALayoutAreCounted() throws Exception {
        double before = value("campcloth_layout_search_seconds_count");
        assertThat(post("/api/cutting-plans", Bodies.CUTTING_PLAN).statusCode()).isEqualTo(201);
        assertThat(value("campcloth_layout_search_seconds_count")).isEqualTo(before + 1);
        assertThat(value("campcloth_layout_searching")).isZero();
        assertThat(value("campcloth_layout_turned_away_total")).isZero();
    }

    @Test
    void nothingThatPeopleWroteNamesASeries() throws Exception {
        sayWord(0);
        sayWord(1);
        Set<String> before = series();
        for (int i = 2; i < 6; i++) {
            sayWord(i);
        }
        assertThat(series()).as("another word is no other series").isEqualTo(before);
        assertThat(scrape()).doesNotContainIgnoringCase(MARK).contains("uri=\"/api/cloths/{id}\"");
    }

    /** Wherever a word can stand in a request. */
    private void sayWord(int number) throws Exception {
        double counted = requestsCounted();
        get(port, "/api/cloths/" + MARK + number);
        get(port, "/" + MARK + number);
        get(port, "/api/cloths?text=" + MARK + number + "&key=" + MARK);
        http.send(
                HttpRequest.newBuilder(uri(port, "/api/cloths"))
                        .method(MARK.toUpperCase(Locale.ROOT) + number, HttpRequest.BodyPublishers.noBody())
                        .build(),
                HttpResponse.BodyHandlers.discarding());
        // whoever asked may have the answer a moment before it is counted
        await().pollInSameThread().atMost(1, TimeUnit.MINUTES).until(() -> requestsCounted() >= counted + 4);
    }

    private double requestsCounted() throws Exception {
        return scrape().lines()
                .filter(line -> line.startsWith("http_server_requests_seconds_count"))
                .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' '))))
                .sum();
    }

    /** The names under which requests and our own work are counted. */
    private Set<String> series() throws Exception {
        return scrape().lines()
                .filter(line -> line.startsWith("http_server_requests_") || line.startsWith("campcloth_"))
                .map(line -> line.substring(0, line.lastIndexOf(' ')))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void whatIsPublishedToPeopleShowsNoneOfIt() throws Exception {
        assertThat(get(port, "/actuator/prometheus").statusCode()).isEqualTo(404);
        assertThat(get(port, "/actuator/health").statusCode()).isEqualTo(404);
        assertThat(get(management, "/actuator/health/liveness").body()).contains("UP");
        assertThat(get(management, "/actuator/health/readiness").body()).contains("UP");
        assertThat(get(management, "/actuator/env").statusCode()).isEqualTo(404);
        assertThat(get(management, "/actuator/health").body()).doesNotContain("components", "PostgreSQL");
    }

    private double value(String series) throws Exception {
        Matcher line =
                Pattern.compile("(?m)^" + series + "(\\{[^}]*})? (\\S+)$").matcher(scrape());
        return Optional.of(line)
                .filter(Matcher::find)
                .map(found -> Double.valueOf(found.group(2)))
                .orElseThrow(() -> new AssertionError("no series " + series));
    }

    private String scrape() throws Exception {
        HttpResponse<String> answer = get(management, "/actuator/prometheus");
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
    }

    private HttpResponse<String> get(int at, String path) throws Exception {
        return http.send(HttpRequest.newBuilder(uri(at, path)).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, String json) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(uri(port, path))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(json))
                .build();
        return http.send(request, HttpResponse.BodyHandlers.ofString());
    }

    private static URI uri(int at, String path) {
        return URI.create("http://localhost:" + at + path);
    }
}
