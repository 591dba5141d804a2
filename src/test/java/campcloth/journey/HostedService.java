package campcloth.journey;

import campcloth.store.postgres.OnRealPostgres;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.context.annotation.Import;

/**
 * The whole service for many, on a port of its own over a real PostgreSQL, started once for all tests that carry this. Accounts of every role
 * come from {@link HostedAccounts}, things that they keep from {@link KeptThings}, which such a test has injected; nobody is held up by limits, nor by a search for a short layout.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(
        webEnvironment = WebEnvironment.RANDOM_PORT,
        properties = {
            "campcloth.mode=hosted",
            "campcloth.admin-name=" + HostedAccounts.FIRST,
            "campcloth.admin-password=" + HostedAccounts.PASSWORD,
            "campcloth.limits.per-minute=1000000",
            "campcloth.limits.costly-per-minute=1000000",
            "campcloth.limits.logins-per-minute=1000000"
        })
@OnRealPostgres
@Import({HostedAccounts.class, KeptThings.class, QuickPlans.class})
public @interface HostedService {}
