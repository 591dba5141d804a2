package campcloth.journey;

import campcloth.journey.AccessTable.Row;
import campcloth.journey.DescribedApi.Operation;
import campcloth.journey.DescribedCalls.Call;
import campcloth.journey.KeptThings.Thing;
import java.net.http.HttpResponse;
import java.util.TreeSet;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The operations of a document as programs of everybody call them, about things that belong to everybody. */
final class OperationCalls {

    /** The place of a row whose thing is named by the address. */
    static final String PATH = "path";

    private static final JsonMapper JSON = new JsonMapper();
    private static final int TAKEN_IN = 202;

    /** Has the form of a key and opens nothing. */
    private static final String ANY_KEY = "q7dXK0pJ3sVbN1yTgR5mAw";

    private final DescribedCalls calls;
    private final ExampleCalls examples;
    private final ThingsOfAll things;
    private final HostedAccounts accounts;

    OperationCalls(DescribedCalls calls, NamedPlaces places, ThingsOfAll things, HostedAccounts accounts) {
        this.calls = calls;
        this.examples = new ExampleCalls(places);
        this.things = things;
        this.accounts = accounts;
    }

    /** As it stands in the document. */
    HttpResponse<String> send(Operation operation, Knocker who) {
        return send(as(who, examples.of(operation)), who);
    }

    /** With a key that opens nothing. */
    HttpResponse<String> sendWithAnyKey(Operation operation, Knocker who) {
        return send(as(who, withKey(examples.of(operation), ANY_KEY)), who);
    }

    /** With that thing in the place of the row, and its key where one is shown. */
    HttpResponse<String> send(Operation operation, Row row, Knocker who, Thing thing, Whose whose) {
        Call call = examples.of(operation);
        if (row.place().equals(PATH)) {
            call = call.at(call.path().replace("{swatchId}", thing.id()).replace("{id}", thing.within()));
            if (operation.takesIfMatch()) {
                call = call.with("If-Match", things.tag(thing));
            }
        } else {
            call = call.at(call.path().replace("{id}", clothWithASwatch(who).within()))
                    .sending(NamedPlaces.filled(call.body(), row.place(), thing.id()));
        }
        String key = things.shown(thing, whose);
        return send(as(who, key.isEmpty() ? call : withKey(call, key)), who);
    }

    private static Call withKey(Call call, String key) {
        return call.at(call.path() + (call.path().contains("?") ? "&" : "?") + "key=" + key);
    }

    /** Whose swatch it is that names another cloth: of one with a swatch, so that it is not the other one. */
    private Thing clothWithASwatch(Knocker who) {
        return things.of(KeptThings.Kind.SWATCH, who.isStranger() ? Knocker.MAKER : who, Whose.OWN);
    }

    private Call as(Knocker who, Call call) {
        return who.isStranger() ? call : call.with("Authorization", accounts.bearer(things.account(who)));
    }

    private HttpResponse<String> send(Call call, Knocker who) {
        HttpResponse<String> answer = calls.send(call);
        if (answer.statusCode() == TAKEN_IN) {
            answer.headers()
                    .firstValue("Location")
                    .ifPresent(job -> things.handedIn(job.substring(job.lastIndexOf('/') + 1), who));
        }
        return answer;
    }

    /** What an answer tells, but for the id that was asked for. */
    static String told(HttpResponse<String> answer) {
        String type = answer.headers().firstValue("Content-Type").orElse("");
        if (answer.statusCode() < 400) {
            return answer.statusCode() + type;
        }
        ObjectNode problem = (ObjectNode) JSON.readTree(answer.body());
        String detail = problem.path("detail").asString("").replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "ID");
        return answer.statusCode()
                + type
                + new TreeSet<>(problem.propertyNames())
                + problem.path("type")
                + problem.path("title")
                + detail
                + problem.path("errors");
    }
}
