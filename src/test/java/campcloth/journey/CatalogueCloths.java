package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;

/** The cloths of the catalogue as it comes, whatever else tests have kept beside them. */
final class CatalogueCloths {

    private static final JsonMapper JSON = new JsonMapper();
    private static final int A_PAGE = 500;

    private CatalogueCloths() {}

    /** The ids of all that nobody has changed, as a list in JSON. */
    static ArrayNode ids(int port) throws IOException, InterruptedException {
        ArrayNode ids = JSON.createArrayNode();
        List<JsonNode> page = page(port, 0);
        for (int number = 1; !page.isEmpty(); number++) {
            page.stream()
                    .filter(cloth -> cloth.path("origin").asString().equals("CATALOGUE"))
                    .forEach(cloth -> ids.add(cloth.path("id").asString()));
            page = page(port, number);
        }
        return ids;
    }

    private static List<JsonNode> page(int port, int number) throws IOException, InterruptedException {
        URI address = URI.create("http://127.0.0.1:" + port + "/api/cloths?size=" + A_PAGE + "&page=" + number);
        HttpResponse<String> answer = HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        List<JsonNode> cloths = new ArrayList<>();
        JSON.readTree(answer.body()).path("cloths").forEach(cloths::add);
        return cloths;
    }
}
