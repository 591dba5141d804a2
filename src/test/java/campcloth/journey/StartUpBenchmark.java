package campcloth.journey;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Run by hand on the packed program ({@code mvn package -DskipTests && mvn test -Dtest=StartUpBenchmark}): seconds from the start of the
 * process to the first answer that needs the database, on a new data folder and on one that is there already, as one jar, as
 * extracted layers, and with the classes of an earlier run archived; and what memory it takes then. Prints medians; asserts nothing.
 */
class StartUpBenchmark {

    private static final int RUNS = Integer.getInteger("runs", 5);
    private static final String ASKED = "/api/cloths?size=1";

    @TempDir
    Path folder;

    private int data;

    @Test
    void coldAndWarm() throws Exception {
        Path extracted = extract();
        Path archive = folder.resolve("classes.jsa");
        Path kept = folder.resolve("kept");
        train(extracted, kept, archive);
        System.out.printf(Locale.ROOT, "archive of classes: %d MiB%n", Files.size(archive) >> 20);
        List<String> plain = List.of();
        List<String> archived = List.of("-XX:SharedArchiveFile=" + archive, "-Xshare:auto");
        measure("one jar, new data folder", PackedProgram.JAR, null, plain);
        measure("one jar, warm", PackedProgram.JAR, kept, plain);
        measure("extracted, new data folder", extracted, null, plain);
        measure("extracted, warm", extracted, kept, plain);
        measure("extracted, archive, new data folder", extracted, null, archived);
        measure("extracted, archive, warm", extracted, kept, archived);
    }

    private void measure(String what, Path jar, Path kept, List<String> options) throws Exception {
        double[] seconds = new double[RUNS];
        double[] worked = new double[RUNS];
        double[] resident = new double[RUNS];
        double[] heap = new double[RUNS];
        for (int run = 0; run < RUNS; run++) {
            Path where = kept == null ? folder.resolve("data-" + data++) : kept;
            long begun = System.nanoTime();
            try (PackedProgram program = PackedProgram.start(jar, where, Map.of(), options)) {
                firstAnswer(program);
                seconds[run] = (System.nanoTime() - begun) / 1e9;
                worked[run] = cpuSeconds(program.pid());
                jcmd(program, "GC.run");
                resident[run] = resident(program.pid());
                heap[run] = heap(jcmd(program, "GC.heap_info"));
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%-36s first answer after %5.1f s (%.1f to %.1f), %.1f s of a core; %.0f MiB resident, heap after a collection %.0f MiB%n",
                what,
                median(seconds),
                Arrays.stream(seconds).min().orElseThrow(),
                Arrays.stream(seconds).max().orElseThrow(),
                median(worked),
                median(resident),
                median(heap));
    }

    private static void firstAnswer(PackedProgram program) throws InterruptedException {
        while (true) {
            try {
                if (program.get(ASKED).statusCode() == 200) {
                    return;
                }
            } catch (IOException notYet) {
                Thread.sleep(20);
            }
        }
    }

    private Path extract() throws Exception {
        Path target = folder.resolve("extracted");
        run(
                "java",
                "-Djarmode=tools",
                "-jar",
                PackedProgram.JAR.toString(),
                "extract",
                "--destination",
                target.toString());
        return target.resolve("campcloth.jar");
    }

    /** The classes that a start and a first request need. */
    private static void train(Path jar, Path kept, Path archive) throws Exception {
        try (PackedProgram program =
                PackedProgram.start(jar, kept, Map.of(), List.of("-XX:ArchiveClassesAtExit=" + archive))) {
            firstAnswer(program);
            program.get("/plan");
            program.terminate();
        }
    }

    private static String jcmd(PackedProgram program, String command) throws Exception {
        return run("jcmd", Long.toString(program.pid()), command);
    }

    private static String run(String tool, String... arguments) throws Exception {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", tool).toString()));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException(printed);
        }
        return printed;
    }

    /** What it worked, whatever else the machine did meanwhile; its database apart. */
    private static double cpuSeconds(long pid) {
        return ProcessHandle.of(pid)
                .flatMap(process -> process.info().totalCpuDuration())
                .map(worked -> worked.toMillis() / 1000.0)
                .orElse(Double.NaN);
    }

    private static double resident(long pid) throws IOException {
        return kibi(Files.readString(Path.of("/proc", Long.toString(pid), "status")), "VmRSS:\\s+(\\d+) kB") / 1024;
    }

    private static double heap(String info) {
        return kibi(info, "heap\\s+total \\d+K, used (\\d+)K") / 1024;
    }

    private static double kibi(String text, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        return found.find() ? Double.parseDouble(found.group(1)) : Double.NaN;
    }

    private static double median(double[] figures) {
        double[] sorted = figures.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
