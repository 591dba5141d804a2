package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A layout asked for as a stream of events. */
@WholeService
class LayoutEventsTest {

    private static final JsonMapper JSON = new JsonMapper();

    @LocalServerPort
    private int port;

    private record Event(String name, JsonNode data) {}

    @Test
    void betterLengthsComeFirstAndTheAnswerLast() throws Exception {
        HttpResponse<String> stream = post(Bodies.LAYOUT, "text/event-stream");
        assertThat(stream.statusCode()).as(stream.body()).isEqualTo(200);
        assertThat(stream.headers().firstValue("Content-Type").orElse("")).startsWith("text/event-stream");
        List<Event> events = events(stream.body());
        assertThat(events).hasSizeGreaterThan(1);
        double least = Double.POSITIVE_INFINITY;
        for (Event event : events.subList(0, events.size() - 1)) {
            assertThat(event.name).isEqualTo("better");
            assertThat(event.data.path("lengthCm").asDouble()).isLessThan(least);
            assertThat(event.data.path("usedPercent").asDouble()).isBetween(0.0, 100.0);
            assertThat(event.data.path("seconds").asDouble()).isGreaterThanOrEqualTo(0);
            least = event.data.path("lengthCm").asDouble();
        }
        Event last = events.get(events.size() - 1);
        assertThat(last.name).isEqualTo("layout");
        assertThat(last.data.path("lengthCm").asDouble()).isLessThan(least + 1e-6);
        assertThat(last.data).isEqualTo(new BareCalls(port, "/api/layouts").answer(Bodies.LAYOUT));
    }

    @Test
    void whatCannotBeLaidIsRefusedAsEver() throws Exception {
        for (String body : List.of(
                Bodies.LAYOUT.replace("\"widthCm\": 140", "\"widthCm\": 60"),
                Bodies.LAYOUT.replace("\"widthCm\": 140", "\"widthCm\": 0"),
                "{")) {
            HttpResponse<String> answer = post(body, "text/event-stream");
            assertThat(answer.statusCode()).as(answer.body()).isBetween(400, 422);
            assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
            assertThat(JSON.readTree(answer.body()).path("errors").size()).isPositive();
        }
    }

    @Test
    void jsonNamedFirstIsAnsweredAsJson() throws Exception {
        HttpResponse<String> answer = post(Bodies.LAYOUT, "application/json, text/event-stream");
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/json");
    }

    private HttpResponse<String> post(String body, String accept) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/api/layouts"))
                .header("Content-Type", "application/json")
                .header("Accept", accept)
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
    }

    private static List<Event> events(String stream) {
        List<Event> events = new ArrayList<>();
        for (String block : stream.split("\n\n")) {
            String[] lines = block.split("\n");
            if (lines[0].startsWith("event: ")) {
                events.add(new Event(lines[0].substring(7), JSON.readTree(lines[1].substring(6))));
            }
        }
        return events;
    }
}
