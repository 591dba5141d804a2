package campcloth.store.postgres;

import java.time.Duration;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.flyway.autoconfigure.FlywayConfigurationCustomizer;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * The first thing that asks the database anything: awaits it, then migrates on connections outside the pool, since the bounds
 * that requests have would cut a long migration short.
 */
@Configuration
class MigrationRoad {

    @Bean
    FlywayConfigurationCustomizer migrationsBesideThePool(
            JdbcConnectionDetails details, @Value("${campcloth.database.wait:0}") long waitSeconds) {
        return flyway -> {
            String url = details.getJdbcUrl();
            new AwaitedDatabase(url, details.getUsername(), details.getPassword())
                    .await(Duration.ofSeconds(waitSeconds));
            flyway.dataSource(url, details.getUsername(), details.getPassword());
        };
    }
}
