package campcloth.door;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.CampclothApplication;
import campcloth.access.Account;
import campcloth.access.Accounts;
import campcloth.access.Accounts.Proof;
import campcloth.access.Role;
import campcloth.journey.Browsing;
import campcloth.store.postgres.PostgresForTests;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.security.oauth2.client.web.OAuth2AuthorizationRequestRedirectFilter;
import org.springframework.security.web.SecurityFilterChain;

/** Logging in through a provider of OpenID Connect, one of a few lines on this machine. */
class ProviderRoadTest {

    private static SmallIssuer issuer;
    private static ConfigurableApplicationContext service;
    private static Accounts accounts;
    private static int port;

    @BeforeAll
    static void start() throws Exception {
        PostgresForTests.Database database = PostgresForTests.fresh();
        issuer = new SmallIssuer();
        service = SpringApplication.run(
                CampclothApplication.class,
                "--campcloth.mode=hosted",
                "--campcloth.demo=false",
                "--campcloth.limits.logins-per-minute=1000",
                "--server.port=0",
                "--spring.datasource.url=" + database.url(),
                "--spring.datasource.username=" + database.user(),
                "--spring.datasource.password=" + database.password(),
                "--campcloth.oidc-issuer=" + issuer.address(),
                "--campcloth.oidc-client-id=" + SmallIssuer.CLIENT,
                "--campcloth.oidc-client-secret=secret",
                "--campcloth.oidc-admins=reeve@wendlow.example, subject-7");
        accounts = service.getBean(Accounts.class);
        port = service.getEnvironment().getRequiredProperty("local.server.port", Integer.class);
    }

    @AfterAll
    static void end() {
        service.close();
        issuer.close();
    }

    @Test
    void whoComesForTheFirstTimeBecomesAMaker() {
        issuer.person = Map.of("sub", "subject-1", "preferred_username", "nora w\u00e9aver!");
        Browsing browser = new Browsing(port);
        assertThat(browser.get("/login").body()).contains("/oauth2/authorization/oidc");
        assertThat(path(loggedIn(browser))).isEqualTo("/");
        assertThat(browser.get("/account").body())
                .contains("norawaver", "another service")
                .doesNotContain("/account/password");
        Account account = account("subject-1").orElseThrow();
        assertThat(account.roles()).containsExactly(Role.MAKER);

        loggedIn(new Browsing(port));
        assertThat(accounts.all().stream().filter(one -> one.name().text().startsWith("norawaver")))
                .hasSize(1);
        issuer.person = Map.of("sub", "subject-2", "preferred_username", "NoraWaver");
        loggedIn(new Browsing(port));
        assertThat(account("subject-2").orElseThrow().name().text()).isEqualTo("NoraWaver-2");
    }

    @Test
    void whoIsNamedKeepsTheAccounts() {
        issuer.person = Map.of("sub", "subject-7");
        Browsing browser = new Browsing(port);
        loggedIn(browser);
        assertThat(browser.get("/accounts").statusCode()).isEqualTo(200);
        issuer.person = Map.of("sub", "subject-8", "email", "Reeve@wendlow.example", "email_verified", true);
        loggedIn(new Browsing(port));
        assertThat(account("subject-8").orElseThrow().roles()).contains(Role.ADMINISTRATOR);
    }

    @Test
    void anAddressOfMailThatNobodyTriedMakesNobodyAnAdministrator() {
        issuer.person = Map.of("sub", "subject-9", "email", "reeve@wendlow.example", "email_verified", false);
        loggedIn(new Browsing(port));
        assertThat(account("subject-9").orElseThrow().roles()).containsExactly(Role.MAKER);
    }

    @Test
    void aSubjectInOtherLettersIsSomebodyElse() {
        issuer.person = Map.of("sub", "SUBJECT-7");
        loggedIn(new Browsing(port));
        assertThat(account("SUBJECT-7").orElseThrow().roles()).containsExactly(Role.MAKER);
    }

    @Test
    void theWayThereCarriesWhatTheWayBackIsHeldTo() {
        HttpResponse<String> there = new Browsing(port).get("/oauth2/authorization/oidc");
        assertThat(there.headers().firstValue("Location").orElseThrow())
                .contains(
                        "response_type=code", "&state=", "&nonce=", "&code_challenge=", "&code_challenge_method=S256");
    }

    @Test
    void anIdentityForAnotherLoginIsNone() {
        issuer.person = Map.of("sub", "subject-12", "nonce", "of another login");
        assertThat(path(loggedIn(new Browsing(port)))).isEqualTo("/login?failed");
        assertThat(account("subject-12")).isEmpty();
    }

    @Test
    void anAnswerToSomebodyElsesLoginIsNone() {
        issuer.person = Map.of("sub", "subject-13");
        HttpResponse<String> there = new Browsing(port).get("/oauth2/authorization/oidc");
        HttpResponse<String> at =
                Cookies.elsewhere(there.headers().firstValue("Location").orElseThrow());
        Browsing another = new Browsing(port);
        another.get("/oauth2/authorization/oidc");
        assertThat(path(another.get(path(at)))).isEqualTo("/login?failed");
        assertThat(account("subject-13")).isEmpty();
    }

    @Test
    void aSessionIsNotTheOneThatWasThereBeforeTheLogin() {
        issuer.person = Map.of("sub", "subject-14");
        Browsing browser = new Browsing(port);
        browser.get("/oauth2/authorization/oidc");
        String before = browser.session().orElseThrow().getValue();
        loggedIn(browser);
        assertThat(browser.session().orElseThrow().getValue()).isNotEqualTo(before);
    }

    @Test
    void howOftenALoginBeginsIsCountedBeforeItBegins() {
        List<Class<?>> order = service.getBean(SecurityFilterChain.class).getFilters().stream()
                .<Class<?>>map(Object::getClass)
                .toList();
        assertThat(order)
                .containsSubsequence(List.of(LimitFilter.class, OAuth2AuthorizationRequestRedirectFilter.class));
    }

    @Test
    void whoseAccountIsClosedStaysOutside() {
        issuer.person = Map.of("sub", "subject-10");
        loggedIn(new Browsing(port));
        Account account = account("subject-10").orElseThrow();
        accounts.change(account.id(), account.version(), account.roles(), true);
        Browsing browser = new Browsing(port);
        assertThat(path(loggedIn(browser))).isEqualTo("/login?failed");
        assertThat(browser.get("/cloths").statusCode()).isEqualTo(303);
    }

    @Test
    void anIdentityThatTheProviderDidNotSignIsNone() {
        issuer.person = Map.of("sub", "subject-11");
        issuer.forges = true;
        try {
            assertThat(path(loggedIn(new Browsing(port)))).isEqualTo("/login?failed");
        } finally {
            issuer.forges = false;
        }
        assertThat(account("subject-11")).isEmpty();
    }

    @Test
    void anAnswerThatNobodyAskedForIsNone() {
        HttpResponse<String> answer = new Browsing(port).get("/login/oauth2/code/oidc?code=x&state=y");
        assertThat(path(answer)).isEqualTo("/login?failed");
    }

    /** Goes to the provider and back; where it is led afterwards. */
    private static HttpResponse<String> loggedIn(Browsing browser) {
        HttpResponse<String> there = browser.get("/oauth2/authorization/oidc");
        assertThat(there.statusCode()).as(there.body()).isEqualTo(302);
        HttpResponse<String> at =
                Cookies.elsewhere(there.headers().firstValue("Location").orElseThrow());
        HttpResponse<String> back = browser.get(path(at));
        return path(back).equals("/login") ? browser.get("/login") : back;
    }

    private static Optional<Account> account(String subject) {
        return accounts.bySubject(new Proof.Vouched(issuer.address(), subject));
    }

    private static String path(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElseThrow().replaceFirst("^http://[^/]*", "");
    }
}
