package campcloth.journey;

import static campcloth.journey.OperationCalls.PATH;
import static campcloth.journey.OperationCalls.told;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.journey.AccessRule.Answer;
import campcloth.journey.AccessTable.Row;
import campcloth.journey.DescribedApi.Operation;
import campcloth.journey.KeptThings.Thing;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/**
 * Every operation that the service describes, asked by everybody about things that belong to everybody: what comes of it is what
 * {@code access/operations.csv} says. What was refused has changed nothing, and tells another's thing from none at all by no word.
 */
@HostedService
class AccessMatrixTest {

    private static final AccessTable TABLE = AccessTable.read("operations.csv");

    @LocalServerPort
    private int port;

    @Autowired
    private KeptThings kept;

    @Autowired
    private HostedAccounts accounts;

    private DescribedApi api;
    private NamedPlaces places;
    private ThingsOfAll things;
    private OperationCalls calls;

    @BeforeEach
    void readTheDocument() {
        String address = "http://127.0.0.1:" + port;
        api = DescribedApi.of(address);
        places = new NamedPlaces(api);
        things = new ThingsOfAll(kept, accounts);
        calls = new OperationCalls(new DescribedCalls(address, api), places, things, accounts);
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
        try {
            for (Row row : TABLE.of(name(operation))) {
                for (Knocker who : Knocker.values()) {
                    wrong.addAll(row.namesAThing() ? aboutThings(operation, row, who) : plain(operation, row, who));
                }
            }
        } finally {
            things.end();
        }
        assertThat(wrong).isEmpty();
    }

    private List<String> plain(Operation operation, Row row, Knocker who) {
        Answer expected = row.rule().of(who, Whose.OWN, KeptThings.Kind.CLOTH);
        if (who.isStranger()) {
            List<String> wrong = misfit(row, who, Whose.NOWHERE, expected, calls.sendWithAnyKey(operation, who));
            if (!wrong.isEmpty()) {
                return wrong;
            }
        }
        return misfit(row, who, Whose.OWN, expected, calls.send(operation, who));
    }

    private List<String> aboutThings(Operation operation, Row row, Knocker who) {
        List<String> wrong = new ArrayList<>();
        String missing = told(calls.send(operation, row, who, KeptThings.nowhere(row.kind()), Whose.NOWHERE));
        for (Whose whose : row.kind().ways()) {
            if (whose == Whose.OWN && who.isStranger()) {
                continue;
            }
            Thing thing = things.of(row.kind(), who, whose);
            String before = whose == Whose.NOWHERE ? "" : things.state(thing);
            HttpResponse<String> answer = calls.send(operation, row, who, thing, whose);
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
            if (isChanged(operation, row, expected)) {
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

    /** Whether the next who asks needs another thing. */
    private static boolean isChanged(Operation operation, Row row, Answer expected) {
        return row.place().equals(PATH) && !operation.method().equals("get") && expected == Answer.DONE;
    }

    private static String name(Operation operation) {
        JsonNode id = operation.says().path("operationId");
        return id.asString();
    }
}
