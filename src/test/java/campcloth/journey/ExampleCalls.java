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
    private static final double SHORT_SEARCH_SECONDS = 0.02;

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
        Call call = example.sending(quick(body));
        return operation.says().path("operationId").asString().equals(MAKE_ACCOUNT)
                ? call.sending(withNewName(call.body()))
                : call;
    }

    /**
     * One simple garment, a short search for its layout, only cloths that are named: how long an answer is worked on is no part of who may
     * ask for it.
     */
    private static String quick(String body) {
        if (!(JSON.readTree(body) instanceof ObjectNode asked)) {
            return body;
        }
        if (asked.has("garments")) {
            asked.putArray("garments").addObject().put("design", "apron").put("size", "M-M");
        }
        if (asked.has("seconds")) {
            asked.put("seconds", SHORT_SEARCH_SECONDS);
        }
        if (asked.path("cloths") instanceof ObjectNode chosen) {
            chosen.remove("filter");
        }
        return asked.toString();
    }

    /** A name that no account has yet. */
    private static String withNewName(String body) {
        ObjectNode account = (ObjectNode) JSON.readTree(body);
        return account.put("name", "m-" + UUID.randomUUID()).toString();
    }
}
