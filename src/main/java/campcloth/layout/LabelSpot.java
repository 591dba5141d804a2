package campcloth.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a label fits on a piece: the middle of the widest stretch inside the outline at one of a few heights, the middle
 * heights first.
 *
 * @param xCm middle of the stretch
 * @param yCm its height
 * @param widthCm its width
 */
record LabelSpot(double xCm, double yCm, double widthCm) {

    private static final double[] HEIGHTS = {0.5, 0.42, 0.58, 0.34, 0.66, 0.25, 0.75, 0.15, 0.85};
    /** How much wider a stretch farther from the middle must be to be taken. */
    private static final double CLEARLY = 1.15;

    static LabelSpot of(Outline outline) {
        LabelSpot best =
                new LabelSpot(outline.leftCm() + outline.widthCm() / 2, outline.lowCm() + outline.heightCm() / 2, 0);
        for (double part : HEIGHTS) {
            LabelSpot widest = widestAt(outline, outline.lowCm() + part * outline.heightCm());
            if (widest.widthCm > CLEARLY * best.widthCm) {
                best = widest;
            }
        }
        return best;
    }

    private static LabelSpot widestAt(Outline outline, double height) {
        List<Double> crossings = new ArrayList<>();
        List<Point> points = outline.points();
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            if (a.yCm() <= height != b.yCm() <= height) {
                crossings.add(a.xCm() + (height - a.yCm()) / (b.yCm() - a.yCm()) * (b.xCm() - a.xCm()));
            }
        }
        crossings.sort(Double::compare);
        LabelSpot widest = new LabelSpot(outline.leftCm(), height, 0);
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            double width = crossings.get(i + 1) - crossings.get(i);
            if (width > widest.widthCm) {
                widest = new LabelSpot((crossings.get(i) + crossings.get(i + 1)) / 2, height, width);
            }
        }
        return widest;
    }
}
