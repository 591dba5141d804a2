package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The README's example is what the program really prints, and its test command is what {@code .ci/run} runs. */
@WholeService
class ReadmeTest {

    private static final JsonMapper JSON = new JsonMapper();

    private static final Pattern CALL_AND_ANSWER = Pattern.compile(
            "```sh\\ncurl -s localhost:8080(\\S+) -H 'Content-Type: application/json' -d '(.*?)'\\n```.*?```json\\n(.*?)\\n```",
            Pattern.DOTALL);

    @LocalServerPort
    private int port;

    @Test
    void theExampleIsWhatTheProgramPrints() throws Exception {
        Matcher calls = CALL_AND_ANSWER.matcher(readme());
        List<String> paths = new ArrayList<>();
        while (calls.find()) {
            paths.add(calls.group(1));
            JsonNode printed = JSON.readTree(calls.group(3));
            JsonNode answered = JSON.readTree(post(calls.group(1), calls.group(2)));
            assertThat(withoutId(answered)).as(calls.group(1)).isEqualTo(withoutId(printed));
        }
        assertThat(paths).containsExactly("/api/labels", "/api/advice", "/api/cutting-plans");
    }

    @Test
    void theTestCommandIsTheOneThatIsRunBeforeAnythingLands() throws IOException {
        assertThat(readme()).contains("mvn verify            # runs every test");
        assertThat(Files.readAllLines(Path.of(".ci", "run"))).contains("mvn verify");
    }

    private static String readme() throws IOException {
        return Files.readString(Path.of("README.md"));
    }

    private static JsonNode withoutId(JsonNode answer) {
        ObjectNode copy = (ObjectNode) answer.deepCopy();
        copy.remove(List.of("id", "layoutSvg"));
        return copy;
    }

    private String post(String path, String body) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        HttpResponse<String> answer = HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(answer.body()).isBetween(200, 201);
        return answer.body();
    }
}
