package campcloth.journey;

import campcloth.outage.CutLine;
import campcloth.store.postgres.PostgresForTests;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.Map;
import org.springframework.beans.factory.config.ConfigurableListableBeanFactory;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.MapPropertySource;

/**
 * Puts a line that can be cut between the service and a database of its own. A test has both injected: the {@link CutLine}, and the
 * {@link PostgresForTests.Database} for whoever looks past the line.
 */
final class BehindALine implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        PostgresForTests.Database database = PostgresForTests.fresh();
        URI real = URI.create(database.url().substring("jdbc:".length()));
        CutLine line = line(real);
        ConfigurableListableBeanFactory beans = context.getBeanFactory();
        beans.registerSingleton("line", line);
        beans.registerSingleton("databaseBehindIt", database);
        context.getEnvironment()
                .getPropertySources()
                .addFirst(new MapPropertySource(
                        "behind a line",
                        Map.of(
                                "campcloth.jobs.run",
                                "false",
                                "campcloth.database.lock-timeout",
                                "1s",
                                "spring.datasource.url",
                                database.url().replace(":" + real.getPort() + "/", ":" + line.port() + "/"),
                                "spring.datasource.username",
                                database.user(),
                                "spring.datasource.password",
                                database.password(),
                                "campcloth.demo",
                                "false",
                                "spring.datasource.hikari.data-source-properties.socketTimeout",
                                "4")));
    }

    private static CutLine line(URI real) {
        try {
            return new CutLine(real::getPort);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
