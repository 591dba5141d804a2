package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.journey.DescribedApi.Operation;
import campcloth.journey.DescribedCalls.Call;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.node.ObjectNode;

/** The calls that a document describes, wrong in each of the ways that it names. */
final class WrongCalls {

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

    private final DescribedApi api;
    private final DescribedCalls calls;

    WrongCalls(DescribedApi api, DescribedCalls calls) {
        this.api = api;
        this.calls = calls;
    }

    /** The same call gone wrong in the way of that status. */
    Call of(Operation operation, String status) {
        Call right = calls.right(operation);
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

    /** The call for the end of a job that has ended. */
    private Call ended(Call cancel) {
        calls.end(cancel);
        return cancel;
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
        if (operation.path().equals(DescribedCalls.JOBS + "/lists")) {
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
}
