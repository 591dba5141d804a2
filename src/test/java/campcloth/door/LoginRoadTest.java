package campcloth.door;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Role;
import campcloth.journey.Browsing;
import campcloth.journey.HostedAccounts;
import campcloth.journey.HostedService;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The road in and out of a hosted service, as a browser takes it. */
@HostedService
class LoginRoadTest {

    @LocalServerPort
    private int port;

    @Autowired
    private HostedAccounts known;

    @ParameterizedTest
    @CsvSource({
        "/, /login",
        "/cloths, /login?back=%2Fcloths",
        "/plan/cloths?season=SUMMER&design=tunic, /login?back=%2Fplan%2Fcloths%3Fseason%3DSUMMER%26design%3Dtunic",
        "/accounts, /login?back=%2Faccounts"
    })
    void strangersAreLedToTheLogin(String asked, String led) {
        HttpResponse<String> answer = new Browsing(port).get(asked);
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location")).hasValue(led);
    }

    @ParameterizedTest
    @CsvSource({"/cloths?text=linen, /cloths?text=linen", "//elsewhere.example, /", "https://elsewhere.example, /"})
    void whoeverLogsInComesBackToThePageAskedFor(String back, String led) {
        Browsing browser = new Browsing(port);
        HttpResponse<String> in = browser.submit(
                "/login",
                "/login",
                Map.of("name", HostedAccounts.FIRST, "password", HostedAccounts.PASSWORD, "back", back));
        assertThat(in.statusCode()).isEqualTo(302);
        HttpResponse<String> on = browser.get(path(in));
        assertThat(on.statusCode()).isEqualTo(302);
        assertThat(path(on)).isEqualTo(led);
        assertThat(browser.get("/cloths").statusCode()).isEqualTo(200);
    }

    @Test
    void aSessionIsNotTheOneThatWasThereBeforeTheLogin() {
        Browsing browser = new Browsing(port);
        browser.get("/login");
        String before = browser.session().orElseThrow().getValue();
        HttpResponse<String> in = browser.login(HostedAccounts.FIRST, HostedAccounts.PASSWORD);
        assertThat(browser.session().orElseThrow().getValue()).isNotEqualTo(before);
        assertThat(in.headers().allValues("Set-Cookie"))
                .anySatisfy(cookie -> assertThat(cookie).startsWith("SESSION=").contains("HttpOnly", "SameSite=Lax"));
    }

    @Test
    void loggingOutEndsTheSessionOnTheServer() {
        Browsing browser = Browsing.as(port, HostedAccounts.FIRST);
        String session = browser.session().orElseThrow().getValue();
        assertThat(browser.submit("/", "/logout", Map.of())
                        .headers()
                        .firstValue("Location")
                        .orElseThrow())
                .endsWith("/login?out");
        assertThat(Cookies.get(port, "/cloths", session).statusCode()).isEqualTo(303);
    }

    @Test
    void loggingOutByAnAddressAloneIsNotPossible() {
        Browsing browser = Browsing.as(port, HostedAccounts.FIRST);
        assertThat(browser.get("/logout").statusCode()).isEqualTo(404);
        assertThat(browser.get("/cloths").statusCode()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/login",
                "/logout",
                "/events/new",
                "/plan/sheets",
                "/account/tokens",
                "/accounts",
                "/demo/remove"
            })
    void noFormIsTakenWithoutItsToken(String path) {
        Browsing browser = Browsing.as(port, HostedAccounts.FIRST);
        for (Optional<String> token : List.of(Optional.<String>empty(), Optional.of("made-up"))) {
            HttpResponse<String> answer = browser.post(path, Map.of("name", "x"), token);
            assertThat(answer.statusCode()).as(path).isEqualTo(403);
            assertThat(answer.body()).contains("<h1>", "Open the page again");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/events/new",
                "/cloths/new",
                "/cloths/import",
                "/demo",
                "/account",
                "/account/password",
                "/accounts",
                "/",
                "/burn-test"
            })
    void everyPageWithAFormCarriesTheToken(String page) {
        HttpResponse<String> answer = Browsing.as(port, HostedAccounts.FIRST).get(page);
        assertThat(answer.statusCode()).isEqualTo(200);
        long forms = answer.body().split("method=\"post\"", -1).length - 1;
        long tokens = answer.body().split("name=\"_csrf\"", -1).length - 1;
        long units = 1;
        assertThat(tokens).isEqualTo(forms - units).isPositive();
    }

    @Test
    void aFormWithAFileCarriesItsTokenAmongItsParts() {
        Browsing browser = Browsing.as(port, known.account(Role.KEEPER).name().text());
        String token = Browsing.csrf(browser.get("/cloths/import").body()).orElseThrow();
        String session = browser.session().orElseThrow().getValue();
        HttpResponse<String> taken = Cookies.send(withFile("_csrf", token, session));
        assertThat(taken.statusCode()).as(taken.body()).isEqualTo(302);
        assertThat(taken.headers().firstValue("Location").orElseThrow()).contains("/cloths/import/");
        assertThat(Cookies.send(withFile("_other", token, session)).statusCode())
                .isEqualTo(403);
    }

    private HttpRequest.Builder withFile(String field, String token, String session) {
        String part = "--edge\r\nContent-Disposition: form-data; name=";
        String body = part + "\"" + field + "\"\r\n\r\n" + token + "\r\n"
                + part + "\"supplier\"\r\n\r\nWendlow mill\r\n"
                + part + "\"file\"; filename=\"list.csv\"\r\nContent-Type: text/csv\r\n\r\n"
                + "name;composition;weight g/m2\nTwill;100% cotton;200\n\r\n--edge--\r\n";
        return Cookies.request(port, "/cloths/import")
                .header("Cookie", "SESSION=" + session)
                .header("Content-Type", "multipart/form-data; boundary=edge")
                .POST(HttpRequest.BodyPublishers.ofString(body));
    }

    @Test
    void theHeadSaysWhoIsLoggedIn() {
        assertThat(Browsing.as(port, known.account(Role.KEEPER).name().text())
                        .get("/cloths")
                        .body())
                .contains("the-keeper")
                .doesNotContain("href=\"/accounts\"");
        assertThat(new Browsing(port).get("/login").body())
                .contains("href=\"/login\"")
                .doesNotContain("/logout");
    }

    @ParameterizedTest
    @CsvSource({
        "mistaken, not the password at all",
        "nobody-at-all, seven dry willow baskets",
        "mistaken, 'Seven dry willow baskets'"
    })
    void aWrongNameAndAWrongPasswordAreToldAlike(String name, String password) {
        known.account("mistaken", Set.of(Role.MAKER));
        HttpResponse<String> answer = new Browsing(port).login(name, password);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("do not belong together");
    }

    @Test
    void aFormThatCannotBeReadIsToldOnAPage() {
        HttpResponse<String> answer = Cookies.post(port, "/preferences", "units=%ZZ");
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains("<h1>");
    }

    private static String path(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElseThrow().replaceFirst("^http://[^/]*", "");
    }
}
