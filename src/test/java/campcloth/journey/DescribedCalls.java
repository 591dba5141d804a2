package campcloth.journey;

import static org.awaitility.Awaitility.await;

import campcloth.journey.DescribedApi.Operation;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import tools.jackson.databind.json.JsonMapper;

/** The calls that a document describes, made on the running service as they should be. */
final class DescribedCalls {

    private static final JsonMapper JSON = new JsonMapper();
    private static final HttpClient HTTP = HttpClient.newHttpClient();

    static final String JOBS = "/api/jobs";
    private static final String SWATCH = "{swatchId}";

    private final String address;
    private final DescribedApi api;
    private final List<Call> longJobs = new ArrayList<>();

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
        HttpResponse<String> kept = parent.equals(JOBS) ? longJob() : send(right(api.operation("post", parent)));
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

    /** Hands in a job that goes on while it is looked at and cancelled. */
    private HttpResponse<String> longJob() {
        Call layout = right(api.operation("post", JOBS + "/layouts"));
        HttpResponse<String> taken = send(layout.sending(layout.body().replace("\"seconds\":0.2", "\"seconds\":60")));
        longJobs.add(new Call("delete", taken.headers().firstValue("Location").orElseThrow(), "", Map.of()));
        return taken;
    }

    /** Ends the jobs that were handed in to be asked for, so that they take no place from the calls to come. */
    void endLongJobs() {
        longJobs.forEach(this::end);
        longJobs.clear();
    }

    /** Cancels a job, and waits for its end. */
    void end(Call cancel) {
        send(cancel);
        await("the job ends")
                .atMost(2, TimeUnit.MINUTES)
                .until(() -> !get(address + cancel.path()).body().contains("\"endedAt\":null"));
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
