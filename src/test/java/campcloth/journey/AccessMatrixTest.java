package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.journey.AccessRule.Answer;
import campcloth.journey.AccessTable.Row;
import campcloth.journey.DescribedApi.Operation;
import campcloth.journey.DescribedCalls.Call;
import campcloth.journey.KeptThings.Thing;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.config.AutowireCapableBeanFactory;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Every operation that the service describes, asked by everybody about things that belong to everybody: what comes of it is what
 * {@code access/operations.csv} says. What was refused has changed nothing, and tells another's thing from none at all by no word.
 */
@HostedService
class AccessMatrixTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final AccessTable TABLE = AccessTable.read("operations.csv");
    private static final String PATH = "path";
    private static final String ANY_KEY = "q7dXK0pJ3sVbN1yTgR5mAw";
    private static final int TAKEN_IN = 202;

    @LocalServerPort
    private int port;

    @Autowired
    private AutowireCapableBeanFactory beans;

    @Autowired
    private HostedAccounts accounts;

    private DescribedApi api;
    private DescribedCalls calls;
    private NamedPlaces places;
    private ExampleCalls examples;
    private ThingsOfAll things;

    @BeforeEach
    void readTheDocument() {
        String address = "http://127.0.0.1:" + port;
        api = new DescribedApi(
                JSON.readTree(DescribedCalls.get(address + "/v3/api-docs").body()));
        calls = new DescribedCalls(address, api);
        places = new NamedPlaces(api);
        examples = new ExampleCalls(places);
        things = new ThingsOfAll(
                (KeptThings) beans.autowire(KeptThings.class, AutowireCapableBeanFactory.AUTOWIRE_CONSTRUCTOR, false),
                accounts);
    }

    @AfterEach
    void endWhatStillWorks() {
        things.end();
    }

    @Test
    void everyOperationStandsInTheTableAndNoOther() {
        Set<String> described = new TreeSet<>();
        api.operations().forEach(operation -> described.add(name(operation)));
        Set<String> told = new TreeSet<>();
        TABLE.rows().forEach(row -> told.add(row.what()));
        assertThat(told)
                .as(
                        "access/operations.csv: give each new operation a row that says who may do it, and take out what is gone")
                .containsExactlyInAnyOrderElementsOf(described);
    }

    @Test
    void everyPlaceThatNamesAThingStandsInTheTableAndNoOther() {
        for (Operation operation : api.operations()) {
            Set<String> named = new TreeSet<>();
            operation.bodySchema().ifPresent(schema -> named.addAll(places.in(schema)));
            if (operation.path().contains("{id}")) {
                named.add(PATH);
            }
            Set<String> told = new TreeSet<>();
            TABLE.of(name(operation)).stream().filter(Row::namesAThing).forEach(row -> told.add(row.place()));
            assertThat(told)
                    .as("access/operations.csv: a row of " + name(operation)
                            + " for each place that names a kept thing, with its kind and rule")
                    .containsExactlyInAnyOrderElementsOf(named);
        }
    }

    @TestFactory
    Stream<DynamicTest> everybodyAsksForEverything() {
        return api.operations().stream()
                .map(operation -> DynamicTest.dynamicTest(name(operation), () -> ask(operation)));
    }

    private void ask(Operation operation) {
        List<String> wrong = new ArrayList<>();
        for (Row row : TABLE.of(name(operation))) {
            for (Knocker who : Knocker.values()) {
                wrong.addAll(row.namesAThing() ? aboutThings(operation, row, who) : plain(operation, row, who));
            }
        }
        assertThat(wrong).isEmpty();
    }

    private List<String> plain(Operation operation, Row row, Knocker who) {
        Answer expected = row.rule().of(who, Whose.OWN, KeptThings.Kind.CLOTH);
        Call call = as(who, examples.of(operation));
        if (who.isStranger()) {
            List<String> wrong = misfit(row, who, Whose.NOWHERE, expected, calls.send(withKey(call, ANY_KEY)));
            if (!wrong.isEmpty()) {
                return wrong;
            }
        }
        return misfit(row, who, Whose.OWN, expected, send(call));
    }

    private List<String> aboutThings(Operation operation, Row row, Knocker who) {
        List<String> wrong = new ArrayList<>();
        String missing = told(calls.send(call(operation, row, who, KeptThings.nowhere(row.kind()), Whose.NOWHERE)));
        for (Whose whose : row.kind().ways()) {
            if (whose == Whose.OWN && who.isStranger()) {
                continue;
            }
            Thing thing = things.of(row.kind(), who, whose);
            String before = whose == Whose.NOWHERE ? "" : things.state(thing);
            HttpResponse<String> answer = send(call(operation, row, who, thing, whose));
            Answer expected = row.rule().of(who, whose, row.kind());
            wrong.addAll(misfit(row, who, whose, expected, answer));
            if (expected != Answer.DONE) {
                if (whose != Whose.NOWHERE && !things.state(thing).equals(before)) {
                    wrong.add(row + ": " + who + " was refused and changed " + whose);
                }
                if (expected != Answer.FORBIDDEN
                        && whose.isAnothers()
                        && !isToldApart(whose, who)
                        && !told(answer).equals(missing)) {
                    wrong.add(row + ": " + who + " can tell " + whose + " from nothing: " + told(answer) + " / "
                            + missing);
                }
            }
            if (isUsed(operation, row, expected)) {
                things.used(thing, who, whose);
            }
        }
        return wrong;
    }

    /** A stranger without a key is asked to log in, with one told that it opens nothing. */
    private static boolean isToldApart(Whose whose, Knocker who) {
        return who.isStranger() && whose == Whose.PRIVATE_WITH_A_STRANGE_KEY;
    }

    private static List<String> misfit(
            Row row, Knocker who, Whose whose, Answer expected, HttpResponse<String> answer) {
        int status = answer.statusCode();
        boolean fits = switch (expected) {
            case DONE -> status / 100 == 2;
            case LOGIN ->
                status == 401
                        && answer.headers()
                                .firstValue("WWW-Authenticate")
                                .orElse("")
                                .startsWith("Bearer");
            case FORBIDDEN -> status == 403;
            // an id in a body may be told as a value that cannot be used
            case MISSING -> status == 404 || (status == 422 && !row.place().equals(PATH));
        };
        return fits
                ? List.of()
                : List.of(row + ": " + who + " with " + whose + " expects " + expected + ": " + status + " "
                        + answer.body().substring(0, Math.min(300, answer.body().length())));
    }

    private Call call(Operation operation, Row row, Knocker who, Thing thing, Whose whose) {
        Call call = examples.of(operation);
        if (row.place().equals(PATH)) {
            call = call.at(call.path().replace("{swatchId}", thing.id()).replace("{id}", thing.within()));
            if (operation.takesIfMatch()) {
                call = call.with("If-Match", things.tag(thing));
            }
        } else {
            call = call.at(call.path()
                            .replace(
                                    "{id}",
                                    things.of(KeptThings.Kind.SWATCH, known(who), Whose.OWN)
                                            .within()))
                    .sending(NamedPlaces.filled(call.body(), row.place(), thing.id()));
        }
        String key = things.shown(thing, whose);
        return as(who, key.isEmpty() ? call : withKey(call, key));
    }

    private static Call withKey(Call call, String key) {
        return call.at(call.path() + (call.path().contains("?") ? "&" : "?") + "key=" + key);
    }

    /** Whose cloth a swatch is of that names another cloth: one with a swatch, so that it is not the other one. */
    private static Knocker known(Knocker who) {
        return who.isStranger() ? Knocker.MAKER : who;
    }

    /** Sends it; a job that was taken in need not be worked on. */
    private HttpResponse<String> send(Call call) {
        HttpResponse<String> answer = calls.send(call);
        if (answer.statusCode() == TAKEN_IN) {
            answer.headers()
                    .firstValue("Location")
                    .ifPresent(job -> calls.send(new Call("delete", job, "", call.headers())));
        }
        return answer;
    }

    private Call as(Knocker who, Call call) {
        return who.isStranger() ? call : call.with("Authorization", accounts.bearer(things.account(who)));
    }

    /** Whether the next who asks needs another thing: this one was changed, or is a job, which works on by itself. */
    private static boolean isUsed(Operation operation, Row row, Answer expected) {
        boolean isChanged = row.place().equals(PATH) && !operation.method().equals("get") && expected == Answer.DONE;
        return isChanged || row.kind() == KeptThings.Kind.JOB;
    }

    /** What an answer tells, but for the id that was asked for. */
    private static String told(HttpResponse<String> answer) {
        String type = answer.headers().firstValue("Content-Type").orElse("");
        if (answer.statusCode() < 400) {
            return answer.statusCode() + type;
        }
        ObjectNode problem = (ObjectNode) JSON.readTree(answer.body());
        Set<String> fields = new HashSet<>(problem.propertyNames());
        String detail = problem.path("detail").asString("").replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "ID");
        String errors = problem.path("errors").toString();
        return answer.statusCode()
                + type
                + new TreeSet<>(fields)
                + problem.path("type")
                + problem.path("title")
                + detail
                + errors;
    }

    private static String name(Operation operation) {
        JsonNode id = operation.says().path("operationId");
        return id.asString();
    }
}
