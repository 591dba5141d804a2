package campcloth.door;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.AccountKeeping;
import campcloth.access.AccountName;
import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.Role;
import campcloth.journey.Browsing;
import campcloth.journey.HostedAccounts;
import campcloth.journey.HostedService;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import org.springframework.security.web.csrf.CsrfFilter;

/** What somebody may try at the door who means no good. */
@HostedService
class HostileDoorTest {

    private static final String ANY_KEY = "AAAAAAAAAAAAAAAAAAAAAA";
    private static final int TWO_MIB = 2 << 20;

    @LocalServerPort
    private int port;

    @Autowired
    private HostedAccounts known;

    @Autowired
    private AccountKeeping keeping;

    @Autowired
    private Askers askers;

    @Autowired
    private SecurityFilterChain chain;

    @Autowired
    private JdbcTemplate sql;

    @ParameterizedTest
    @ValueSource(strings = {"a\u0000b", "\u0000", "\ud83e\udea1", "x' or 1=1 --"})
    void whatCanBeNoNameIsAWrongOne(String name) {
        HttpResponse<String> answer = new Browsing(port).login(name, "whatever it may be");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("do not belong together");
    }

    @Test
    void aOneTimePasswordReadsNothingWithALink() {
        String name = "n" + UUID.randomUUID().toString().substring(0, 20);
        AccountKeeping.Handed handed =
                askers.as(Asker.LOCAL, () -> keeping.make(new AccountName(name), Set.of(Role.MAKER)));
        Browsing browser = new Browsing(port);
        assertThat(browser.login(name, handed.oneTimePassword()).statusCode()).isEqualTo(302);
        for (String path : List.of("/cloths/linen-plain-185", "/cloths/linen-plain-185/swatches")) {
            HttpResponse<String> led = browser.get(path + "?key=" + ANY_KEY);
            assertThat(led.headers().firstValue("Location"))
                    .as(path)
                    .hasValueSatisfying(to -> assertThat(to).endsWith("/account/password"));
        }
        assertThat(browser.get("/api/cloths/linen-plain-185?key=" + ANY_KEY).statusCode())
                .isEqualTo(403);
    }

    @Test
    void aFileOfAStrangerIsNotReadAndLeadsToTheLogin() {
        HttpResponse<String> answer = Cookies.send(file("/cloths/import", TWO_MIB));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location")).hasValue("/login");
    }

    @Test
    void aLargeFormThatIsRefusedSaysWhyOnAPage() {
        Browsing browser = Browsing.as(port, known.account(Role.KEEPER).name().text());
        String session = browser.session().orElseThrow().getValue();
        HttpResponse<String> answer =
                Cookies.send(file("/cloths/import", TWO_MIB).header("Cookie", "SESSION=" + session));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(403);
        assertThat(answer.body()).contains("<h1", "Open the page again");
    }

    @Test
    void whetherItComesTooOftenIsAskedBeforeAnythingIsReadOrBegun() {
        List<Class<?>> order =
                chain.getFilters().stream().<Class<?>>map(Object::getClass).toList();
        assertThat(order)
                .containsSubsequence(List.of(
                        BearerFilter.class,
                        LimitFilter.class,
                        Readable.class,
                        CsrfFilter.class,
                        UsernamePasswordAuthenticationFilter.class));
    }

    @ParameterizedTest
    @CsvSource({
        "/api/cloths/linen-plain-185, 200",
        "/api/export, 200",
        "/api/cloths/none, 404",
        "/cloths, 200",
        "/account, 200"
    })
    void noCacheBetweenKeepsWhatIsAnsweredToOneForAnother(String path, int status) {
        HttpResponse<String> answer = Browsing.as(port, HostedAccounts.FIRST).get(path);
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(String.join(", ", answer.headers().allValues("Cache-Control")))
                .contains("private", "no-cache");
    }

    @Test
    void aPasswordThatIsShownOnceIsKeptNowhere() {
        HttpResponse<String> made = Cookies.send(Cookies.request(port, "/api/accounts")
                .header("Authorization", known.bearer(Role.ADMINISTRATOR))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString("{\"name\":\"n"
                        + UUID.randomUUID().toString().substring(0, 20) + "\",\"roles\":[\"MAKER\"]}")));
        assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
        assertThat(made.headers().allValues("Cache-Control")).containsExactly("no-store");
    }

    /** Somebody who keeps trying a name keeps its owner out of new browsers, and of those alone. */
    @Test
    void aNameThatIsTriedOnAndOnIsOpenToTheBrowserOfItsOwner() {
        String name = known.account("beset", Set.of(Role.MAKER)).name().text();
        Browsing owners = Browsing.as(port, name);
        Browsing another = Browsing.as(port, known.otherMaker().name().text());
        List.of(owners, another).forEach(browser -> browser.submit("/", "/logout", Map.of()));
        Browsing troublemaker = new Browsing(port);
        for (int i = 0; i < 11; i++) {
            troublemaker.login(name, "not the password at all");
        }
        waitsForAnHour(name);
        assertThat(new Browsing(port).login(name, HostedAccounts.PASSWORD).statusCode())
                .isEqualTo(429);
        assertThat(another.login(name, HostedAccounts.PASSWORD).statusCode())
                .as("known, but to another account")
                .isEqualTo(429);
        assertThat(owners.login(name, HostedAccounts.PASSWORD).statusCode()).isEqualTo(302);
        assertThat(troublemaker.login(name, HostedAccounts.PASSWORD).statusCode())
                .as("still waits")
                .isEqualTo(429);
    }

    /** The first wait of half a minute may be over before a slow machine has tried the rest. */
    private void waitsForAnHour(String name) {
        int waits = sql.update(
                "update login_wait set wait_until = wait_until + interval '1 hour'"
                        + " where name_digest = encode(sha256(convert_to(?, 'UTF8')), 'hex') and wait_until is not null",
                name);
        assertThat(waits).isEqualTo(1);
    }

    private HttpRequest.Builder file(String path, int bytes) {
        String body = "--edge\r\nContent-Disposition: form-data; name=\"file\"; filename=\"list.csv\"\r\n"
                + "Content-Type: text/csv\r\n\r\n" + "a".repeat(bytes) + "\r\n--edge--\r\n";
        return Cookies.request(port, path)
                .header("Content-Type", "multipart/form-data; boundary=edge")
                .POST(HttpRequest.BodyPublishers.ofString(body));
    }
}
