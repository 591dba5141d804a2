package campcloth.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.concurrent.atomic.AtomicReference;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.autoconfigure.AutoConfiguration;
import org.springframework.boot.autoconfigure.AutoConfigurations;
import org.springframework.boot.context.annotation.ImportCandidates;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.boot.test.context.runner.ApplicationContextRunner;

class OwnPostgresConfigurationTest {

    private TestFolder folder;
    private ApplicationContextRunner application;

    @BeforeEach
    void make() throws IOException {
        folder = TestFolder.fresh();
        application = new ApplicationContextRunner()
                .withConfiguration(
                        AutoConfigurations.of(OwnPostgresConfiguration.class, DataSourceAutoConfiguration.class))
                .withPropertyValues("campcloth.data-dir=" + folder.data());
    }

    @AfterEach
    void remove() throws IOException {
        folder.close();
    }

    @Test
    void thePoolFollowsTheOwnServerAndTheServerEndsWithTheApplication() {
        AtomicReference<String> url = new AtomicReference<>("");
        application.run(context -> {
            try (var connection = context.getBean(DataSource.class).getConnection()) {
                url.set(connection.getMetaData().getURL());
                assertThat(connection.getMetaData().getUserName()).isEqualTo("campcloth");
            }
            assertThat(context.getBean(HikariDataSource.class).isRunning()).isTrue();
        });
        assertThat(url.get()).startsWith("jdbc:postgresql://127.0.0.1:").contains("/campcloth");
        assertThatThrownBy(() -> DriverManager.getConnection(url.get(), "campcloth", ""))
                .isInstanceOf(SQLException.class)
                .hasMessageContaining("refused");
        assertThat(folder.data().resolve("postgres-18/postmaster.pid")).doesNotExist();
    }

    @Test
    void anAddressThatIsGivenSwitchesItOff() {
        application
                .withPropertyValues("spring.datasource.url=jdbc:postgresql://db.example/campcloth")
                .run(context -> assertThat(context).hasNotFailed().doesNotHaveBean(OwnPostgres.class));
        assertThat(folder.data()).doesNotExist();
    }

    @Test
    void connectionDetailsOfOthersSwitchItOff() {
        application
                .withBean(JdbcConnectionDetails.class, () -> new JdbcConnectionDetails() {
                    @Override
                    public String getUsername() {
                        return "other";
                    }

                    @Override
                    public String getPassword() {
                        return "other";
                    }

                    @Override
                    public String getJdbcUrl() {
                        return "jdbc:postgresql://db.example/other";
                    }
                })
                .run(context -> assertThat(context).hasNotFailed().doesNotHaveBean(OwnPostgres.class));
        assertThat(folder.data()).doesNotExist();
    }

    @Test
    void aRefusalEndsTheStartOfTheApplication() throws IOException {
        Files.createDirectories(folder.data().resolve("photographs"));
        application.run(
                context -> assertThat(context).getFailure().rootCause().isInstanceOf(DatabaseUnavailable.class));
    }

    @Test
    void theApplicationFindsIt() {
        assertThat(ImportCandidates.load(AutoConfiguration.class, getClass().getClassLoader()))
                .contains(OwnPostgresConfiguration.class.getName());
    }
}
