package campcloth.journey;

import campcloth.CampclothApplication;
import campcloth.store.postgres.PostgresForTests;
import java.util.ArrayList;
import java.util.List;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/** The whole program, started in this process over a database where others like it may be at work; whoever starts it closes it. */
final class ProgramHere {

    private ProgramHere() {}

    /**
     * Starts it on a free port. The server of the tests has place for few connections, so it gets few.
     *
     * @param more settings besides, as {@code name=value}
     */
    static ConfigurableApplicationContext over(PostgresForTests.Database database, String... more) {
        List<String> settings = new ArrayList<>(List.of(
                "campcloth.demo=false",
                "server.port=0",
                "spring.datasource.hikari.maximum-pool-size=4",
                "spring.datasource.hikari.minimum-idle=1",
                "spring.datasource.hikari.connection-timeout=60000",
                "spring.datasource.url=" + database.url(),
                "spring.datasource.username=" + database.user(),
                "spring.datasource.password=" + database.password()));
        settings.addAll(List.of(more));
        return new SpringApplicationBuilder(CampclothApplication.class)
                .run(settings.stream().map(one -> "--" + one).toArray(String[]::new));
    }

    static int port(ConfigurableApplicationContext program) {
        return program.getEnvironment().getRequiredProperty("local.server.port", Integer.class);
    }
}
