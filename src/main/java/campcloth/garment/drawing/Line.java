package campcloth.garment.drawing;

import campcloth.figure.Canvas;
import java.util.ArrayList;
import java.util.List;

/**
 * A line through points, smooth between its corners: each run is a curve through its points, runs meet in corners.
 *
 * @param runs each x, y, x, y, the first point of a run being the last of the run before
 */
record Line(List<double[]> runs) {

    static Line of(double... xy) {
        return new Line(List.of(xy));
    }

    /** With a run that begins where this ends. */
    Line then(double... xy) {
        double[] last = runs.get(runs.size() - 1);
        double[] run = new double[xy.length + 2];
        run[0] = last[last.length - 2];
        run[1] = last[last.length - 1];
        System.arraycopy(xy, 0, run, 2, xy.length);
        List<double[]> more = new ArrayList<>(runs);
        more.add(run);
        return new Line(more);
    }

    /** Straight on from point to point. */
    Line straight(double... xy) {
        Line line = this;
        for (int i = 0; i < xy.length; i += 2) {
            line = line.then(xy[i], xy[i + 1]);
        }
        return line;
    }

    /** On over the mirror image at x = 0, so that a half becomes a whole. */
    Line mirrored() {
        List<double[]> whole = new ArrayList<>(runs);
        for (int r = runs.size() - 1; r >= 0; r--) {
            double[] run = runs.get(r);
            int points = run.length / 2;
            double[] back = new double[run.length];
            for (int i = 0; i < points; i++) {
                back[2 * i] = -run[2 * (points - 1 - i)];
                back[2 * i + 1] = run[2 * (points - 1 - i) + 1];
            }
            whole.add(back);
        }
        return new Line(whole);
    }

    /** Data of an SVG path: a curve of Catmull and Rom through the points of each run. */
    String data(View view) {
        StringBuilder data = new StringBuilder();
        double[] first = runs.get(0);
        data.append('M').append(at(view, first[0], first[1]));
        for (double[] run : runs) {
            int points = run.length / 2;
            for (int i = 0; i + 1 < points; i++) {
                double[] before = point(run, Math.max(0, i - 1));
                double[] from = point(run, i);
                double[] to = point(run, i + 1);
                double[] after = point(run, Math.min(points - 1, i + 2));
                data.append('C')
                        .append(at(view, from[0] + (to[0] - before[0]) / 6, from[1] + (to[1] - before[1]) / 6))
                        .append(' ')
                        .append(at(view, to[0] - (after[0] - from[0]) / 6, to[1] - (after[1] - from[1]) / 6))
                        .append(' ')
                        .append(at(view, to[0], to[1]));
            }
        }
        return data.toString();
    }

    private static double[] point(double[] run, int i) {
        return new double[] {run[2 * i], run[2 * i + 1]};
    }

    private static String at(View view, double x, double y) {
        return Canvas.n(view.x(x)) + " " + Canvas.n(view.y(y));
    }
}
