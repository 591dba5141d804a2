package campcloth.layout;

import campcloth.layout.search.Clock;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Lengths that the engine reaches, median of five seeds, as ratios to the best known. First rectangles cut from a strip
 * without waste, then the instances in a folder, given as the first argument; efforts in seconds follow (1 and 10 where
 * none do). Each file {@code name.json} holds {@code {name, width, pieces: [{outline: [[x, y], ...], count, turnable}]}}.
 * The clock's stop is lifted, so that a loaded machine takes longer, not worse layouts.
 */
public final class LayoutBenchmark {

    private static final int SEEDS = 5;
    private static final double GUILLOTINE_SECONDS = 2;

    /**
     * Lengths of published record layouts of instances of the ESICUP collection, in the units of its files (J. Gardeyn,
     * G. Vanden Berghe, T. Wauters 2025, arXiv 2509.13329, and the record layouts published with it).
     */
    private static final Map<String, Double> BEST_KNOWN =
            Map.of("shirts", 59.393, "trousers", 235.172, "dagli", 56.087, "shapes0", 57.012);

    private record Run(double length, double wallSeconds, double cpuSeconds, double overlapCm2) {}

    private LayoutBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        Clock.lift();
        double[] efforts = arguments.length > 1
                ? Arrays.stream(arguments)
                        .skip(1)
                        .mapToDouble(Double::parseDouble)
                        .toArray()
                : new double[] {1, 10};
        for (int pieces : new int[] {10, 20, 40}) {
            report("guillotine " + pieces, GUILLOTINE_SECONDS, Guillotine.LENGTH, seed -> {
                List<Piece> cut = Guillotine.pieces(pieces, seed);
                return run(Strip.ofWidth(Guillotine.WIDTH), cut, new Effort(GUILLOTINE_SECONDS, seed));
            });
        }
        try (Stream<Path> files = Files.list(Path.of(arguments[0]))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                JsonNode instance = JsonMapper.shared().readTree(file.toFile());
                if (instance.isObject() && instance.has("width")) {
                    report(instance, efforts);
                }
            }
        }
    }

    private static void report(JsonNode instance, double[] efforts) {
        Strip strip = Strip.ofWidth(instance.get("width").asDouble());
        List<Piece> pieces = new ArrayList<>();
        for (JsonNode piece : instance.get("pieces")) {
            List<Point> points = new ArrayList<>();
            piece.get("outline")
                    .forEach(p ->
                            points.add(new Point(p.get(0).asDouble(), p.get(1).asDouble())));
            pieces.add(new Piece(
                    piece.get("name").asString(),
                    Outline.of(points),
                    piece.get("count").asInt(),
                    piece.get("turnable").asBoolean(),
                    false,
                    false));
        }
        String name = instance.get("name").asString();
        double bestKnown = BEST_KNOWN.getOrDefault(name, Double.NaN);
        for (double seconds : efforts) {
            report(name, seconds, bestKnown, seed -> run(strip, pieces, new Effort(seconds, seed)));
        }
    }

    private static void report(String name, double seconds, double bestKnown, LongFunction<Run> runs) {
        List<Run> made = LongStream.rangeClosed(1, SEEDS).mapToObj(runs).toList();
        double[] lengths = made.stream().mapToDouble(Run::length).sorted().toArray();
        System.out.printf(
                "%-14s %4.1f s  median %9.3f  ratio %.4f (%.4f to %.4f)  wall %5.2f s  cpu %5.2f s  overlap %.1e cm2%n",
                name,
                seconds,
                lengths[SEEDS / 2],
                lengths[SEEDS / 2] / bestKnown,
                lengths[0] / bestKnown,
                lengths[SEEDS - 1] / bestKnown,
                made.stream().mapToDouble(Run::wallSeconds).average().orElseThrow(),
                made.stream().mapToDouble(Run::cpuSeconds).average().orElseThrow(),
                made.stream().mapToDouble(Run::overlapCm2).max().orElseThrow());
    }

    private static Run run(Strip strip, List<Piece> pieces, Effort effort) {
        long wall = System.nanoTime();
        long cpu = cpuNanos();
        Layout layout = Nesting.layout(strip, pieces, effort);
        double wallSeconds = (System.nanoTime() - wall) / 1e9;
        return new Run(layout.lengthCm(), wallSeconds, (cpuNanos() - cpu) / 1e9, mostOverlap(layout));
    }

    /** Of all threads together. */
    private static long cpuNanos() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    private static double mostOverlap(Layout layout) {
        List<Geometry> laid = LayoutCheck.laid(layout);
        double most = 0;
        for (int i = 0; i < laid.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (laid.get(i).getEnvelopeInternal().intersects(laid.get(j).getEnvelopeInternal())) {
                    most = Math.max(most, laid.get(i).intersection(laid.get(j)).getArea());
                }
            }
        }
        return most;
    }
}
