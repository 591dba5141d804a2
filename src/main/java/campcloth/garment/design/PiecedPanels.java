package campcloth.garment.design;

import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * A shape that is wider than the cloth, cut into panels by seams along the grain: each panel as wide as the cloth gives, the
 * last as wide as what is left, but no narrower than {@value #LEAST_CM} cm (project choice). Each has its own seam allowance
 * at each of its seams; all panels keep the shape's grain.
 *
 * @param panels from the first edge outwards; of a symmetrical shape only the middle and the right half
 */
record PiecedPanels(List<Panel> panels) {

    static final double LEAST_CM = 10;
    private static final double TOUCH_CM = 1e-9;

    /**
     * A panel.
     *
     * @param leftCm place of the seam on its left in the shape, empty where it ends there with the shape
     * @param rightCm the same on its right
     * @param twin whether the shape has the mirrored panel as well
     * @param symmetrical whether it is its own mirrored image
     */
    record Panel(Outline outline, OptionalDouble leftCm, OptionalDouble rightCm, boolean twin, boolean symmetrical) {}

    PiecedPanels {
        panels = List.copyOf(panels);
    }

    /** Places of all seams in the shape, those of the mirrored panels too. */
    List<Double> seamsCm() {
        List<Double> seams = new ArrayList<>();
        boolean twins = panels.get(0).twin() || panels.get(0).symmetrical();
        if (panels.get(0).twin()) {
            seams.add(0.0);
        }
        for (Panel panel : panels) {
            if (panel.rightCm().isPresent()) {
                seams.add(panel.rightCm().getAsDouble());
                if (twins) {
                    seams.add(-panel.rightCm().getAsDouble());
                }
            }
        }
        return seams;
    }

    /**
     * A shape pieced from its left edge on.
     *
     * @param corners the shape with the allowances of its own edges
     * @param usableCm width of the cloth
     * @param seamCm allowance at each seam
     * @param firstSeamCm where the first seam may lie at the earliest, so that no panel falls apart; the shape stays whole
     *     on cloth that is narrower
     */
    static PiecedPanels fromTheLeft(List<Point> corners, double usableCm, double seamCm, double firstSeamCm) {
        double left = corners.stream().mapToDouble(Point::xCm).min().orElseThrow();
        double right = corners.stream().mapToDouble(Point::xCm).max().orElseThrow();
        double first = left + usableCm - seamCm;
        if (right - left <= usableCm + TOUCH_CM || usableCm - 2 * seamCm < LEAST_CM || first < firstSeamCm) {
            return whole(corners, false);
        }
        return between(corners, OptionalDouble.empty(), seams(first, right, usableCm, seamCm), seamCm);
    }

    /** A shape that is symmetrical about x = 0, pieced from its middle outwards with as few panels as the cloth gives. */
    static PiecedPanels fromTheMiddle(List<Point> corners, double usableCm, double seamCm, double firstSeamCm) {
        double half = corners.stream().mapToDouble(Point::xCm).max().orElseThrow();
        if (2 * half <= usableCm + TOUCH_CM || usableCm - 2 * seamCm < LEAST_CM) {
            return whole(corners, true);
        }
        boolean inTwo = half + seamCm <= usableCm + TOUCH_CM;
        double middleCm = usableCm / 2 - seamCm;
        double panelCm = usableCm - 2 * seamCm;
        List<Double> beside = seams(middleCm, half, usableCm, seamCm);
        List<Double> fromSeam = inTwo ? List.of() : seams(panelCm, half, usableCm, seamCm);
        boolean besideHolds = middleCm >= firstSeamCm;
        boolean fromSeamHolds = inTwo || panelCm >= firstSeamCm;
        if (fromSeamHolds && (!besideHolds || 2 * (fromSeam.size() + 1) < 1 + 2 * beside.size())) {
            return between(corners, OptionalDouble.of(0), fromSeam, seamCm);
        }
        return besideHolds ? between(corners, OptionalDouble.of(-beside.get(0)), beside, seamCm) : whole(corners, true);
    }

    private static PiecedPanels whole(List<Point> corners, boolean symmetrical) {
        return new PiecedPanels(List.of(new Panel(
                Outline.of(corners).movedTo(0, 0),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false,
                symmetrical)));
    }

    /** Seams from the first on, as far apart as the cloth gives, until what is left fits. */
    private static List<Double> seams(double firstCm, double endCm, double usableCm, double seamCm) {
        List<Double> seams = new ArrayList<>(List.of(firstCm));
        double last = firstCm;
        while (endCm - last + seamCm > usableCm + TOUCH_CM) {
            last += usableCm - 2 * seamCm;
            seams.add(last);
        }
        seams.set(seams.size() - 1, Math.min(last, endCm - LEAST_CM));
        return seams;
    }

    private static PiecedPanels between(
            List<Point> corners, OptionalDouble firstLeftCm, List<Double> seams, double seamCm) {
        boolean aroundMiddle = firstLeftCm.isPresent() && firstLeftCm.getAsDouble() < 0;
        List<Panel> panels = IntStream.rangeClosed(0, seams.size())
                .mapToObj(i -> panel(
                        corners,
                        i == 0 ? firstLeftCm : OptionalDouble.of(seams.get(i - 1)),
                        i == seams.size() ? OptionalDouble.empty() : OptionalDouble.of(seams.get(i)),
                        firstLeftCm.isPresent() && !(aroundMiddle && i == 0),
                        aroundMiddle && i == 0,
                        seamCm))
                .toList();
        return new PiecedPanels(panels);
    }

    private static Panel panel(
            List<Point> corners,
            OptionalDouble leftCm,
            OptionalDouble rightCm,
            boolean twin,
            boolean symmetrical,
            double seamCm) {
        List<Point> cut = corners;
        if (leftCm.isPresent()) {
            cut = rightOf(cut, leftCm.getAsDouble() - seamCm, 1);
        }
        if (rightCm.isPresent()) {
            cut = rightOf(cut, rightCm.getAsDouble() + seamCm, -1);
        }
        return new Panel(Outline.of(cut).movedTo(0, 0), leftCm, rightCm, twin, symmetrical);
    }

    /** What lies to the right of a line along the grain, to its left where {@code side} is -1. */
    private static List<Point> rightOf(List<Point> corners, double xCm, int side) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point here = corners.get(i);
            Point next = corners.get((i + 1) % corners.size());
            double in = side * (here.xCm() - xCm);
            double nextIn = side * (next.xCm() - xCm);
            if (in >= 0) {
                kept.add(here);
            }
            if (in * nextIn < 0) {
                double share = in / (in - nextIn);
                kept.add(new Point(xCm, here.yCm() + share * (next.yCm() - here.yCm())));
            }
        }
        return kept;
    }
}
