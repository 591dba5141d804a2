package campcloth.layout;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Lengths that the engine reaches on instances in a folder, given as the first argument; seconds and seed follow. Each file
 * {@code name.json} holds {@code {name, width, pieces: [{outline: [[x, y], ...], count, turnable}]}}.
 */
public final class LayoutBenchmark {

    private LayoutBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        double seconds = arguments.length > 1 ? Double.parseDouble(arguments[1]) : 2;
        long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 1;
        try (Stream<Path> files = Files.list(Path.of(arguments[0]))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                JsonNode instance = JsonMapper.shared().readTree(file.toFile());
                if (instance.isObject() && instance.has("width")) {
                    report(instance, new Effort(seconds, seed));
                }
            }
        }
    }

    private static void report(JsonNode instance, Effort effort) {
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
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Layout layout = Nesting.layout(strip, pieces, effort);
        System.out.printf(
                "%-10s copies %3d  length %9.3f  bound %9.3f  used %5.1f %%  %5.2f s cpu  overlap %.2e cm2%n",
                instance.get("name").asString(),
                layout.placements().size(),
                layout.lengthCm(),
                layout.lowerBoundCm(),
                layout.usedPercent(),
                (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e9,
                mostOverlap(layout));
    }

    private static double mostOverlap(Layout layout) {
        List<Geometry> laid = LayoutCheck.laid(layout);
        double most = 0;
        for (int i = 0; i < laid.size(); i++) {
            for (int j = 0; j < i; j++) {
                most = Math.max(most, laid.get(i).intersection(laid.get(j)).getArea());
            }
        }
        return most;
    }
}
