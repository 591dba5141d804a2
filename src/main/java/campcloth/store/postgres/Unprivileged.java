package campcloth.store.postgres;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * The words in front of a PostgreSQL command that make it run without root's power. PostgreSQL refuses to run as root, so
 * root's commands go through a new user namespace, where the user has no name and no power; files stay root's. An
 * ordinary user's commands need nothing in front.
 */
final class Unprivileged {

    private static final int SECONDS = 10;

    private Unprivileged() {}

    static List<String> prefix(boolean root) {
        return root ? prefixThatWorks(List.of("unshare", "-U")) : List.of();
    }

    static List<String> prefixThatWorks(List<String> prefix) {
        List<String> trial = new ArrayList<>(prefix);
        trial.add("true");
        if (succeeds(trial)) {
            return prefix;
        }
        throw new DatabaseUnavailable(
                "PostgreSQL does not run as root, and this machine does not let root start it in a user namespace.",
                "Start Campcloth as an ordinary user, or give it a database of your own with SPRING_DATASOURCE_URL.");
    }

    private static boolean succeeds(List<String> command) {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(SECONDS, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException notInstalled) {
            return false;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
