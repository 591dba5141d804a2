package campcloth.store.postgres;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;

/**
 * What a child process runs: {@code READY} with the port, then {@code WROTE} for every row that was committed; or nothing more, for
 * it waits until the test ends it.
 */
final class ServingMain {

    private ServingMain() {}

    public static void main(String[] arguments) throws Exception {
        if (arguments[1].equals("spring")) {
            new SpringApplicationBuilder(OwnPostgresConfiguration.class, DataSourceAutoConfiguration.class)
                    .web(WebApplicationType.NONE)
                    .run("--campcloth.data-dir=" + arguments[0])
                    .getBean(DataSource.class)
                    .getConnection()
                    .close();
            System.out.println("READY");
            Thread.sleep(Long.MAX_VALUE);
        }
        try (OwnPostgres postgres = OwnPostgres.start(arguments[0], 0)) {
            System.out.println("READY " + postgres.entry().port());
            if (arguments[1].equals("write")) {
                writeForEver(postgres);
            }
            if (arguments[1].equals("wait")) {
                Thread.sleep(Long.MAX_VALUE);
            }
        } catch (DatabaseUnavailable refused) {
            System.out.println("REFUSED " + refused.getMessage());
        }
    }

    private static void writeForEver(OwnPostgres postgres) throws SQLException {
        try (Connection connection = DriverManager.getConnection(postgres.url(), Settings.USER, postgres.password());
                Statement statement = connection.createStatement()) {
            statement.execute("create table written (n bigint primary key)");
            for (long n = 0; ; n++) {
                statement.execute("insert into written values (" + n + ")");
                System.out.println("WROTE " + n);
            }
        }
    }
}
