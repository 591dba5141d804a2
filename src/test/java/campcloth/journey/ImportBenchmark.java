package campcloth.journey;

import campcloth.store.postgres.PostgresForTests;
import campcloth.supply.GeneratedList;
import java.io.BufferedReader;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.postgresql.PGConnection;

/**
 * Run by hand on the packed program ({@code mvn package -DskipTests && mvn test -Dtest=ImportBenchmark}): 100,000 generated rows
 * under {@code -Xmx256m}, looked at, new and again, beside the same rows put into PostgreSQL alone; how long a user who changes
 * another cloth waits meanwhile, and how much memory the program took at most. Prints; asserts nothing.
 */
class ImportBenchmark {

    private static final int ROWS = 100_000;
    private static final String CLOTH =
            "{\"name\": \"mine\", \"blend\": [{\"fibre\": \"wool\", \"percent\": 100}], \"weightGsm\": 300}";

    @TempDir
    Path folder;

    private volatile boolean done;

    @Test
    void aHundredThousandRowsOnceAndAgain() throws Exception {
        Path csv = folder.resolve("list.csv");
        try (OutputStream out = Files.newOutputStream(csv)) {
            GeneratedList.write(1, ROWS, out);
        }
        plainly(csv);
        Path collections = folder.resolve("gc.log");
        List<String> options = List.of("-Xmx256m", "-Xlog:gc:file=" + collections);
        try (PackedProgram program =
                PackedProgram.start(folder.resolve("data"), Map.of(), options).ready()) {
            seconds(program, csv, "looked at only", "&dryRun=true");
            double first = seconds(program, csv, "new", "");
            double reading = read(program, "/api/cloths?text=linen&size=1");
            double second = seconds(program, csv, "again, nothing changed", "");
            double export = read(program, "/api/cloths/export");
            System.out.printf(
                    Locale.ROOT,
                    "again over new: %.2f; first search after the new ones: %.1f s; export: %.1f s; file %.1f MiB%n",
                    second / first,
                    reading,
                    export,
                    Files.size(csv) / 1048576.0);
            System.out.println("memory at most (MiB): " + peak(program.pid()) + " resident; heap before a collection "
                    + heap(collections, 1) + ", after one " + heap(collections, 2) + " of 256");
        }
        try (PackedProgram again = PackedProgram.start(folder.resolve("data"), Map.of(), List.of("-Xmx256m"))
                .ready()) {
            System.out.printf(
                    Locale.ROOT,
                    "started again; catalogue read in %.1f s%n",
                    read(again, "/api/cloths?text=linen&size=1"));
        }
    }

    private double seconds(PackedProgram program, Path csv, String what, String query) throws Exception {
        double[] longestWait = {0};
        done = false;
        Thread neighbour = new Thread(() -> longestWait[0] = longestWait(program));
        neighbour.start();
        long begun = System.nanoTime();
        HttpResponse<InputStream> answer = program.list("supplier=Wendlow%20Mill" + query, csv);
        String last = "";
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(answer.body(), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                last = line;
            }
        }
        double seconds = (System.nanoTime() - begun) / 1e9;
        done = true;
        neighbour.join();
        Matcher counts = Pattern.compile("\"counts\":\\{[^}]*}").matcher(last);
        System.out.printf(
                Locale.ROOT,
                "%d rows %s: %.1f s, %.0f rows a second; longest wait of somebody who adds a cloth %.1f s; %s%n",
                ROWS,
                what,
                seconds,
                ROWS / seconds,
                longestWait[0],
                counts.find() ? counts.group() : last);
        return seconds;
    }

    /** PostgreSQL alone, with the same rows as they stand in the file: seconds to copy them in, and to insert them by batches. */
    private static void plainly(Path csv) throws Exception {
        PostgresForTests.Database database = PostgresForTests.fresh();
        try (Connection connection = DriverManager.getConnection(database.url(), database.user(), database.password());
                Statement sql = connection.createStatement()) {
            sql.execute(
                    "create table plain (key text primary key, name text, composition text, weight text, width text,"
                            + " price text, weave text)");
            long begun = System.nanoTime();
            try (InputStream in = Files.newInputStream(csv)) {
                connection
                        .unwrap(PGConnection.class)
                        .getCopyAPI()
                        .copyIn("copy plain from stdin (format csv, delimiter ';', header)", in);
            }
            double copied = (System.nanoTime() - begun) / 1e9;
            sql.execute("truncate plain");
            begun = System.nanoTime();
            connection.setAutoCommit(false);
            try (Stream<String> lines = Files.lines(csv);
                    PreparedStatement insert =
                            connection.prepareStatement("insert into plain values (?, ?, ?, ?, ?, ?, ?)")) {
                int waiting = 0;
                for (String line : (Iterable<String>) lines.skip(1)::iterator) {
                    String[] cells = line.split(";");
                    for (int i = 0; i < cells.length; i++) {
                        insert.setString(i + 1, cells[i]);
                    }
                    insert.addBatch();
                    if (++waiting % 500 == 0) {
                        insert.executeBatch();
                    }
                }
                insert.executeBatch();
            }
            connection.commit();
            double inserted = (System.nanoTime() - begun) / 1e9;
            System.out.printf(
                    Locale.ROOT, "PostgreSQL alone: copied in %.1f s, inserted in %.1f s%n", copied, inserted);
        }
    }

    /** Of a user who adds a cloth five times a second: the pause is the user's, nothing waits for it. */
    private double longestWait(PackedProgram program) {
        double longest = 0;
        try {
            while (!done) {
                long begun = System.nanoTime();
                program.post("/api/cloths", CLOTH);
                longest = Math.max(longest, (System.nanoTime() - begun) / 1e9);
                Thread.sleep(200);
            }
        } catch (Exception failed) {
            System.out.println("somebody who adds a cloth was told: " + failed);
        }
        return longest;
    }

    private static double read(PackedProgram program, String path) throws Exception {
        long begun = System.nanoTime();
        program.get(path);
        return (System.nanoTime() - begun) / 1e9;
    }

    private static String peak(long pid) throws Exception {
        Path status = Path.of("/proc", Long.toString(pid), "status");
        return Files.exists(status)
                ? Files.readAllLines(status).stream()
                        .filter(line -> line.startsWith("VmHWM"))
                        .map(line -> Long.toString(Long.parseLong(line.replaceAll("\\D", "")) / 1024))
                        .findFirst()
                        .orElse("unknown")
                : "unknown";
    }

    /** The most that stood before (1) or after (2) a collection, MiB. */
    private static long heap(Path log, int group) throws Exception {
        Pattern collection = Pattern.compile(".*?(\\d+)M->(\\d+)M\\(\\d+M\\).*");
        return Files.readAllLines(log).stream()
                .map(collection::matcher)
                .filter(Matcher::matches)
                .mapToLong(found -> Long.parseLong(found.group(group)))
                .max()
                .orElse(0);
    }
}
