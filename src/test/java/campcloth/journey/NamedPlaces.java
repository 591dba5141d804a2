package campcloth.journey;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The places of bodies that name kept things: found by their names in a schema, and filled in an example. */
final class NamedPlaces {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String ID = "Id";
    private static final String CLOTH_ID = "ClothId";

    private final DescribedApi api;

    NamedPlaces(DescribedApi api) {
        this.api = api;
    }

    /** Wherever a body of that schema may say an id that is looked at: "/cloths/0/clothId". */
    Set<String> in(JsonNode schema) {
        Set<String> places = new TreeSet<>();
        walk(schema, "", new HashSet<>(), places);
        return places;
    }

    private void walk(JsonNode given, String at, Set<String> above, Set<String> places) {
        String name = given.path("$ref").asString("");
        if (!name.isEmpty() && above.contains(name)) {
            return;
        }
        Set<String> all = new HashSet<>(above);
        all.add(name);
        JsonNode schema = api.resolved(given);
        schema.path("anyOf").valueStream().forEach(one -> walk(one, at, all, places));
        if (schema.has("items")) {
            walk(schema.path("items"), at + "/0", all, places);
        }
        schema.path("properties").propertyStream().forEach(field -> {
            String place = at + "/" + field.getKey();
            if (isServedOnly(field.getValue())) {
                return;
            }
            if (field.getKey().equals("ids") || field.getKey().endsWith("Ids")) {
                places.add(place + "/0");
            } else if (field.getKey().equals("id") || field.getKey().endsWith(ID)) {
                places.add(place);
            } else {
                walk(field.getValue(), place, all, places);
            }
        });
    }

    /** The body with an id at that place; what is told there by itself instead of an id goes. */
    static String filled(String body, String place, String id) {
        ObjectNode root = (ObjectNode) JSON.readTree(body);
        List<String> steps = new ArrayList<>(List.of(place.substring(1).split("/")));
        String last = steps.remove(steps.size() - 1);
        JsonNode node = root;
        for (int i = 0; i < steps.size(); i++) {
            boolean isList = (i + 1 < steps.size() ? steps.get(i + 1) : last).equals("0");
            node = step(node, steps.get(i), isList);
        }
        if (node instanceof ArrayNode list) {
            list.insert(0, id);
        } else if (node instanceof ObjectNode thing) {
            thing.put(last, id);
            if (last.endsWith(ID)) {
                thing.remove(last.substring(0, last.length() - ID.length()));
            }
            if (last.endsWith(CLOTH_ID)) {
                thing.remove(last.substring(0, last.length() - CLOTH_ID.length()));
            }
        }
        return root.toString();
    }

    /** The body without what is served only and not looked at where it is sent. */
    String asSent(String body, JsonNode schema) {
        if (!(JSON.readTree(body) instanceof ObjectNode told)) {
            return body;
        }
        api.resolved(schema)
                .path("properties")
                .propertyStream()
                .filter(field -> isServedOnly(field.getValue()))
                .forEach(field -> told.remove(field.getKey()));
        return told.toString();
    }

    private static boolean isServedOnly(JsonNode field) {
        return field.path("readOnly").asBoolean(false);
    }

    /** What is added to a list is a part of an outfit, which has to say its kind. */
    private static JsonNode step(JsonNode node, String name, boolean isList) {
        if (node instanceof ArrayNode list) {
            return list.isEmpty() ? list.addObject().put("kind", "SHIRT") : list.get(0);
        }
        ObjectNode thing = (ObjectNode) node;
        if (!thing.has(name) || thing.path(name).isNull()) {
            return isList ? thing.putArray(name) : thing.putObject(name);
        }
        return thing.path(name);
    }
}
