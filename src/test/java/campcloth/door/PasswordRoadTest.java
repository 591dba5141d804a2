package campcloth.door;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Account;
import campcloth.access.Accounts;
import campcloth.access.PasswordHashes;
import campcloth.access.Role;
import campcloth.journey.Browsing;
import campcloth.journey.HostedAccounts;
import campcloth.journey.HostedService;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Accounts made by an administrator, one-time passwords, and passwords that are changed. */
@HostedService
class PasswordRoadTest {

    private static final String NEXT = "nine wet alder hurdles";

    @LocalServerPort
    private int port;

    @Autowired
    private HostedAccounts known;

    @Autowired
    private Accounts accounts;

    @Autowired
    private PasswordHashes hashes;

    @Test
    void aNewAccountChoosesItsOwnPasswordBeforeAnythingElse() {
        Browsing administrator =
                Browsing.as(port, known.account(Role.ADMINISTRATOR).name().text());
        HttpResponse<String> made =
                administrator.submit("/accounts", "/accounts", Map.of("name", "Newcomer", "maker", "true"));
        assertThat(made.statusCode()).as(made.body()).isEqualTo(200);
        assertThat(made.headers().firstValue("Cache-Control")).hasValue("no-store");
        String oneTime = made.body().replaceAll("(?s).*<code id=\"secret\">([^<]*)</code>.*", "$1");

        Browsing newcomer = new Browsing(port);
        assertThat(newcomer.login("newcomer", oneTime).statusCode()).isEqualTo(302);
        HttpResponse<String> led = newcomer.get("/cloths");
        assertThat(led.statusCode()).isEqualTo(302);
        assertThat(led.headers().firstValue("Location").orElseThrow()).endsWith("/account/password");
        assertThat(newcomer.get("/account").statusCode()).isEqualTo(302);

        HttpResponse<String> changed = change(newcomer, oneTime, NEXT, NEXT);
        assertThat(changed.headers().firstValue("Location").orElseThrow()).endsWith("/login?changed");
        assertThat(newcomer.get("/cloths").statusCode())
                .as("the session is over")
                .isEqualTo(303);
        assertThat(newcomer.login("NEWCOMER", oneTime).statusCode()).isEqualTo(422);
        assertThat(newcomer.login("NEWCOMER", NEXT).statusCode()).isEqualTo(302);
        assertThat(newcomer.get("/cloths").statusCode()).isEqualTo(200);
    }

    @ParameterizedTest
    @CsvSource({
        "seven dry willow baskets, too short, too short, 15 characters",
        "seven dry willow baskets, passwordpassword, passwordpassword, tried first",
        "seven dry willow baskets, nine wet alder hurdles, nine wet alder hurdle, differ",
        "not it at all, nine wet alder hurdles, nine wet alder hurdles, not the password of your account"
    })
    void whatCannotBecomeThePasswordIsSaidAtItsField(String now, String next, String again, String said) {
        known.account("chooser", Set.of(Role.MAKER));
        HttpResponse<String> answer = change(Browsing.as(port, "chooser"), now, next, again);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(said).doesNotContain(next, "value=\"" + now);
    }

    @Test
    void aResetEndsSessionsAndTokens() {
        Account account = known.account("forgetful", Set.of(Role.MAKER));
        String bearer = known.bearer(account);
        Browsing browser = Browsing.as(port, "forgetful");
        String page = "/accounts/" + account.id();
        HttpResponse<String> handed =
                Browsing.as(port, HostedAccounts.FIRST).submit(page, page + "/password", Map.of());
        assertThat(handed.body()).contains("<code id=\"secret\">");
        assertThat(browser.get("/cloths").statusCode()).isEqualTo(303);
        assertThat(Cookies.send(Cookies.request(port, "/api/fibres").header("Authorization", bearer))
                        .statusCode())
                .isEqualTo(401);
    }

    @Test
    void rolesAreChangedAndSomebodyElsesChangeIsSeen() {
        Browsing administrator = Browsing.as(port, HostedAccounts.FIRST);
        Account changing = known.account("changing", Set.of(Role.MAKER));
        String page = "/accounts/" + changing.id();
        assertThat(administrator
                        .submit(page, page, Map.of("version", "0", "maker", "true", "marshal", "true"))
                        .statusCode())
                .isEqualTo(302);
        assertThat(accounts.byId(changing.id()).orElseThrow().roles())
                .containsExactlyInAnyOrder(Role.MAKER, Role.MARSHAL);
        HttpResponse<String> stale = administrator.submit(page, page, Map.of("version", "0", "maker", "true"));
        assertThat(stale.statusCode()).isEqualTo(422);
        assertThat(stale.body()).contains("in between");
        HttpResponse<String> none = administrator.submit(page, page, Map.of("version", "1"));
        assertThat(none.statusCode()).isEqualTo(422);
        assertThat(none.body()).contains("Tick one at least");
    }

    @Test
    void aHashThatWasMadeWithLessWorkIsMadeAnewAtTheLogin() {
        Account account = known.account("old-timer", Set.of(Role.MAKER));
        String weak = new Argon2Hashes(1024, 1).hash(HostedAccounts.PASSWORD);
        accounts.rehash(account.id(), weak);
        assertThat(hashes.isOutdated(weak)).isTrue();
        assertThat(new Browsing(port)
                        .login("old-timer", "not the password at all")
                        .statusCode())
                .isEqualTo(422);
        assertThat(accounts.passwordHash(account.id())).hasValue(weak);
        Browsing.as(port, "old-timer");
        String now = accounts.passwordHash(account.id()).orElseThrow();
        assertThat(now).startsWith("{argon2}$argon2id$v=19$m=19456,t=2,p=1$");
        assertThat(hashes.isOutdated(now)).isFalse();
        Browsing.as(port, "old-timer");
    }

    private static HttpResponse<String> change(Browsing browser, String now, String next, String again) {
        return browser.submit(
                "/account/password",
                "/account/password",
                Map.of("typed-now", now, "typed-next", next, "typed-again", again));
    }
}
