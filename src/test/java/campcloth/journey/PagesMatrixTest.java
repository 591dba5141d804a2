package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.ThingKind;
import campcloth.journey.AccessRule.Answer;
import campcloth.journey.AccessTable.Row;
import campcloth.journey.KeptThings.Kind;
import campcloth.journey.KeptThings.Thing;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * Every page, opened and sent by everybody about things that belong to everybody: what comes of it is what {@code access/pages.csv}
 * says. Rows with "denied" are tried only by those who may not, since what they make needs a long form, a file or another place.
 */
@HostedService
class PagesMatrixTest {

    private static final AccessTable TABLE = AccessTable.read("pages.csv");
    private static final String ROOM = "campcloth.pages";
    private static final String POST = "POST ";
    private static final String DENIED = "denied";

    /** The choice of units, which everybody makes for themselves. */
    private static final String WITHOUT_TOKEN = "POST /preferences";

    /** What was typed in a long form stays, with what the asker may not do told above it. */
    private static final Set<String> FORM_STAYS = Set.of(
            "POST /cloths/{id}/edit", "POST /cloths/{id}/swatches/new", "POST /events/{id}/edit", "POST /plan/sheets");

    /** What was typed of an event comes back with 409 where the event is gone, so that nothing is lost. */
    private static final String TYPED_STAYS = "POST /events/{id}/edit";

    private static final int FEWEST_PAGES = 70;

    @LocalServerPort
    private int port;

    @Autowired
    private KeptThings kept;

    @Autowired
    private HostedAccounts accounts;

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    private RequestMappingHandlerMapping pages;

    private ThingsOfAll things;
    private PageCalls calls;

    @BeforeEach
    void begin() {
        things = new ThingsOfAll(kept, accounts);
        calls = new PageCalls(port, things);
    }

    @AfterEach
    void endWhatStillWorks() {
        things.end();
    }

    @Test
    void everyPageStandsInTheTableAndNoOther() {
        Set<String> there = new TreeSet<>();
        pages.getHandlerMethods().forEach((mapping, method) -> {
            if (method.getBeanType().getName().startsWith(ROOM)) {
                there.addAll(names(mapping));
            }
        });
        assertThat(there).hasSizeGreaterThan(FEWEST_PAGES);
        Set<String> told = new TreeSet<>();
        TABLE.rows().forEach(row -> told.add(row.what()));
        assertThat(told)
                .as(
                        "access/pages.csv: give each new page a row that says who may open or send it, and take out what is gone")
                .containsExactlyInAnyOrderElementsOf(there);
    }

    private static Set<String> names(RequestMappingInfo mapping) {
        Set<String> names = new TreeSet<>();
        for (String pattern : mapping.getPatternValues()) {
            if (mapping.getMethodsCondition().getMethods().isEmpty()) {
                names.add("ANY " + pattern);
            }
            mapping.getMethodsCondition().getMethods().forEach(method -> names.add(method + " " + pattern));
        }
        return names;
    }

    @TestFactory
    Stream<DynamicTest> everybodyOpensAndSendsEverything() {
        return TABLE.rows().stream().map(row -> DynamicTest.dynamicTest(row.toString(), () -> ask(row)));
    }

    private void ask(Row row) {
        List<String> wrong = new ArrayList<>();
        for (Knocker who : Knocker.values()) {
            if (row.namesAThing()) {
                wrong.addAll(aboutThings(row, who));
            } else {
                wrong.addAll(plain(row, who));
            }
        }
        assertThat(wrong).isEmpty();
    }

    private List<String> plain(Row row, Knocker who) {
        Answer expected = row.rule().of(who, Whose.OWN, Kind.CLOTH);
        List<String> wrong = new ArrayList<>();
        if (expected != Answer.DONE || !row.sent().startsWith(DENIED)) {
            wrong.addAll(misfit(row, who, Whose.OWN, expected, calls.send(row, who, Optional.empty(), Whose.OWN)));
        }
        if (who.isStranger() && expected == Answer.LOGIN) {
            wrong.addAll(misfit(row, who, Whose.NOWHERE, expected, calls.withAnyKey(row, who)));
        }
        if (needsToken(row, who)) {
            wrong.addAll(withoutToken(row, who, calls.withoutToken(row, who, Optional.empty(), Whose.OWN)));
        }
        return wrong;
    }

    private List<String> aboutThings(Row row, Knocker who) {
        List<String> wrong = new ArrayList<>();
        for (Whose whose : row.kind().ways()) {
            if (whose == Whose.OWN && who.isStranger()) {
                continue;
            }
            Thing thing = things.of(row.kind(), who, whose);
            Optional<Thing> named = Optional.of(thing);
            Answer expected = row.rule().of(who, whose, row.kind());
            String before = whose == Whose.NOWHERE ? "" : things.state(thing);
            if (needsToken(row, who)) {
                wrong.addAll(withoutToken(row, who, calls.withoutToken(row, who, named, whose)));
                wrong.addAll(unchanged(row, who, whose, thing, before));
            }
            HttpResponse<String> answer = calls.send(row, who, named, whose);
            wrong.addAll(misfit(row, who, whose, expected, answer));
            if (expected != Answer.DONE) {
                wrong.addAll(unchanged(row, who, whose, thing, before));
            }
            if (isHidden(row, who, whose) && expected != Answer.FORBIDDEN) {
                HttpResponse<String> nothing = calls.send(row, who, Optional.of(KeptThings.nowhere(row.kind())), whose);
                if (!PageCalls.told(answer).equals(PageCalls.told(nothing))) {
                    wrong.add(row + ": " + who + " can tell " + whose + " from nothing");
                }
            }
            if (expected == Answer.DONE && row.what().startsWith(POST)) {
                things.used(thing, who, whose);
            }
        }
        return wrong;
    }

    /** Whether the thing is to be as though it were not there. */
    private static boolean isHidden(Row row, Knocker who, Whose whose) {
        return !who.isStranger() && whose.isAnothers() && !whose.isThere() && row.kind() != Kind.ACCOUNT;
    }

    private List<String> unchanged(Row row, Knocker who, Whose whose, Thing thing, String before) {
        return whose == Whose.NOWHERE || things.state(thing).equals(before)
                ? List.of()
                : List.of(row + ": " + who + " was refused and changed " + whose);
    }

    /** Whoever is logged in and sends a form that was not opened here. */
    private static boolean needsToken(Row row, Knocker who) {
        return row.what().startsWith(POST) && !row.what().equals(WITHOUT_TOKEN) && !who.isStranger();
    }

    private static List<String> withoutToken(Row row, Knocker who, HttpResponse<String> answer) {
        return answer.statusCode() == 403
                ? List.of()
                : List.of(row + ": " + who + " sends a forged form: " + answer.statusCode());
    }

    private static boolean saysWhy(HttpResponse<String> answer) {
        return answer.body().contains("Only makers keep things of their own.")
                || Stream.of(ThingKind.values())
                        .anyMatch(kind -> answer.body()
                                .contains(String.valueOf(kind.notChangedByYou().getMessage())));
    }

    private static List<String> misfit(
            Row row, Knocker who, Whose whose, Answer expected, HttpResponse<String> answer) {
        int status = answer.statusCode();
        boolean toLogin = status / 100 == 3
                && answer.headers().firstValue("Location").orElse("").startsWith("/login");
        boolean fits = switch (expected) {
            case DONE -> status / 100 == 2 || (status / 100 == 3 && !toLogin);
            case LOGIN -> toLogin;
            case FORBIDDEN -> status == 403 || (status == 422 && FORM_STAYS.contains(row.what()) && saysWhy(answer));
            case MISSING -> status == 404 || (status == 409 && row.what().equals(TYPED_STAYS));
        };
        return fits
                ? List.of()
                : List.of(row + ": " + who + " with " + whose + " expects " + expected + ": " + status + " "
                        + answer.headers().firstValue("Location").orElse("") + PageCalls.said(answer));
    }
}
