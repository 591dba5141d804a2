package campcloth.store.postgres;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * PostgreSQL's own programs ({@code initdb}, {@code pg_ctl}, {@code postgres}), run one at a time.
 *
 * <p>Settings of the user's shell that PostgreSQL would read are left out, and messages are in English, since we read
 * them. What a program says goes to a file, not a pipe: the server it leaves behind would hold a pipe open.
 *
 * @param home the folder that holds {@code bin}
 * @param prefix what stands in front of each command
 * @param log the folder for what they say
 */
record Programs(Path home, List<String> prefix, Path log) {

    /** How a program ended. */
    record Outcome(int exit, String said) {
        boolean succeeded() {
            return exit == 0;
        }
    }

    Outcome run(Duration limit, String program, String... arguments) throws IOException {
        Path said = log.resolve(program + ".log");
        ProcessBuilder builder = new ProcessBuilder(command(program, arguments))
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        clean(builder.environment());
        Process process = builder.start();
        process.getOutputStream().close();
        return new Outcome(exit(process, limit, program), new String(Files.readAllBytes(said), StandardCharsets.UTF_8));
    }

    private List<String> command(String program, String... arguments) {
        boolean windows = System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");
        List<String> command = new ArrayList<>(prefix);
        command.add(home.resolve("bin")
                .resolve(windows ? program + ".exe" : program)
                .toString());
        command.addAll(List.of(arguments));
        return command;
    }

    private static void clean(Map<String, String> environment) {
        environment
                .keySet()
                .removeIf(name -> name.startsWith("PG") || name.startsWith("LC_") || name.equals("LD_LIBRARY_PATH"));
        environment.put("LC_ALL", "C");
    }

    private static int exit(Process process, Duration limit, String program) {
        try {
            if (process.waitFor(limit.toSeconds(), TimeUnit.SECONDS)) {
                return process.exitValue();
            }
            process.destroy();
            throw new DatabaseUnavailable(
                    program + " of PostgreSQL did not end within " + limit.toSeconds() + " seconds.",
                    "Start again when the machine is less busy.");
        } catch (InterruptedException interrupted) {
            process.destroy();
            Thread.currentThread().interrupt();
            throw new DatabaseUnavailable("The start of PostgreSQL was interrupted.", "Start again.", interrupted);
        }
    }
}
