package campcloth.door;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.journey.WholeService;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

/** A service for one person has no door to be seen. */
@WholeService
class LocalDoorTest {

    @LocalServerPort
    private int port;

    @Autowired
    private ApplicationContext service;

    @ParameterizedTest
    @CsvSource({
        "/login, text/html",
        "/account, text/html",
        "/account/password, text/html",
        "/accounts, text/html",
        "/audit, text/html",
        "/refused, text/html",
        "/api/accounts, application/problem+json",
        "/api/tokens, application/problem+json",
        "/api/audit, application/problem+json"
    })
    void whatIsAboutAccountsIsNotThere(String path, String type) {
        HttpResponse<String> answer = Cookies.get(port, path);
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.headers().firstValue("Content-Type").orElseThrow()).startsWith(type);
    }

    @Test
    void nothingIsRememberedInTheBrowser() {
        HttpResponse<String> answer = Cookies.get(port, "/events/new");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().allValues("Set-Cookie")).isEmpty();
        assertThat(answer.body()).doesNotContain("_csrf", "/login", "/logout");
    }

    @Test
    void noFilterOfTheFrameworkIsThere() {
        assertThat(service.containsBean("springSecurityFilterChain")).isFalse();
        assertThat(service.containsBean("sessionRepository")).isFalse();
    }
}
