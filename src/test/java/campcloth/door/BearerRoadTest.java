package campcloth.door;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.AccessToken;
import campcloth.access.Account;
import campcloth.access.Accounts;
import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.Role;
import campcloth.access.Tokens;
import campcloth.journey.Browsing;
import campcloth.journey.HostedAccounts;
import campcloth.journey.HostedService;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** How programs come in: by a token and by nothing else where they change something. */
@HostedService
class BearerRoadTest {

    private static final String LABEL = "/api/labels";
    private static final String LABEL_BODY = "{\"text\": \"70% linen 30% polyester\"}";

    @LocalServerPort
    private int port;

    @Autowired
    private HostedAccounts known;

    @Autowired
    private Accounts accounts;

    @Autowired
    private Tokens tokens;

    @Autowired
    private Askers askers;

    @Test
    void aTokenSpeaksForItsAccount() {
        Account account = known.account("speaker", Set.of(Role.MAKER));
        String bearer = known.bearer(account);
        assertThat(tokens.of(account.id())).extracting(AccessToken::lastUsedAt).containsExactly(Optional.empty());
        assertThat(label(bearer).statusCode()).isEqualTo(200);
        assertThat(tokens.of(account.id()))
                .extracting(AccessToken::lastUsedAt)
                .singleElement()
                .satisfies(used -> assertThat(used).isPresent());
    }

    @Test
    void withoutOneItIsAskedFor() {
        HttpResponse<String> answer = Cookies.get(port, "/api/fibres");
        assertThat(answer.statusCode()).isEqualTo(401);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        assertThat(answer.headers().firstValue("WWW-Authenticate")).hasValue("Bearer realm=\"campcloth\"");
        assertThat(answer.body()).contains("urn:campcloth:problem:not-logged-in");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Bearer campcloth_0123456789012345678901234567890123456789012",
                "Bearer nonsense",
                "Bearer ",
                "Basic YWRtaW5pc3RyYXRvcjpzZXZlbiBkcnkgd2lsbG93IGJhc2tldHM="
            })
    void whatIsNoTokenIsToldSo(String shown) {
        HttpResponse<String> answer = label(shown);
        assertThat(answer.statusCode()).isEqualTo(401);
        assertThat(answer.headers().firstValue("WWW-Authenticate").orElseThrow())
                .contains("invalid_token");
    }

    @Test
    void aSessionReadsForProgramsButChangesNothing() {
        Browsing browser = Browsing.as(port, HostedAccounts.FIRST);
        String session = browser.session().orElseThrow().getValue();
        assertThat(Cookies.get(port, "/api/fibres", session).statusCode()).isEqualTo(200);
        HttpResponse<String> change = Cookies.send(Cookies.request(port, LABEL)
                .header("Cookie", "SESSION=" + session)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(LABEL_BODY)));
        assertThat(change.statusCode()).isEqualTo(401);
    }

    @Test
    void aTokenOpensNoPage() {
        HttpResponse<String> answer =
                Cookies.send(Cookies.request(port, "/cloths").header("Authorization", known.bearer(Role.MAKER)));
        assertThat(answer.statusCode()).isEqualTo(303);
    }

    @Test
    void aWrongTokenIsNotRescuedByASession() {
        String session =
                Browsing.as(port, HostedAccounts.FIRST).session().orElseThrow().getValue();
        HttpResponse<String> answer = Cookies.send(Cookies.request(port, "/api/fibres")
                .header("Cookie", "SESSION=" + session)
                .header("Authorization", "Bearer nonsense"));
        assertThat(answer.statusCode()).isEqualTo(401);
    }

    @Test
    void aTokenEndsWhenItIsRevoked() {
        Account account = known.account("revoker", Set.of(Role.MAKER));
        String bearer = known.bearer(account);
        assertThat(label(bearer).statusCode()).isEqualTo(200);
        AccessToken token = tokens.of(account.id()).get(0);
        assertThat(tokens.revoke(known.otherMaker().id(), token.id().toString()))
                .isFalse();
        assertThat(tokens.revoke(account.id(), token.id().toString())).isTrue();
        assertThat(label(bearer).statusCode()).isEqualTo(401);
    }

    @Test
    void aTokenEndsWithItsAccount() {
        Account account = known.account("leaver", Set.of(Role.MAKER));
        String bearer = known.bearer(account);
        Browsing browser = Browsing.as(port, "leaver");
        assertThat(browser.get("/cloths").statusCode()).isEqualTo(200);
        askers.as(Asker.LOCAL, () -> accounts.change(account.id(), account.version(), account.roles(), true));
        assertThat(label(bearer).statusCode()).isEqualTo(401);
        assertThat(browser.get("/cloths").statusCode()).isEqualTo(303);
        assertThat(new Browsing(port).login("leaver", HostedAccounts.PASSWORD).statusCode())
                .isEqualTo(422);
    }

    @Test
    void aTokenThatWasMadeOnThePageWorksAndIsShownOnce() {
        Account account = known.account("token-maker", Set.of(Role.MAKER));
        Browsing browser = Browsing.as(port, "token-maker");
        HttpResponse<String> made =
                browser.submit("/account", "/account/tokens", Map.of("name", "a script", "days", "30"));
        assertThat(made.statusCode()).as(made.body()).isEqualTo(200);
        assertThat(made.headers().firstValue("Cache-Control")).hasValue("no-store");
        String secret = made.body().replaceAll("(?s).*<code id=\"secret\">(campcloth_[^<]*)</code>.*", "$1");
        assertThat(label("Bearer " + secret).statusCode()).isEqualTo(200);
        assertThat(browser.get("/account").body()).contains("a script").doesNotContain(secret);
        AccessToken token = tokens.of(account.id()).get(0);
        assertThat(Duration.between(token.madeAt(), token.expiresAt())).isEqualTo(Duration.ofDays(30));
        browser.submit("/account", "/account/tokens/" + token.id() + "/revoke", Map.of());
        assertThat(label("Bearer " + secret).statusCode()).isEqualTo(401);
    }

    @ParameterizedTest
    @CsvSource({"'', 30", "x, 0", "x, 367", "x, many"})
    void aTokenHasANameAndAnEnd(String name, String days) {
        HttpResponse<String> answer = Browsing.as(port, HostedAccounts.FIRST)
                .submit("/account", "/account/tokens", Map.of("name", name, "days", days));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("id=\"errors\"");
    }

    @ParameterizedTest
    @CsvSource({
        "MAKER, GET, /accounts, 403",
        "KEEPER, GET, /accounts, 403",
        "ADMINISTRATOR, GET, /accounts, 200",
        "MAKER, GET, /audit, 403",
        "ADMINISTRATOR, GET, /audit, 200",
        "MAKER, GET, /cloths/import, 403",
        "ADMINISTRATOR, GET, /cloths/import, 403",
        "KEEPER, GET, /cloths/import, 200",
        "MARSHAL, GET, /events, 200"
    })
    void pagesForSomeRolesAreForThemAlone(Role role, String method, String path, int status) {
        assertThat(Browsing.as(port, known.account(role).name().text())
                        .get(path)
                        .statusCode())
                .isEqualTo(status);
    }

    @ParameterizedTest
    @CsvSource({"MAKER, 403", "MARSHAL, 403", "ADMINISTRATOR, 403", "KEEPER, 400"})
    void listsAreTheKeepers(Role role, int status) {
        HttpResponse<String> answer = Cookies.send(Cookies.request(port, "/api/cloths/import")
                .header("Authorization", known.bearer(role))
                .header("Content-Type", "text/csv")
                .POST(HttpRequest.BodyPublishers.ofString("name;fibres\n")));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
    }

    private HttpResponse<String> label(String authorization) {
        return Cookies.send(Cookies.request(port, LABEL)
                .header("Authorization", authorization)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(LABEL_BODY)));
    }
}
