package campcloth.store;

import campcloth.outage.Outage;
import campcloth.store.backup.Backup;
import campcloth.store.backup.BackupRefused;
import campcloth.store.backup.Restore;
import campcloth.store.postgres.FolderDatabase;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.slf4j.LoggerFactory;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;
import org.springframework.util.StringUtils;

/**
 * The program called with {@code backup FILE} or {@code restore FILE} in place of serving. The database is found by the same
 * settings as when it serves.
 */
public final class BackupCommand {

    private static final String BACKUP = "backup";
    private static final String RESTORE = "restore";
    private static final int DONE = 0;
    private static final int REFUSED = 1;
    private static final int MISUSED = 2;

    /** The settings alone, without anything that would serve. */
    @Configuration(proxyBeanMethods = false)
    static class SettingsAlone {}

    private interface Work {
        String with(Connection connection) throws SQLException, IOException;
    }

    private BackupCommand() {}

    /** Whether that is what the arguments ask for. */
    public static boolean isOne(String... arguments) {
        return arguments.length > 0 && (arguments[0].equals(BACKUP) || arguments[0].equals(RESTORE));
    }

    /** Does it, says what came of it, and answers with the exit status. */
    public static int run(String... arguments) {
        List<String> words = Arrays.stream(arguments)
                .filter(argument -> !argument.startsWith("--"))
                .toList();
        if (words.size() != 2) {
            System.err.println("Say: java -jar campcloth.jar " + words.get(0) + " FILE");
            return MISUSED;
        }
        String[] settings = Arrays.stream(arguments)
                .filter(argument -> argument.startsWith("--"))
                .toArray(String[]::new);
        try (ConfigurableApplicationContext context = new SpringApplicationBuilder(SettingsAlone.class)
                .web(WebApplicationType.NONE)
                .logStartupInfo(false)
                .run(settings)) {
            System.out.println(done(words.get(0), Path.of(words.get(1)), context.getEnvironment()));
            return DONE;
        } catch (BackupRefused refused) {
            System.err.println(refused.getMessage());
        } catch (IOException | SQLException | RuntimeException failure) {
            LoggerFactory.getLogger(BackupCommand.class).debug("What led to it", failure);
            String remedy =
                    Outage.of(failure).filter(Outage.STORAGE_FULL::equals).isPresent()
                            ? " A disk is full: make room and try again."
                            : "";
            System.err.println("No " + words.get(0) + " was made: " + failure.getMessage() + remedy);
        }
        return REFUSED;
    }

    private static String done(String word, Path file, Environment settings) throws SQLException, IOException {
        if (word.equals(RESTORE)) {
            return onDatabase(settings, true, connection -> new Restore(connection).from(file));
        }
        String program = Optional.ofNullable(BackupCommand.class.getPackage().getImplementationVersion())
                .orElse("in development");
        return onDatabase(
                settings,
                false,
                connection -> new Backup(connection, program, Clock.systemUTC().instant()).into(file));
    }

    private static String onDatabase(Environment settings, boolean alone, Work work) throws SQLException, IOException {
        String url = settings.getProperty("spring.datasource.url", "");
        if (StringUtils.hasText(url)) {
            try (Connection connection = DriverManager.getConnection(
                    url,
                    settings.getProperty("spring.datasource.username"),
                    settings.getProperty("spring.datasource.password"))) {
                return work.with(connection);
            }
        }
        String folder = settings.getProperty("campcloth.data-dir", "");
        try (FolderDatabase own = alone ? FolderDatabase.alone(folder) : FolderDatabase.shared(folder);
                Connection connection = own.connect()) {
            return work.with(connection);
        }
    }
}
