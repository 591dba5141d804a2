package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Over HTTP: a size in place of measurements, for every design that is listed. */
@WholeService
class SizesRoadTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String CLOTH = "{\"widthCm\": 150, \"weightGsm\": 200}";

    private final HttpClient http = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @Test
    void everyDesignListedIsPlannedAndAdvisedOnInASizeListed() throws Exception {
        JsonNode listed = JSON.readTree(get("/api/designs").body());
        JsonNode size = listed.path("sizes").path(1);
        assertThat(size.path("key").asString()).isEqualTo("W-M");
        JsonNode chest = size.path("measurements").path("chestCm");
        assertThat(chest.path("value").asDouble()).isEqualTo(94);
        assertThat(chest.path("source").asString()).isEqualTo("ansur-2012");
        assertThat(listed.path("designs")).isNotEmpty();
        for (JsonNode design : listed.path("designs")) {
            String key = design.path("key").asString();
            JsonNode plan = planned(201, "{\"design\": \"" + key + "\", \"size\": \"W-M\"}");
            assertThat(plan.path("buyLengthCm").asDouble()).as(key).isPositive();
            assertThat(plan.path("notes").toString()).as(key).contains("size W-M");
            HttpResponse<String> advice = post(
                    "/api/advice",
                    "{\"event\": {\"season\": \"SUMMER\"}, \"garment\": {\"design\": \"" + key
                            + "\", \"size\": \"W-M\"}, \"limit\": 1}");
            assertThat(advice.statusCode()).as(key + advice.body()).isEqualTo(200);
        }
    }

    @Test
    void whatWasMeasuredWinsOverTheSize() throws Exception {
        JsonNode plan = planned(
                201,
                "{\"design\": \"tunic\", \"size\": \"M-L\", \"wearer\": {\"chestCm\": 100, \"sleeveLengthCm\": 60}}");
        assertThat(plan.path("notes").toString())
                .contains("the chest of 100 cm")
                .contains("Nothing was taken from size M-L");
    }

    @Test
    void aSizeThatIsNotThereIsNamed() throws Exception {
        JsonNode problem = planned(422, "{\"design\": \"tunic\", \"size\": \"XXL\"}");
        assertThat(problem.path("errors").path(0).path("field").asString()).isEqualTo("garments[0].size");
        HttpResponse<String> advice = post(
                "/api/advice",
                "{\"event\": {\"season\": \"SUMMER\"}, \"garment\": {\"design\": \"tunic\", \"size\": \"XXL\"}}");
        assertThat(advice.statusCode()).isEqualTo(422);
        assertThat(JSON.readTree(advice.body())
                        .path("errors")
                        .path(0)
                        .path("field")
                        .asString())
                .isEqualTo("garment.size");
    }

    private JsonNode planned(int status, String garment) throws Exception {
        HttpResponse<String> answer =
                post("/api/cutting-plans", "{\"cloth\": " + CLOTH + ", \"garments\": [" + garment + "]}");
        assertThat(answer.statusCode()).as(garment + answer.body()).isEqualTo(status);
        return JSON.readTree(answer.body());
    }

    private HttpResponse<String> get(String path) throws Exception {
        return http.send(
                HttpRequest.newBuilder(URI.create("http://localhost:" + port + path))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, String body) throws Exception {
        return http.send(
                HttpRequest.newBuilder(URI.create("http://localhost:" + port + path))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }
}
