package campcloth.journey;

import static campcloth.journey.ListCalls.LIST;
import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Suppliers' lists over HTTP: taken over, told while it is done, and by its rows where they cannot be used. */
@ListService
class ListsRoadTest {

    private static final JsonMapper JSON = new JsonMapper();

    @LocalServerPort
    private int port;

    private ListCalls lists;

    @BeforeEach
    void aSupplier() {
        lists = new ListCalls(port);
    }

    @Test
    void aListIsTakenOverOnceAndFoundAgain() throws Exception {
        HttpResponse<String> first = lists.take(LIST, "");
        assertThat(first.statusCode()).as(first.body()).isEqualTo(200);
        JsonNode report = ListCalls.json(first);
        assertThat(report.at("/counts/added").asInt()).isEqualTo(2);
        assertThat(report.at("/written").asBoolean()).isTrue();
        assertThat(report.at("/rows/0/row").asInt()).isEqualTo(2);
        assertThat(report.at("/rows/0/outcome").asString()).isEqualTo("ADDED");
        assertThat(report.at("/columns/3/field").asString()).isEqualTo("weightGsm");
        assertThat(report.at("/columns/3/unit").asString()).isEqualTo("g/m2");
        assertThat(report.at("/ignoredColumns/0/header").asString()).isEqualTo("Farbe");
        assertThat(lists.report(LIST, "").at("/counts/unchanged").asInt()).isEqualTo(2);
    }

    @Test
    void aRowThatCannotBeUsedRefusesTheListUnlessItIsSkipped() throws Exception {
        String list = LIST.replace("100% wool", "100% moonlight");
        HttpResponse<String> refused = lists.take(list, "");
        assertThat(refused.statusCode()).isEqualTo(422);
        JsonNode problem = ListCalls.json(refused);
        assertThat(problem.at("/errors/0/field").asString()).isEqualTo("line 3, composition");
        assertThat(problem.at("/report/written").asBoolean(true)).isFalse();
        JsonNode looked = lists.report(list, "&dryRun=true");
        assertThat(looked.at("/rows/1/outcome").asString()).isEqualTo("REFUSED");
        assertThat(looked.at("/rows/1/errors/0/field").asString()).isEqualTo("composition");
        assertThat(lists.report(list, "&onBadRow=SKIP").at("/counts/added").asInt())
                .isEqualTo(1);
    }

    @Test
    void theWorkIsToldAsLinesWithEveryRowAndTheReportLast() throws Exception {
        StringBuilder list = new StringBuilder("key,name,composition\n");
        for (int i = 0; i < 3000; i++) {
            list.append("K").append(i).append(",Cloth ").append(i).append(",100% wool\n");
        }
        List<JsonNode> lines = told(list.toString());
        assertThat(lines.get(0).at("/progress/read").asInt()).isPositive();
        assertThat(lines).filteredOn(line -> line.has("row")).hasSize(3000);
        JsonNode report = lines.get(lines.size() - 1).path("report");
        assertThat(report.at("/counts/added").asInt()).isEqualTo(3000);
        assertThat(report.path("rows").size()).isEqualTo(1000);
        HttpResponse<String> events =
                lists.send(lists.list(utf8(LIST), "text/csv", "").header("Accept", "text/event-stream"));
        assertThat(events.body()).startsWith("event: progress\ndata: {").contains("event: row\n", "event: report\n");
    }

    @Test
    void aListThatBreaksOffBehindItsBeginningEndsWithAProblem() throws Exception {
        List<JsonNode> lines = told("key,name,composition\n" + "K,Cloth,100% wool\n".repeat(1500) + "L,\"Cloth");
        assertThat(lines.get(lines.size() - 1).at("/problem/status").asInt()).isEqualTo(422);
    }

    @Test
    void aKeyThatComesTwiceIsRefusedAtItsSecondLine() throws Exception {
        HttpResponse<String> answer = lists.take(LIST + "A;Leinen 2;100% linen;190;150;natur\n", "");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(422);
        assertThat(ListCalls.json(answer).at("/errors/0/field").asString())
                .as(answer.body())
                .startsWith("line 4");
    }

    /** All lines of the answer, for whom it is written while the work goes on. */
    private List<JsonNode> told(String list) throws Exception {
        HttpResponse<String> answer =
                lists.send(lists.list(utf8(list), "text/csv", "").header("Accept", "application/x-ndjson"));
        assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("application/x-ndjson");
        return answer.body().lines().map(JSON::readTree).toList();
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
