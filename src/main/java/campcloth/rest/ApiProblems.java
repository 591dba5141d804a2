package campcloth.rest;

import campcloth.access.Mode;
import io.swagger.v3.core.converter.ModelConverters;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.IntegerSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.http.HttpHeaders;

/** The problem answers of every operation, by what it takes; each described once, with one schema. */
enum ApiProblems {
    UNREADABLE("400", "A field or parameter is missing or of the wrong type, or the body is not JSON"),
    NOT_LOGGED_IN("401", "A token is missing, or is none of this service, has run out or was revoked"),
    NOT_ALLOWED("403", "The account may not do this"),
    NOT_FOUND("404", "Nothing of that id is kept"),
    JOB_ENDED("409", "The job has ended by itself; there is nothing left to cancel", "-ended"),
    KEY_BUSY("409", "A call with the same Idempotency-Key is still being worked on; try again later", "-key"),
    STALE("412", "It was changed since the version that If-Match names; nothing was written"),
    TOO_LARGE("413", "The body is over 1 MiB, a supplier's list over 16 MiB"),
    OTHER_MEDIA_TYPE("415", "The body is of another media type than asked for"),
    REFUSED(
            "422",
            "Well-formed, but a value cannot be used; each error names the field, the reason and the remedy. Clothing"
                    + " that is outside what we advise on is told its boundary, whom to ask, and cautions"),
    TOO_MANY_JOBS("429", "Too many jobs of one's own wait or run; wait for one or cancel one", "-jobs"),
    IF_MATCH_NEEDED("428", "If-Match is missing"),
    TOO_OFTEN("429", "Too many requests in a short time; nothing was done"),
    DATABASE_AWAY("503", "The database does not answer; nothing was lost"),
    BUSY("503", "As many layouts are being searched as there are processors; try again later", "-busy"),
    STORAGE_FULL("507", "There is no room left to write; nothing was written, and reading goes on");

    private static final String RESPONSES = "#/components/responses/";
    private static final String LAYOUTS = "/api/layouts";
    private static final List<String> KEPT =
            List.of("/api/cloths", "/api/events", "/api/cutting-plans", "/api/advice", "/api/export", "/api/jobs");
    private static final String CANCEL = "cancelJob";
    private static final String JOBS = "/api/jobs/";
    private static final Set<ApiProblems> PASSING =
            EnumSet.of(KEY_BUSY, TOO_MANY_JOBS, TOO_OFTEN, DATABASE_AWAY, BUSY, STORAGE_FULL);

    private final String status;
    private final String description;

    /** Tells it from another of the same status. */
    private final String which;

    ApiProblems(String status, String description) {
        this(status, description, "");
    }

    ApiProblems(String status, String description, String which) {
        this.status = status;
        this.description = description;
        this.which = which;
    }

    /** @param mode where people log in, every operation has the answers that come of it */
    static void addTo(OpenAPI api, Mode mode) {
        ModelConverters.getInstance(true)
                .readAllAsResolvedSchema(ProblemBody.class)
                .referencedSchemas
                .forEach(api.getComponents()::addSchemas);
        Stream.of(values())
                .filter(problem -> mode == Mode.HOSTED || !problem.isOfLogins())
                .forEach(problem -> api.getComponents().addResponses(problem.key(), problem.response()));
        api.getPaths()
                .forEach((path, item) -> item.readOperations()
                        .forEach(operation -> of(path, operation, api.getComponents(), mode)
                                .forEach(problem -> operation
                                        .getResponses()
                                        .addApiResponse(
                                                problem.status, new ApiResponse().$ref(RESPONSES + problem.key())))));
    }

    private static Stream<ApiProblems> of(String path, Operation operation, Components components, Mode mode) {
        List<Parameter> parameters = operation.getParameters() == null ? List.of() : operation.getParameters();
        boolean body = operation.getRequestBody() != null;
        boolean query = parameters.stream().anyMatch(p -> ApiDocument.isIn(p, "query"));
        boolean number = parameters.stream()
                .anyMatch(p -> ApiDocument.isIn(p, "query") && p.getSchema().getMinimum() != null);
        boolean change = parameters.stream().anyMatch(p -> HttpHeaders.IF_MATCH.equals(p.getName()));
        boolean id = parameters.stream().anyMatch(p -> ApiDocument.isIn(p, "path"))
                || namesSomethingKept(operation, components);
        return Stream.of(values()).filter(problem -> switch (problem) {
            case UNREADABLE -> body || query;
            case NOT_LOGGED_IN, NOT_ALLOWED -> mode == Mode.HOSTED;
            case TOO_OFTEN -> mode == Mode.HOSTED && !(body && path.startsWith(JOBS));
            case NOT_FOUND -> id;
            case STALE, IF_MATCH_NEEDED -> change;
            case JOB_ENDED -> CANCEL.equals(operation.getOperationId());
            case KEY_BUSY -> body && CreatingCalls.isOne(path);
            case TOO_MANY_JOBS -> body && path.startsWith(JOBS);
            case TOO_LARGE, OTHER_MEDIA_TYPE -> body;
            case REFUSED -> body || number || change;
            case DATABASE_AWAY -> KEPT.stream().anyMatch(path::startsWith);
            case BUSY -> path.equals(LAYOUTS);
            case STORAGE_FULL -> (body || change) && KEPT.stream().anyMatch(path::startsWith);
        });
    }

    /** Whether its body can name an event or a cloth by {@code eventId} or {@code clothId}. */
    private static boolean namesSomethingKept(Operation operation, Components components) {
        return Stream.ofNullable(operation.getRequestBody())
                .flatMap(body -> ApiDocument.schemas(body.getContent()))
                .flatMap(name -> properties(components.getSchemas().get(name)).keySet().stream())
                .anyMatch(field -> field.endsWith("Id"));
    }

    private static Map<String, ?> properties(@org.jspecify.annotations.Nullable Schema<?> schema) {
        return schema == null || schema.getProperties() == null ? Map.of() : schema.getProperties();
    }

    private boolean isOfLogins() {
        return this == NOT_LOGGED_IN || this == NOT_ALLOWED || this == TOO_OFTEN;
    }

    private ApiResponse response() {
        MediaType media = new MediaType().schema(new Schema<>().$ref("Problem"));
        ApiExamples.read("problem-" + variant()).ifPresent(media::setExample);
        ApiResponse response = new ApiResponse()
                .description(description)
                .content(new Content().addMediaType("application/problem+json", media));
        if (PASSING.contains(this)) {
            response.addHeaderObject(
                    HttpHeaders.RETRY_AFTER,
                    new Header().description("seconds to wait").schema(new IntegerSchema()));
        }
        return response;
    }

    private String key() {
        return "Problem" + variant();
    }

    private String variant() {
        return status + which;
    }
}
