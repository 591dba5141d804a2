package campcloth.journey;

import campcloth.journey.DescribedApi.Operation;
import campcloth.journey.DescribedCalls.Call;
import java.util.Optional;
import java.util.UUID;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The calls of a document with its examples, so that they can be made many times: quick to plan, and of a new name each. */
final class ExampleCalls {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String MAKE_ACCOUNT = "makeAccount";

    private final NamedPlaces places;

    ExampleCalls(NamedPlaces places) {
        this.places = places;
    }

    Call of(Operation operation) {
        Call example = DescribedCalls.example(operation);
        if (!operation.bodyMediaType().equals(Optional.of("application/json"))) {
            return example;
        }
        String body = places.asSent(example.body(), operation.bodySchema().orElseThrow());
        Call call = example.sending(body.contains("\"garments\"") ? withOneGarment(body) : body);
        return operation.says().path("operationId").asString().equals(MAKE_ACCOUNT)
                ? call.sending(withNewName(call.body()))
                : call;
    }

    /** A simple one: how long a layout is searched for is no part of who may ask. */
    private static String withOneGarment(String body) {
        ObjectNode order = (ObjectNode) JSON.readTree(body);
        order.putArray("garments").addObject().put("design", "apron").put("size", "M-M");
        return order.toString();
    }

    /** A name that no account has yet. */
    private static String withNewName(String body) {
        ObjectNode account = (ObjectNode) JSON.readTree(body);
        return account.put("name", "m-" + UUID.randomUUID()).toString();
    }
}
