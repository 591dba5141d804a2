package campcloth.store.postgres;

import campcloth.store.NothingLeftAtWork;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.Map;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.MapPropertySource;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.TestExecutionListeners;

/**
 * Runs a Spring test on a real PostgreSQL, with a new database for each application context. Goes with
 * {@code @SpringBootTest} as with {@code @DataJpaTest}.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Inherited
@ContextConfiguration(initializers = OnRealPostgres.Address.class)
@TestExecutionListeners(
        listeners = NothingLeftAtWork.class,
        mergeMode = TestExecutionListeners.MergeMode.MERGE_WITH_DEFAULTS)
public @interface OnRealPostgres {

    /** Puts the address of the new database in front of all settings, and keeps test slices from replacing it. */
    class Address implements ApplicationContextInitializer<ConfigurableApplicationContext> {

        @Override
        public void initialize(ConfigurableApplicationContext context) {
            PostgresForTests.Database database = PostgresForTests.fresh();
            context.getEnvironment()
                    .getPropertySources()
                    .addLast(new MapPropertySource("no demo unless asked", Map.of("campcloth.demo", "false")));
            // Many contexts share one server, and most of them rest.
            context.getEnvironment()
                    .getPropertySources()
                    .addLast(new MapPropertySource(
                            "few connections at rest",
                            Map.of(
                                    "spring.datasource.hikari.minimum-idle", "1",
                                    "spring.datasource.hikari.idle-timeout", "10000")));
            // A machine that is busy with other tests is no database that is away.
            context.getEnvironment()
                    .getPropertySources()
                    .addFirst(new MapPropertySource(
                            "patience with the pool", Map.of("spring.datasource.hikari.connection-timeout", "60000")));
            context.getEnvironment()
                    .getPropertySources()
                    .addFirst(new MapPropertySource(
                            "real PostgreSQL",
                            Map.of(
                                    "spring.datasource.url", database.url(),
                                    "spring.datasource.username", database.user(),
                                    "spring.datasource.password", database.password(),
                                    "spring.test.database.replace", "NONE")));
        }
    }
}
