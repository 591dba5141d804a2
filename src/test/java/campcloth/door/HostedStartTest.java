package campcloth.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.CampclothApplication;
import campcloth.access.Account;
import campcloth.access.Accounts;
import campcloth.access.Inheritance;
import campcloth.access.Role;
import campcloth.journey.Browsing;
import campcloth.journey.HostedAccounts;
import campcloth.store.postgres.PostgresForTests;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.support.GenericApplicationContext;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/** Starts of a hosted service on one database, one after the other and beside each other. */
@ExtendWith(OutputCaptureExtension.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class HostedStartTest {

    private static final PostgresForTests.Database DATABASE = PostgresForTests.fresh();
    private static final List<UUID> HEIRS = new ArrayList<>();
    private static final int LOGINS_A_MINUTE = 3;
    private static final Duration ONE_LOGIN_EACH = Duration.ofMinutes(1).dividedBy(LOGINS_A_MINUTE);

    @Test
    @Order(1)
    void whereNobodyCouldLogInItDoesNotStart(CapturedOutput output) {
        assertThatThrownBy(() -> start()).hasStackTraceContaining("NotStarted");
        assertThat(output.getAll())
                .contains("APPLICATION FAILED TO START", "there is no account yet", "CAMPCLOTH_ADMIN_PASSWORD");
    }

    @Test
    @Order(2)
    void aPasswordThatMayNotBeOneIsToldSo(CapturedOutput output) {
        assertThatThrownBy(() -> start("--campcloth.admin-password=too short")).hasStackTraceContaining("NotStarted");
        assertThat(output.getAll()).contains("15 characters").doesNotContain("too short");
    }

    @Test
    @Order(3)
    void theFirstStartMakesTheAdministratorAndLaterOnesNobody() {
        Account first;
        try (ConfigurableApplicationContext service =
                start("--campcloth.admin-name=Reeve", "--campcloth.admin-password=" + HostedAccounts.PASSWORD)) {
            first = accounts(service).get(0);
            assertThat(accounts(service)).hasSize(1);
            assertThat(first.name().text()).isEqualTo("Reeve");
            assertThat(first.roles()).containsExactlyInAnyOrder(Role.values());
            assertThat(HEIRS).as("what belonged to nobody").containsExactly(first.id());
        }
        try (ConfigurableApplicationContext again =
                start("--campcloth.admin-name=somebody-else", "--campcloth.admin-password=another long enough one")) {
            assertThat(accounts(again)).extracting(Account::id).containsExactly(first.id());
            assertThat(HEIRS).hasSize(1);
            Browsing.as(port(again), "reeve");
        }
    }

    @Test
    @Order(4)
    void sessionsHoldOverInstancesAndStarts() {
        String session;
        try (ConfigurableApplicationContext one = start()) {
            Browsing browser = Browsing.as(port(one), "reeve");
            session = browser.session().orElseThrow().getValue();
            try (ConfigurableApplicationContext other =
                    start("--campcloth.limits.logins-per-minute=" + LOGINS_A_MINUTE)) {
                assertThat(Cookies.get(port(other), "/cloths", session).statusCode())
                        .isEqualTo(200);
                loginsAreLimited(port(other));
            }
            assertThat(Cookies.get(port(one), "/cloths", session).statusCode()).isEqualTo(200);
        }
        try (ConfigurableApplicationContext later = start()) {
            assertThat(Cookies.get(port(later), "/cloths", session).statusCode())
                    .isEqualTo(200);
            assertThat(Cookies.get(port(later), "/cloths", "made-up").statusCode())
                    .isEqualTo(303);
        }
    }

    /** Three a minute: three in a row, then one each 20 s. So however long each takes, one comes too soon. */
    private static void loginsAreLimited(int port) {
        long begun = System.nanoTime();
        for (int i = 0; i < LOGINS_A_MINUTE; i++) {
            assertThat(new Browsing(port).login("nobody-" + i, "x").statusCode())
                    .isEqualTo(422);
        }
        int more = 0;
        HttpResponse<String> answer = new Browsing(port).login("reeve", HostedAccounts.PASSWORD);
        while (answer.statusCode() == 302) {
            more++;
            assertThat(Duration.ofNanos(System.nanoTime() - begun))
                    .isGreaterThanOrEqualTo(ONE_LOGIN_EACH.multipliedBy(more));
            answer = new Browsing(port).login("reeve", HostedAccounts.PASSWORD);
        }
        assertThat(answer.statusCode()).isEqualTo(429);
        assertThat(Integer.parseInt(answer.headers().firstValue("Retry-After").orElseThrow()))
                .isBetween(1, (int) ONE_LOGIN_EACH.toSeconds());
        assertThat(answer.body()).contains("<h1>");
    }

    private static ConfigurableApplicationContext start(String... settings) {
        String[] all = Stream.concat(
                        Stream.of(
                                "--campcloth.mode=hosted",
                                "--campcloth.demo=false",
                                "--server.port=0",
                                "--spring.datasource.url=" + DATABASE.url(),
                                "--spring.datasource.username=" + DATABASE.user(),
                                "--spring.datasource.password=" + DATABASE.password()),
                        Stream.of(settings))
                .toArray(String[]::new);
        return new SpringApplicationBuilder(CampclothApplication.class)
                .initializers(HostedStartTest::withAnHeirloom)
                .run(all);
    }

    private static void withAnHeirloom(ConfigurableApplicationContext service) {
        ((GenericApplicationContext) service).registerBean("heirloom", Inheritance.class, () -> account -> {
            assertThat(TransactionSynchronizationManager.isActualTransactionActive())
                    .isTrue();
            HEIRS.add(account);
        });
    }

    private static List<Account> accounts(ConfigurableApplicationContext service) {
        return service.getBean(Accounts.class).all();
    }

    private static int port(ConfigurableApplicationContext service) {
        return service.getEnvironment().getRequiredProperty("local.server.port", Integer.class);
    }
}
