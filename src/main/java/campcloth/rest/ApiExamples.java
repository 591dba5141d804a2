package campcloth.rest;

import com.fasterxml.jackson.databind.JsonNode;
import io.swagger.v3.core.util.Json;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.media.Content;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The examples of the document, one file each under {@code api-examples/}, found by the name of the schema that they
 * show: {@code Cloth-request.json}, {@code Cloth-answer.json}. A new operation needs a file and no code.
 */
final class ApiExamples {

    private static final String FOLDER = "/api-examples/";

    private ApiExamples() {}

    static void addTo(OpenAPI api) {
        api.getPaths().values().stream()
                .flatMap(item -> item.readOperations().stream())
                .forEach(ApiExamples::addTo);
    }

    private static void addTo(Operation operation) {
        Stream.ofNullable(operation.getRequestBody()).forEach(body -> addTo(body.getContent(), "-request"));
        operation.getResponses().values().forEach(answer -> addTo(answer.getContent(), "-answer"));
    }

    private static void addTo(@Nullable Content content, String kind) {
        Stream.ofNullable(content)
                .flatMap(some -> some.values().stream())
                .forEach(media -> ApiDocument.schema(media)
                        .flatMap(schema -> read(schema + kind))
                        .ifPresent(media::setExample));
    }

    /** The example of that name, where there is one. */
    static Optional<JsonNode> read(String name) {
        try (InputStream file = ApiExamples.class.getResourceAsStream(FOLDER + name + ".json")) {
            return file == null ? Optional.empty() : Optional.of(Json.mapper().readTree(file));
        } catch (IOException broken) {
            throw new UncheckedIOException("example " + name, broken);
        }
    }
}
