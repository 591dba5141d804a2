package campcloth.layout;

import campcloth.layout.search.Ring;
import campcloth.layout.search.StripPacking;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The lengths at hand and the bolt as one strip: each length is a band along it, walled off from the next, the bolt comes
 * last. Only what pieces may lie on counts, edges are left off. Bands begin where a repeat of the pattern keeps in step.
 */
final class Bands {

    private record Band(double from, double to, Optional<Integer> number) {}

    private static final double WALL_CM = 1;
    private static final double EDGE_CM = 1e-6;

    private final Strip strip;
    private final List<Band> bands = new ArrayList<>();
    private final List<StripPacking.Fixed> walls = new ArrayList<>();
    private final double inStep;

    /** With the lengths at hand of these numbers, counted from 1. */
    Bands(Strip strip, List<Integer> used) {
        this.strip = strip;
        double end = used.isEmpty() ? 0 : -WALL_CM;
        this.inStep = used.isEmpty() ? strip.repeatFromCutCm(Optional.empty()) : 0;
        for (int number : used) {
            AtHand length = strip.atHand().get(number - 1);
            double high = length.lengthCm() - 2 * strip.edgeGapCm();
            double wide = strip.usableWidthCm(length);
            if (high > 0 && wide > 0) {
                double from = walled(end, Optional.of(number));
                end = from + high;
                if (wide < strip.usableWidthCm()) {
                    wall(wide + strip.gapCm(), from - strip.gapCm(), end + strip.gapCm());
                }
                bands.add(new Band(from, end, Optional.of(number)));
            }
        }
        double from = used.isEmpty() ? 0 : walled(end, Optional.empty());
        bands.add(new Band(from, Double.POSITIVE_INFINITY, Optional.empty()));
    }

    /** Walls off a new band and gives its beginning. */
    private double walled(double end, Optional<Integer> number) {
        double least = Math.max(0, end + 2 * strip.gapCm()) + WALL_CM;
        double repeat = strip.repeat().flatMap(Repeat::lengthCm).orElse(0.0);
        double phase = strip.repeatFromCutCm(number);
        double from = repeat == 0 ? least : Math.ceil((least + phase) / repeat) * repeat - phase;
        wall(-strip.gapCm() - WALL_CM, end + (end < 0 ? 0 : strip.gapCm()), from - strip.gapCm());
        return from;
    }

    private void wall(double left, double low, double high) {
        double right = strip.usableWidthCm() + strip.gapCm() + WALL_CM;
        walls.add(new StripPacking.Fixed(
                Ring.of(new double[] {left, right, right, left}, new double[] {low, low, high, high})));
    }

    StripPacking.Ground ground() {
        return new StripPacking.Ground(strip.usableWidthCm(), strip.gapCm(), bands.get(bands.size() - 1).from, walls);
    }

    /** Height on the strip, up to whole repeats, of a place of the repeat. */
    double heightOf(double alongCm) {
        return alongCm + inStep - strip.edgeGapCm();
    }

    /** Offset across, up to whole repeats, of a place of the repeat. */
    double offsetOf(double acrossCm) {
        return acrossCm + strip.repeat().map(Repeat::fromSelvedgeCm).orElse(0.0) - strip.sideCm();
    }

    /** Where the bolt begins. */
    double bolt() {
        return bands.get(bands.size() - 1).from;
    }

    /** The copy of a piece at a spot of the strip, as it lies on its own length of cloth. */
    Placement placed(String piece, int copy, double x, double y, boolean turned, boolean mirrored) {
        Band band = bands.stream()
                .filter(some -> y >= some.from - EDGE_CM && y <= some.to)
                .reduce((first, later) -> later)
                .orElse(bands.get(bands.size() - 1));
        double along = bands.size() == 1 ? y : Math.max(0, y - band.from);
        return new Placement(piece, copy, x + strip.sideCm(), along + strip.edgeGapCm(), turned, mirrored, band.number);
    }
}
