package campcloth.journey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** An OpenAPI 3.1 document: its operations, and whether a value is of the shape that a schema in it says. */
final class DescribedApi {

    private static final Set<String> METHODS = Set.of("get", "put", "post", "delete");

    private final JsonNode document;

    DescribedApi(JsonNode document) {
        this.document = document;
    }

    /** That of the service at the address. */
    static DescribedApi of(String address) {
        String document = DescribedCalls.get(address + "/v3/api-docs").body();
        return new DescribedApi(new JsonMapper().readTree(document));
    }

    /** One operation. */
    record Operation(String method, String path, JsonNode says) {

        Optional<String> bodyMediaType() {
            return says.at("/requestBody/content").propertyNames().stream().findFirst();
        }

        Optional<JsonNode> bodySchema() {
            return body("schema");
        }

        Optional<JsonNode> bodyExample() {
            return body("example");
        }

        private Optional<JsonNode> body(String part) {
            return bodyMediaType()
                    .map(type -> says.at("/requestBody/content").path(type).get(part));
        }

        Stream<JsonNode> parameters(String place) {
            return says.path("parameters")
                    .valueStream()
                    .filter(p -> p.path("in").asString().equals(place));
        }

        boolean takesIfMatch() {
            return parameters("header").anyMatch(p -> p.path("name").asString().equals("If-Match"));
        }

        /** The status that says it went well. */
        String success() {
            return says.path("responses").propertyNames().stream()
                    .filter(status -> status.startsWith("2"))
                    .reduce((one, other) -> {
                        throw new AssertionError(this + " goes well in two ways");
                    })
                    .orElseThrow(() -> new AssertionError(this + " never goes well"));
        }

        /** The media type and what is said of it, where there is content. */
        Optional<String> mediaType() {
            return says.path("responses").path(success()).path("content").propertyNames().stream()
                    .findFirst();
        }

        JsonNode answer() {
            return says.path("responses")
                    .path(success())
                    .path("content")
                    .path(mediaType().orElseThrow());
        }

        @Override
        public String toString() {
            return method.toUpperCase(java.util.Locale.ROOT) + " " + path;
        }
    }

    List<Operation> operations() {
        return document.path("paths")
                .propertyStream()
                .flatMap(path -> path.getValue()
                        .propertyStream()
                        .filter(method -> METHODS.contains(method.getKey()))
                        .map(method -> new Operation(method.getKey(), path.getKey(), method.getValue())))
                .toList();
    }

    Operation operation(String method, String path) {
        return operations().stream()
                .filter(o -> o.method().equals(method) && o.path().equals(path))
                .findFirst()
                .orElseThrow(() -> new AssertionError(method + " " + path + " is not described"));
    }

    JsonNode document() {
        return document;
    }

    /** What a reference points to, or the thing itself. */
    JsonNode resolved(JsonNode thing) {
        String reference = thing.path("$ref").asString("");
        return reference.isEmpty() ? thing : document.at(reference.substring(1));
    }

    /** Where the value is not of the shape described; empty where it is. */
    List<String> misfits(JsonNode schema, JsonNode value) {
        List<String> misfits = new ArrayList<>();
        check(schema, value, "", misfits);
        return misfits;
    }

    private void check(JsonNode given, JsonNode value, String at, List<String> misfits) {
        JsonNode schema = resolved(given);
        if (schema.has("anyOf")) {
            JsonNode choice = schema.path("anyOf")
                    .valueStream()
                    .filter(one -> misfits(one, value).isEmpty())
                    .findFirst()
                    .orElse(schema.path("anyOf").path(0));
            check(choice, value, at, misfits);
            return;
        }
        if (schema.has("type") && types(schema).noneMatch(type -> isOf(type, value))) {
            misfits.add(at + " is " + value + ", described as " + schema.path("type"));
        } else if (schema.has("enum") && schema.path("enum").valueStream().noneMatch(value::equals)) {
            misfits.add(at + " is " + value + ", described as one of " + schema.path("enum"));
        } else if (value.isObject()) {
            checkFields(schema, value, at, misfits);
        } else if (value.isArray()) {
            for (int i = 0; i < value.size(); i++) {
                check(schema.path("items"), value.get(i), at + "[" + i + "]", misfits);
            }
        }
    }

    private void checkFields(JsonNode schema, JsonNode value, String at, List<String> misfits) {
        schema.path("required")
                .valueStream()
                .map(JsonNode::asString)
                .filter(name -> !value.has(name))
                .forEach(name -> misfits.add(at + "." + name + " is missing"));
        value.propertyStream().forEach(field -> {
            JsonNode described = schema.path("properties").path(field.getKey());
            JsonNode others = schema.path("additionalProperties");
            String place = at + "." + field.getKey();
            if (!described.isMissingNode()) {
                check(described, field.getValue(), place, misfits);
            } else if (others.isObject()) {
                check(others, field.getValue(), place, misfits);
            } else if (!others.asBoolean(false)) {
                misfits.add(place + " is not described");
            }
        });
    }

    private static Stream<String> types(JsonNode schema) {
        JsonNode type = schema.path("type");
        return type.isArray() ? type.valueStream().map(JsonNode::asString) : Stream.of(type.asString());
    }

    private static boolean isOf(String type, JsonNode value) {
        return switch (type) {
            case "null" -> value.isNull();
            case "string" -> value.isString();
            case "number" -> value.isNumber();
            case "integer" -> value.isIntegralNumber();
            case "boolean" -> value.isBoolean();
            case "array" -> value.isArray();
            case "object" -> value.isObject();
            default -> throw new AssertionError("no such type: " + type);
        };
    }
}
