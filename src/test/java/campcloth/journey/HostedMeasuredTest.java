package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalManagementPort;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Of a hosted service, health and measurements are on another port without anybody saying so, and that port asks for no account. */
@HostedService
class HostedMeasuredTest {

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @LocalManagementPort
    private int management;

    @Test
    void whoReachesThePortMayAskAndIsNotCounted() throws Exception {
        assertThat(management).isNotEqualTo(port);
        HttpResponse<String> measured = get(management, "/actuator/prometheus");
        assertThat(measured.statusCode()).isEqualTo(200);
        assertThat(measured.body()).contains("campcloth_ranking_seconds_count");
        assertThat(get(management, "/actuator/health/liveness").statusCode()).isEqualTo(200);
        assertThat(get(management, "/actuator/health/readiness").statusCode()).isEqualTo(200);
    }

    @Test
    void nothingElseIsThere() throws Exception {
        for (String path : new String[] {"/", "/login", "/api/cloths", "/actuator/env", "/actuator/heapdump"}) {
            assertThat(get(management, path).statusCode()).as(path).isEqualTo(404);
        }
    }

    @Test
    void whatPeopleReachShowsNoneOfIt() throws Exception {
        for (String path : new String[] {"/actuator", "/actuator/prometheus", "/actuator/health"}) {
            assertThat(get(port, path).statusCode()).as(path).isIn(401, 404);
        }
    }

    private HttpResponse<String> get(int at, String path) throws Exception {
        return http.send(
                HttpRequest.newBuilder(URI.create("http://localhost:" + at + path))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }
}
