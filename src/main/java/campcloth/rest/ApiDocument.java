package campcloth.rest;

import campcloth.access.Mode;
import io.swagger.v3.core.converter.ModelConverter;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.Paths;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.info.License;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.StringSchema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.security.SecurityRequirement;
import io.swagger.v3.oas.models.security.SecurityScheme;
import io.swagger.v3.oas.models.servers.Server;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpHeaders;

/**
 * The OpenAPI document: what the controllers say of themselves, and what follows for an operation from what it is. An
 * answer that is created has a Location; what a PUT replaces has an ETag; whoever sends If-Match is told where it comes from.
 */
@Configuration
class ApiDocument {

    private static final String ANY = "*/*";
    private static final String TOKEN = "token";
    private static final String JSON = "application/json";

    @Bean
    OpenAPI document() {
        String version = ApiDocument.class.getPackage().getImplementationVersion();
        return new OpenAPI()
                .info(new Info()
                        .title("Campcloth")
                        .version(Objects.requireNonNullElse(version, "development"))
                        .description(
                                "Which cloth for a garment at an outdoor event, how much of it to buy, and how to cut"
                                        + " it; advice from cloth and fibre data, never a flammability test or a finding of law:"
                                        + " any clothing can burn, and the rules of the event, the venue and the law win and can"
                                        + " only be stricter.")
                        .license(new License().name("Apache-2.0").identifier("Apache-2.0")))
                .components(new Components()
                        .addSchemas(
                                "Drawing",
                                new StringSchema().description("a drawing in SVG; one unit is a mm on A4 paper"))
                        .addSchemas(
                                "SupplierList",
                                new StringSchema().description("a list in CSV with a head line, UTF-8, up to 16 MiB"))
                        .addSchemas(
                                "ClothList",
                                new StringSchema().description("cloths in CSV, to be read again as a supplier's list"))
                        .addSchemas(
                                "Export",
                                new StringSchema()
                                        .format("binary")
                                        .description(
                                                "a ZIP file: cloths.csv, events.json, plans.json, swatches.json, errands.json, README.txt"))
                        .addSchemas("Picture", new StringSchema().description("a picture in SVG"))
                        .addSchemas(
                                "SwatchCard", new StringSchema().description("a page of A4 in SVG; one unit is a mm")))
                .servers(List.of(new Server().url("/").description("this service")));
    }

    @Bean
    ModelConverter nullableFields() {
        return new NullableFields();
    }

    @Bean
    OpenApiCustomizer completed(Mode mode) {
        return api -> {
            api.setPaths(ofTheApi(api.getPaths()));
            api.getComponents().setSchemas(new TreeMap<>(api.getComponents().getSchemas()));
            api.getPaths().values().forEach(ApiDocument::answersInJson);
            api.getPaths().values().forEach(ApiDocument::parametersExplained);
            headers(api.getPaths());
            api.getPaths().forEach(ApiDocument::keys);
            ApiExamples.addTo(api);
            ApiProblems.addTo(api, mode);
            if (mode == Mode.HOSTED) {
                api.getComponents()
                        .addSecuritySchemes(
                                TOKEN,
                                new SecurityScheme()
                                        .type(SecurityScheme.Type.HTTP)
                                        .scheme("bearer"));
                api.addSecurityItem(new SecurityRequirement().addList(TOKEN));
            }
        };
    }

    private static Paths ofTheApi(Paths all) {
        Paths sorted = new Paths();
        new TreeMap<>(all).forEach((path, item) -> {
            if (path.startsWith("/api/")) {
                sorted.addPathItem(path, item);
            }
        });
        return sorted;
    }

    private static void answersInJson(PathItem item) {
        answers(item).map(ApiResponse::getContent).filter(Objects::nonNull).forEach(content -> {
            MediaType any = content.remove(ANY);
            if (any != null) {
                content.addMediaType(JSON, any);
            }
        });
    }

    private static void parametersExplained(PathItem item) {
        item.readOperations().stream()
                .flatMap(operation ->
                        Stream.ofNullable(operation.getParameters()).flatMap(List::stream))
                .forEach(parameter -> {
                    if (HttpHeaders.IF_MATCH.equals(parameter.getName())) {
                        parameter
                                .required(true)
                                .description("the ETag of the version that is changed, exactly as it was read")
                                .example("\"0\"");
                    } else if (isIn(parameter, "path")) {
                        parameter.description("as an answer named it");
                    }
                });
    }

    private static void headers(Paths paths) {
        Set<String> versioned = paths.values().stream()
                .flatMap(item -> Stream.ofNullable(item.getPut()))
                .flatMap(put -> schemas(put.getRequestBody().getContent()))
                .collect(Collectors.toSet());
        paths.values().forEach(item -> {
            answers(item)
                    .filter(answer -> schemas(answer.getContent()).anyMatch(versioned::contains))
                    .forEach(answer -> answer.addHeaderObject(
                            HttpHeaders.ETAG, header("version of what is answered; send it as If-Match to change it")));
            Stream.ofNullable(item.getPost())
                    .flatMap(post -> Stream.ofNullable(post.getResponses().get("201")))
                    .forEach(created ->
                            created.addHeaderObject(HttpHeaders.LOCATION, header("address of what was kept")));
            Stream.ofNullable(item.getPost())
                    .flatMap(post -> Stream.ofNullable(post.getResponses().get("202")))
                    .forEach(takenIn -> takenIn.addHeaderObject(
                                    HttpHeaders.LOCATION, header("address of the job, to look at it"))
                            .addHeaderObject(HttpHeaders.RETRY_AFTER, header("seconds after which to look")));
        });
    }

    private static void keys(String path, PathItem item) {
        if (CreatingCalls.isOne(path)) {
            item.getPost()
                    .addParametersItem(new Parameter()
                            .in("header")
                            .name(IdempotencyKey.HEADER)
                            .description(IdempotencyKey.DESCRIPTION)
                            .example(IdempotencyKey.EXAMPLE)
                            .schema(new StringSchema()));
        }
    }

    private static Header header(String description) {
        return new Header().required(true).description(description).schema(new StringSchema());
    }

    private static Stream<ApiResponse> answers(PathItem item) {
        return item.readOperations().stream().flatMap(operation -> operation.getResponses().values().stream());
    }

    /** Whether it is sent in the place named. */
    static boolean isIn(Parameter parameter, String place) {
        return place.equals(parameter.getIn());
    }

    /** The names of the schemas of a content. */
    static Stream<String> schemas(@org.jspecify.annotations.Nullable Content content) {
        return Stream.ofNullable(content)
                .flatMap(some -> some.values().stream())
                .flatMap(media -> schema(media).stream());
    }

    /** The name of the schema, where it has one. */
    static Optional<String> schema(MediaType media) {
        return Optional.ofNullable(media.getSchema())
                .map(schema -> schema.get$ref())
                .map(reference -> reference.substring(reference.lastIndexOf('/') + 1));
    }
}
