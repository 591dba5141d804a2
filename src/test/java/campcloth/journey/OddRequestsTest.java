package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Requests that no well-behaved client makes, sent byte by byte: refused with a problem, and nothing is bent or lost. */
@WholeService
class OddRequestsTest {

    private static final String HOST = "Host: localhost\r\n";

    @LocalServerPort
    private int port;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/api/cloths/%00",
                "/api/cloths/a%2Fb",
                "/api/cloths/{x}",
                "/api/cloths/%ff%fe",
                "/api/nowhere",
                "/error"
            })
    void addressesThatAreNoneAreProblems(String path) throws IOException {
        String answer = get(path);
        assertThat(answer).matches("(?s)HTTP/1.1 4\\d\\d.*");
        isProblem(answer);
    }

    @Test
    void aTooLongAddressIsAProblemOrAtLeastRefused() throws IOException {
        String answer = get("/api/cloths/" + "x".repeat(10_000));
        assertThat(answer).matches("(?s)HTTP/1.1 4\\d\\d.*");
        assertThat(answer).doesNotContain("Exception").doesNotContain("Tomcat");
    }

    @Test
    void yamlIsNotSpokenHere() throws IOException {
        String answer = post("/api/cloths", "application/yaml", "name: x\nblend:\n- fibre: flax\n  percent: 100\n");
        assertThat(answer).startsWith("HTTP/1.1 415");
        isProblem(answer);
        assertThat(answer).doesNotContainPattern("(?i)\nAccept:[^\n]*yaml");
    }

    @Test
    void anAnswerIsJsonWhateverIsAccepted() throws IOException {
        String answer = new RawRequests(port)
                .send("GET /api/designs HTTP/1.1", HOST + "Accept: application/yaml, text/html\r\n", "");
        assertThat(answer).startsWith("HTTP/1.1 200").contains("application/json");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"name\": \"a\\u0000b\", \"season\": \"SUMMER\"}",
                "{\"name\": \"a\\ud800b\", \"season\": \"SUMMER\"}",
                "{\"name\": \"a\\u001bb\", \"season\": \"SUMMER\"}"
            })
    void textThatCannotBeKeptIsRefusedByField(String body) throws IOException {
        String answer = post("/api/events", "application/json", body);
        assertThat(answer).startsWith("HTTP/1.1 400").contains("\"field\":\"name\"");
    }

    @Test
    void measurementsWithKeysThatCannotBeKeptAreRefused() throws IOException {
        String answer = post(
                "/api/cutting-plans",
                "application/json",
                "{\"cloth\": {\"widthCm\": 140}, \"garments\": [{\"design\": \"tunic\", \"wearer\": {\"a\\u0000\": 1}}]}");
        assertThat(answer).startsWith("HTTP/1.1 400");
        isProblem(answer);
    }

    @Test
    void aFractionIsNotACount() throws IOException {
        String answer = post(
                "/api/cutting-plans",
                "application/json",
                "{\"cloth\": {\"widthCm\": 140}, \"garments\": [{\"design\": \"tunic\", \"count\": 1.9}]}");
        assertThat(answer)
                .startsWith("HTTP/1.1 400")
                .contains("garments[0].count")
                .contains("whole number");
    }

    @Test
    void aDoubledFieldIsRefused() throws IOException {
        String answer = post("/api/events", "application/json", "{\"season\": \"SUMMER\", \"season\": \"WINTER\"}");
        assertThat(answer).startsWith("HTTP/1.1 400").contains("twice");
    }

    @Test
    void aPageUnderAnotherNameCannotUseTheService() throws IOException {
        String answer = new RawRequests(port).send("GET /api/cloths HTTP/1.1", "Host: evil.example\r\n", "");
        assertThat(answer).startsWith("HTTP/1.1 421");
        isProblem(answer);
    }

    @ParameterizedTest
    @ValueSource(strings = {"text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x"})
    void aWebPageCannotSendAChangeWithoutBeingAsked(String type) throws IOException {
        assertThat(post("/api/events", type, "{\"season\": \"SUMMER\"}")).startsWith("HTTP/1.1 415");
    }

    @ParameterizedTest
    @ValueSource(strings = {"minWeightGsm=abc", "page=x", "size=0", "size=501", "minWeightGsm=NaN", "fibre=moonweed"})
    void parametersOutOfFormAreRefusedByName(String query) throws IOException {
        String answer = get("/api/cloths?" + query);
        assertThat(answer).matches("(?s)HTTP/1.1 4(00|22).*").doesNotContain("Optional");
        assertThat(answer).contains("\"field\":\"" + query.substring(0, query.indexOf('=')) + "\"");
    }

    private static void isProblem(String answer) {
        assertThat(answer).contains("application/problem+json").contains("\"type\":\"urn:campcloth:problem:");
        assertThat(answer).doesNotContain("<html").doesNotContain("Exception");
    }

    private String get(String path) throws IOException {
        return new RawRequests(port).send("GET " + path + " HTTP/1.1", HOST, "");
    }

    private String post(String path, String type, String body) throws IOException {
        return new RawRequests(port).send("POST " + path + " HTTP/1.1", HOST + RawRequests.contentOf(type, body), body);
    }
}
