package campcloth.journey;

import static campcloth.journey.ListCalls.LIST;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What is sent in place of a supplier's list, or with a question that cannot be used: refused as a whole, and never a failure of ours. */
@ListService
class ListsRefusedTest {

    @LocalServerPort
    private int port;

    private ListCalls lists;

    @BeforeEach
    void aSupplier() {
        lists = new ListCalls(port);
    }

    @Test
    void whatIsTooLargeIsRefusedWhateverLengthItClaims() throws Exception {
        byte[] big = new byte[16 * 1024 * 1024 + 1];
        assertThat(status(big, "text/csv")).isEqualTo(413);
        HttpRequest.Builder chunked = lists.list(new byte[0], "text/csv", "")
                .POST(HttpRequest.BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(big)));
        assertThat(lists.send(chunked).statusCode()).isEqualTo(413);
        String oneCell = "key,name,composition\nA,\"" + "x".repeat(15 * 1024 * 1024);
        assertThat(lists.take(oneCell, "").statusCode()).isEqualTo(422);
    }

    @ParameterizedTest
    @ValueSource(strings = {"application/json", "text/plain", "text/csv;charset=ISO-8859-1", "text/csv;charset=UTF-16"})
    void otherMediaTypesAndCharsetsAreRefused(String type) throws Exception {
        assertThat(status(LIST.getBytes(StandardCharsets.UTF_8), type)).isEqualTo(415);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"&onBadRow=perhaps", "&dryRun=perhaps", "&currency=shells", "&delimiter=x", "&supplier=" + "x"})
    void parametersOfNoUseAreRefused(String query) throws Exception {
        int status = lists.take(LIST, query).statusCode();
        assertThat(status).isIn(query.startsWith("&supplier") ? List.of(200) : List.of(400, 422));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "key,name,composition\n",
                "A;Leinen;100% linen\n",
                "key,name,composition\nA,\"Cloth,100% wool\n",
                "key,name,composition,weight,gewicht\nA,Cloth,100% wool,1,1\n"
            })
    void whatIsNoListIsAProblemThatNamesWhatIsWrong(String list) throws Exception {
        HttpResponse<String> answer = lists.take(list, "");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(ListCalls.json(answer).at("/errors/0/field").asString()).isNotBlank();
    }

    @Test
    void bytesThatAreNoUtf8AreAProblem() throws Exception {
        byte[] latin = LIST.replace("Leinen", "L\u00e4ngs").getBytes(StandardCharsets.ISO_8859_1);
        HttpResponse<String> answer = lists.send(lists.list(latin, "text/csv", ""));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(422);
        assertThat(ListCalls.json(answer).at("/errors/0/message").asString()).contains("no UTF-8");
    }

    @Test
    void hostileBytesNeverEndInAFailureOfOurs() throws Exception {
        List<String> hostile = List.of(
                "key,name,composition\nA,Cl\0th,100% wool\n",
                "a,".repeat(10_000) + "\n",
                "key,name,composition\nA,=cmd|' /C calc'!A0,100% wool\n",
                "key,name,composition\nA," + "x".repeat(5000) + ",100% wool\n",
                "key,name,composition\nA,Cloth," + "100% wool ".repeat(300) + "\n",
                "key;name;composition;weight\nA;Cloth;100% wool;9e999 g/m2\n",
                "\ufeff\ufeffkey,name,composition\nA,Cloth,100% wool\n");
        for (String list : hostile) {
            for (String query : List.of("", "&onBadRow=SKIP", "&dryRun=true")) {
                HttpResponse<String> answer = lists.take(list, query);
                assertThat(answer.statusCode()).as(answer.body()).isLessThan(500);
            }
        }
    }

    private int status(byte[] body, String type) throws Exception {
        return lists.send(lists.list(body, type, "")).statusCode();
    }
}
