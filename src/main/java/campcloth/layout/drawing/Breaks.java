package campcloth.layout.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** Where a long cloth is parted into pages: where few parts are cut through, as far up as a page reaches. */
final class Breaks {

    private static final double LEAST_FILLED = 0.6;
    private static final double TOUCH_CM = 1e-6;

    private Breaks() {}

    /** Stretches of the cloth, the first on a page of its own height. */
    static List<Clip> of(double widthCm, double lengthCm, List<Shape> shapes, double firstCm, double otherCm) {
        List<Clip> stretches = new ArrayList<>();
        double from = 0;
        double room = firstCm;
        while (lengthCm - from > room + TOUCH_CM) {
            double to = breakBetween(from + LEAST_FILLED * room, from + room, shapes);
            stretches.add(new Clip(0, from, widthCm, to));
            from = to;
            room = otherCm;
        }
        stretches.add(new Clip(0, from, widthCm, lengthCm));
        return stretches;
    }

    private static double breakBetween(double low, double high, List<Shape> shapes) {
        double[] tried = DoubleStream.concat(
                        DoubleStream.of(high),
                        shapes.stream().flatMapToDouble(s -> DoubleStream.of(s.lowCm(), s.topCm())))
                .filter(y -> y >= low && y <= high)
                .sorted()
                .toArray();
        double best = high;
        long fewest = Long.MAX_VALUE;
        for (double y : tried) {
            long through = shapes.stream()
                    .filter(s -> s.lowCm() < y - TOUCH_CM && s.topCm() > y + TOUCH_CM)
                    .count();
            if (through <= fewest) {
                fewest = through;
                best = y;
            }
        }
        return best;
    }
}
