package campcloth.journey;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Where and how a body of JSON can be bent. */
final class BentBody {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private BentBody() {}

    /** A place in a body, by its JSON pointer. */
    record Spot(String path, JsonNode value) {

        String replacedIn(JsonNode tree, JsonNode other) {
            int slash = path.lastIndexOf('/');
            JsonNode parent = tree.at(path.substring(0, slash));
            String last = path.substring(slash + 1);
            if (parent instanceof ArrayNode array) {
                array.set(Integer.parseInt(last), other);
            } else {
                ((ObjectNode) parent).set(last, other);
            }
            return tree.toString();
        }
    }

    /** Every place that holds anything. */
    static List<Spot> spots(JsonNode tree) {
        List<Spot> spots = new ArrayList<>();
        walk("", tree, spots);
        return spots;
    }

    private static void walk(String path, JsonNode node, List<Spot> spots) {
        if (!path.isEmpty() && !node.isNull()) {
            spots.add(new Spot(path, node));
        }
        if (node instanceof ObjectNode object) {
            object.properties().forEach(field -> walk(path + "/" + field.getKey(), field.getValue(), spots));
        } else if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                walk(path + "/" + i, array.get(i), spots);
            }
        }
    }

    /** Values of every type that one is not. */
    static List<JsonNode> wrongTypes(JsonNode value) {
        JsonNode text = NODES.stringNode("x");
        JsonNode number = NODES.numberNode(7);
        JsonNode yes = NODES.booleanNode(true);
        JsonNode list = NODES.arrayNode().add(1);
        JsonNode object = NODES.objectNode().put("a", 1);
        if (value.isNumber()) {
            return List.of(text, yes, list, object, NODES.stringNode("12"));
        }
        if (value.isString()) {
            return List.of(number, yes, list, object);
        }
        if (value.isBoolean()) {
            return List.of(text, list, object);
        }
        return value.isArray() ? List.of(text, number, yes, object) : List.of(text, number, yes, list);
    }

    /** The objects of a body, itself before those in it. */
    static List<ObjectNode> objects(JsonNode tree) {
        List<ObjectNode> objects = new ArrayList<>();
        collect(tree, objects);
        return objects;
    }

    private static void collect(JsonNode node, List<ObjectNode> objects) {
        if (node instanceof ObjectNode object) {
            objects.add(object);
        }
        node.forEach(child -> collect(child, objects));
    }

    /** The body with half a character in its first word. */
    static byte[] badUtf8(String body) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        byte[] good = body.getBytes(StandardCharsets.UTF_8);
        int quote = body.indexOf('"') + 1;
        bytes.write(good, 0, quote);
        bytes.write(0xC3);
        bytes.write(0x28);
        bytes.write(good, quote, good.length - quote);
        return bytes.toByteArray();
    }
}
