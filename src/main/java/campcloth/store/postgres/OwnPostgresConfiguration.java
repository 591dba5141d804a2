package campcloth.store.postgres;

import campcloth.outage.Storage;
import javax.sql.DataSource;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.AutoConfiguration;
import org.springframework.boot.autoconfigure.condition.ConditionMessage;
import org.springframework.boot.autoconfigure.condition.ConditionOutcome;
import org.springframework.boot.autoconfigure.condition.ConditionalOnMissingBean;
import org.springframework.boot.autoconfigure.condition.SpringBootCondition;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.boot.jdbc.autoconfigure.JndiDataSourceAutoConfiguration;
import org.springframework.context.ApplicationListener;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ConditionContext;
import org.springframework.context.annotation.Conditional;
import org.springframework.core.env.Environment;
import org.springframework.core.type.AnnotatedTypeMetadata;
import org.springframework.util.StringUtils;

/**
 * Gives the application its own PostgreSQL where nobody gave it another: no {@code spring.datasource.url}, no connection
 * details, no data source. The pool, the migrations and the entities follow the connection details, and since the pool
 * needs them, Spring stops the server only after the pool.
 */
@AutoConfiguration(before = DataSourceAutoConfiguration.class, after = JndiDataSourceAutoConfiguration.class)
@Conditional(OwnPostgresConfiguration.NoDatabaseGiven.class)
@ConditionalOnMissingBean({JdbcConnectionDetails.class, DataSource.class})
class OwnPostgresConfiguration {

    @Bean(destroyMethod = "close")
    OwnPostgres ownPostgres(Environment environment) {
        return OwnPostgres.start(
                environment.getProperty("campcloth.data-dir", ""),
                environment.getProperty("campcloth.postgres-port", Integer.class, 0));
    }

    @Bean
    Storage ownStorage(OwnPostgres postgres) {
        return postgres.storage();
    }

    /** Only once it has started: a start that loads a newer catalogue is not to be stopped half way. */
    @Bean
    ApplicationListener<ApplicationReadyEvent> diskReserve(
            OwnPostgres postgres, @Value("${campcloth.disk-reserve-mb:64}") int reserveMb) {
        return ready -> postgres.keepFree((long) reserveMb << 20);
    }

    @Bean
    JdbcConnectionDetails ownPostgresConnection(OwnPostgres postgres) {
        return new OwnConnection(postgres);
    }

    private record OwnConnection(OwnPostgres postgres) implements JdbcConnectionDetails {

        @Override
        public String getUsername() {
            return Settings.USER;
        }

        @Override
        public String getPassword() {
            return postgres.password();
        }

        @Override
        public String getJdbcUrl() {
            return postgres.url();
        }
    }

    /** An address that is set but empty counts as not given. */
    static class NoDatabaseGiven extends SpringBootCondition {

        @Override
        public ConditionOutcome getMatchOutcome(ConditionContext context, AnnotatedTypeMetadata metadata) {
            boolean given = StringUtils.hasText(context.getEnvironment().getProperty("spring.datasource.url"));
            return new ConditionOutcome(
                    !given,
                    ConditionMessage.forCondition("Own PostgreSQL")
                            .because(given ? "spring.datasource.url is set" : "no database is given"));
        }
    }
}
