package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import campcloth.journey.DescribedApi.Operation;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The calls that a document describes, made on the running service: as they should be, and wrong in each way it names. */
final class DescribedCalls {

    private static final JsonMapper JSON = new JsonMapper();
    private static final HttpClient HTTP = HttpClient.newHttpClient();

    /** By schema, a word of the example that makes it well-formed and unusable when another stands in its place. */
    private static final Map<String, List<String>> UNUSABLE = Map.ofEntries(
            Map.entry("LabelRequest", List.of("30%", "60%")),
            Map.entry("FlameRequest", List.of("\"celery\"", "\"moonlight\"")),
            Map.entry("SupplierList", List.of("100% linen", "100% moonlight")),
            Map.entry("Cloth", List.of("\"flax\"", "\"moonlight\"")),
            Map.entry("Swatch", List.of("\"afterCm\":[47.3]", "\"afterCm\":[97.3]")),
            Map.entry("Event", List.of("\"humidityPercent\":50", "\"humidityPercent\":500")),
            Map.entry("Rules", List.of("\"maxMeltablePercent\":33", "\"maxMeltablePercent\":330")),
            Map.entry("AdviceRequest", List.of("\"tunic\"", "\"armour\"")),
            Map.entry("CourseRequest", List.of("\"tunic\"", "\"armour\"")),
            Map.entry("CuttingPlanRequest", List.of("\"tunic\"", "\"armour\"")),
            Map.entry("ClothComparisonRequest", List.of("\"tunic\"", "\"armour\"")),
            Map.entry("SideBySideRequest", List.of("\"linen-plain-185\"", "\"moonlight\"")),
            Map.entry("FireRequest", List.of("\"cotton\"", "\"moonlight\"")),
            Map.entry("LayoutRequest", List.of("\"seconds\":0.2", "\"seconds\":121")),
            Map.entry("ComfortRequest", List.of("\"humidityPercent\":70", "\"humidityPercent\":101")));

    private static final String JOBS = "/api/jobs";
    private static final String SWATCH = "{swatchId}";

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
        Call call = example(operation);
        int id = operation.path().indexOf("/{id}");
        if (id < 0) {
            return call;
        }
        String parent = operation.path().substring(0, id);
        HttpResponse<String> kept = send(parent.equals(JOBS) ? longJob() : right(api.operation("post", parent)));
        Call found = withSwatch(
                operation,
                call.at(operation
                        .path()
                        .replace("{id}", JSON.readTree(kept.body()).path("id").asString())));
        Optional<String> tag = kept.headers().firstValue("ETag").filter(etag -> operation.takesIfMatch());
        return tag.map(etag -> found.with("If-Match", etag)).orElse(found);
    }

    /** The call with the example as its body, and its address as it is described. */
    static Call example(Operation operation) {
        String body = operation
                .bodyExample()
                .map(example -> example.isString() ? example.asString() : example.toString())
                .orElse("");
        return new Call(
                operation.method(),
                operation.path() + needed(operation),
                body,
                operation
                        .bodyMediaType()
                        .map(type -> Map.of("Content-Type", type))
                        .orElse(Map.of()));
    }

    /** A job that goes on while it is looked at and cancelled. */
    private Call longJob() {
        Call layout = right(api.operation("post", JOBS + "/layouts"));
        return layout.sending(layout.body().replace("\"seconds\":0.2", "\"seconds\":60"));
    }

    /** The call with its job cancelled before, and that come to its end. */
    private Call ended(Call cancel) {
        send(cancel);
        await("the job ends").atMost(2, TimeUnit.MINUTES).until(() -> !get(address + cancel.path())
                .body()
                .contains("\"endedAt\":null"));
        return cancel;
    }

    /** The same call with a swatch told before it, where it asks for one. */
    private Call withSwatch(Operation operation, Call call) {
        if (!call.path().contains(SWATCH)) {
            return call;
        }
        String body = api.operation("post", operation.path().replace("/" + SWATCH, ""))
                .bodyExample()
                .orElseThrow()
                .toString();
        HttpResponse<String> told = send(new Call(
                "post", call.path().replace("/" + SWATCH, ""), body, Map.of("Content-Type", "application/json")));
        return call.at(call.path()
                .replace(SWATCH, JSON.readTree(told.body()).path("id").asString()));
    }

    /** The same call gone wrong in the way of that status. */
    Call wrong(Operation operation, String status) {
        Call right = right(operation);
        return switch (status) {
            case "400" -> malformed(operation, right);
            case "404" ->
                operation.path().contains("{id}")
                        ? right.at(operation.path().replaceAll("\\{[^}]+}", "nowhere"))
                        : right.sending(namingNothingKept(operation));
            case "409" -> ended(right);
            case "412" -> right.with("If-Match", "\"999\"");
            case "413" -> right.sending(right.body() + " ".repeat(isList(operation) ? 16 * 1024 * 1024 : 1024 * 1024));
            case "415" -> right.with("Content-Type", "text/xml");
            case "422" -> unusable(operation, right);
            case "428" -> right.without("If-Match");
            default -> throw new AssertionError(operation + " describes " + status + ", which nothing provokes");
        };
    }

    /** The parameters of the query that must be there, as their examples have them. */
    private static String needed(Operation operation) {
        String query = operation
                .parameters("query")
                .filter(parameter -> parameter.path("required").asBoolean(false))
                .map(parameter -> parameter.path("name").asString() + "="
                        + URLEncoder.encode(parameter.path("example").asString(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return query.isEmpty() ? "" : "?" + query;
    }

    private static boolean isList(Operation operation) {
        return operation.bodyMediaType().filter("text/csv"::equals).isPresent();
    }

    private static Call malformed(Operation operation, Call right) {
        if (isList(operation)) {
            return right.at(operation.path());
        }
        if (!right.body().isEmpty()) {
            return right.sending("[]");
        }
        return operation
                        .parameters("query")
                        .anyMatch(p -> p.at("/schema/minimum").isNumber())
                ? withNumber(operation, right, "many")
                : right.at(right.path() + "?"
                        + operation
                                .parameters("query")
                                .filter(p -> p.at("/schema/enum").isArray())
                                .findFirst()
                                .orElseThrow()
                                .path("name")
                                .asString()
                        + "=many");
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
        if (operation.path().equals(JOBS + "/lists")) {
            return right.at(operation.path() + "?supplier=%20");
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
