package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.journey.DescribedApi.Operation;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The calls that a document describes, made on the running service: as they should be, and wrong in each way it names. */
final class DescribedCalls {

    private static final JsonMapper JSON = new JsonMapper();
    private static final HttpClient HTTP = HttpClient.newHttpClient();

    /** By schema, a word of the example that makes it well-formed and unusable when another stands in its place. */
    private static final Map<String, List<String>> UNUSABLE = Map.ofEntries(
            Map.entry("LabelRequest", List.of("30%", "60%")),
            Map.entry("Cloth", List.of("\"flax\"", "\"moonlight\"")),
            Map.entry("Event", List.of("\"humidityPercent\":50", "\"humidityPercent\":500")),
            Map.entry("Rules", List.of("\"maxMeltablePercent\":33", "\"maxMeltablePercent\":330")),
            Map.entry("AdviceRequest", List.of("\"tunic\"", "\"armour\"")),
            Map.entry("CourseRequest", List.of("\"tunic\"", "\"armour\"")),
            Map.entry("CuttingPlanRequest", List.of("\"tunic\"", "\"armour\"")),
            Map.entry("ClothComparisonRequest", List.of("\"tunic\"", "\"armour\"")),
            Map.entry("SideBySideRequest", List.of("\"linen-plain-185\"", "\"moonlight\"")),
            Map.entry("FireRequest", List.of("\"cotton\"", "\"moonlight\"")),
            Map.entry("LayoutRequest", List.of("\"seconds\":0.2", "\"seconds\":31")),
            Map.entry("ComfortRequest", List.of("\"humidityPercent\":70", "\"humidityPercent\":101")));

    private final String address;
    private final DescribedApi api;

    DescribedCalls(String address, DescribedApi api) {
        this.address = address;
        this.api = api;
    }

    /** A call as it would be made after the document; what a test bends, it bends here. */
    record Call(String method, String path, String body, Map<String, String> headers) {

        Call at(String other) {
            return new Call(method, other, body, headers);
        }

        Call sending(String other) {
            return new Call(method, path, other, headers);
        }

        Call with(String header, String value) {
            Map<String, String> more = new HashMap<>(headers);
            more.put(header, value);
            return new Call(method, path, body, more);
        }

        Call without(String header) {
            Map<String, String> fewer = new HashMap<>(headers);
            fewer.remove(header);
            return new Call(method, path, body, fewer);
        }
    }

    /** The call that the document describes: its example as the body, and something kept where an id is asked for. */
    Call right(Operation operation) {
        String body = operation
                .bodyExample()
                .map(example -> example.isString() ? example.asString() : example.toString())
                .orElse("");
        Call call = new Call(
                operation.method(),
                operation.path(),
                body,
                operation
                        .bodyMediaType()
                        .map(type -> Map.of("Content-Type", type))
                        .orElse(Map.of()));
        int id = operation.path().indexOf("/{id}");
        if (id < 0) {
            return call;
        }
        HttpResponse<String> kept =
                send(right(api.operation("post", operation.path().substring(0, id))));
        Call found = call.at(operation
                .path()
                .replace("{id}", JSON.readTree(kept.body()).path("id").asString()));
        Optional<String> tag = kept.headers().firstValue("ETag").filter(etag -> operation.takesIfMatch());
        return tag.map(etag -> found.with("If-Match", etag)).orElse(found);
    }

    /** The same call gone wrong in the way of that status. */
    Call wrong(Operation operation, String status) {
        Call right = right(operation);
        return switch (status) {
            case "400" -> right.body().isEmpty() ? withNumber(operation, right, "many") : right.sending("[]");
            case "404" ->
                operation.path().contains("{id}")
                        ? right.at(operation.path().replace("{id}", "nowhere"))
                        : right.sending(namingNothingKept(operation));
            case "412" -> right.with("If-Match", "\"999\"");
            case "413" -> right.sending(right.body() + " ".repeat(1024 * 1024));
            case "415" -> right.with("Content-Type", "text/xml");
            case "422" -> unusable(operation, right);
            case "428" -> right.without("If-Match");
            default -> throw new AssertionError(operation + " describes " + status + ", which nothing provokes");
        };
    }

    private String namingNothingKept(Operation operation) {
        ObjectNode body = (ObjectNode) operation.bodyExample().orElseThrow().deepCopy();
        api.resolved(operation.bodySchema().orElseThrow()).path("properties").propertyNames().stream()
                .filter(name -> name.endsWith("Id"))
                .forEach(name -> {
                    body.remove(name.substring(0, name.length() - "Id".length()));
                    body.put(name, "nowhere");
                });
        return body.toString();
    }

    private static Call unusable(Operation operation, Call right) {
        if (right.body().isEmpty()) {
            return operation.takesIfMatch()
                    ? right.with("If-Match", "yesterday's")
                    : withNumber(operation, right, "-1");
        }
        String schema =
                operation.bodySchema().orElseThrow().path("$ref").asString().replaceAll(".*/", "");
        assertThat(UNUSABLE).as(operation + " needs an unusable example").containsKey(schema);
        List<String> words = UNUSABLE.get(schema);
        String bent = right.body().replace(words.get(0), words.get(1));
        assertThat(bent).as(operation.toString()).isNotEqualTo(right.body());
        return right.sending(bent);
    }

    /** The same call with that value for the last of the numbers that it takes in its query. */
    private static Call withNumber(Operation operation, Call right, String value) {
        String name = operation
                .parameters("query")
                .filter(parameter -> parameter.at("/schema/minimum").isNumber())
                .map(parameter -> parameter.path("name").asString())
                .reduce((one, next) -> next)
                .orElseThrow();
        return right.at(right.path() + "?" + name + "=" + value);
    }

    HttpResponse<String> send(Call call) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address + call.path()))
                .method(
                        call.method().toUpperCase(java.util.Locale.ROOT),
                        HttpRequest.BodyPublishers.ofString(call.body()));
        call.headers().forEach(request::header);
        return send(request.build());
    }

    static HttpResponse<String> get(String address) {
        return send(HttpRequest.newBuilder(URI.create(address)).build());
    }

    private static HttpResponse<String> send(HttpRequest request) {
        try {
            return HTTP.send(request, HttpResponse.BodyHandlers.ofString());
        } catch (IOException failure) {
            throw new AssertionError(request.toString(), failure);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(request.toString(), stopped);
        }
    }
}
