package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import campcloth.access.Role;
import campcloth.outage.CutLine;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ContextConfiguration;

/** With accounts, sessions and tokens are looked up before anything else: their absence is told like any other. */
@SpringBootTest(
        webEnvironment = WebEnvironment.RANDOM_PORT,
        properties = {
            "campcloth.mode=hosted",
            "campcloth.admin-name=" + HostedAccounts.FIRST,
            "campcloth.admin-password=" + HostedAccounts.PASSWORD
        })
@ContextConfiguration(initializers = BehindALine.class)
@Import(HostedAccounts.class)
@DirtiesContext
@Timeout(180)
class HostedAwayTest {

    @Autowired
    private HostedAccounts accounts;

    @Autowired
    private CutLine line;

    @LocalServerPort
    private int port;

    private final HttpClient http = HttpClient.newHttpClient();

    @AfterEach
    void mend() {
        line.mend();
    }

    @Test
    void whoHasATokenOrASessionIsToldThatTheDatabaseIsAway() throws Exception {
        String bearer = accounts.bearer(Role.KEEPER);
        assertThat(get("/api/cloths?size=1", "Authorization", bearer).statusCode())
                .isEqualTo(200);
        String session = get("/login", "Accept", "text/html")
                .headers()
                .firstValue("Set-Cookie")
                .orElseThrow()
                .split(";")[0];
        line.cut();
        HttpResponse<String> program = get("/api/cloths?size=1", "Authorization", bearer);
        assertThat(program.statusCode()).as(program.body()).isEqualTo(503);
        assertThat(program.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        assertThat(program.headers().firstValue("Retry-After")).isPresent();
        HttpResponse<String> page = get("/cloths", "Cookie", session);
        assertThat(page.statusCode()).as(page.body()).isEqualTo(503);
        assertThat(page.headers().firstValue("Content-Type").orElse("")).startsWith("text/html");
        assertThat(page.body()).contains("The database does not answer");
        line.mend();
        await().atMost(1, TimeUnit.MINUTES)
                .until(() -> get("/api/cloths?size=1", "Authorization", bearer).statusCode() == 200);
    }

    private HttpResponse<String> get(String path, String header, String value) throws Exception {
        return http.send(
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                        .header(header, value)
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }
}
