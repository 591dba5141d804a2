package campcloth.garment.drawing;

import campcloth.figure.Canvas;
import campcloth.figure.TextWidth;
import java.util.List;

/** Draws a figure, the tape on it and words beside it. Points are given in the figure's own units. */
final class Sketch {

    static final double WIDTH = 340;
    static final double HEIGHT = 350;

    private static final double LETTERS = 15;
    private static final double LINE = 18;
    private static final double TAPE = 8;
    private static final double MARGIN = 6;
    private static final String SKIN = "#f4f4f4";
    private static final String CLOTH = "#fff";
    private static final String EDGE = "#555";

    private final Canvas canvas = new Canvas();
    private final View view;

    Sketch(View view) {
        this.view = view;
    }

    String drawn() {
        return canvas.drawn();
    }

    void skin(Line line) {
        canvas.shape(line.data(view), SKIN, EDGE, 1.6);
    }

    void cloth(Line line) {
        canvas.shape(line.data(view), CLOTH, EDGE, 1.6);
    }

    void stroke(Line line) {
        canvas.shape(line.data(view), "none", EDGE, 1.3);
    }

    void filled(Line line, String fill) {
        canvas.shape(line.data(view), fill, EDGE, 1.6);
    }

    void dot(double x, double y, double radius) {
        canvas.disc(view.x(x), view.y(y), radius, EDGE, 0.5, Canvas.SOLID);
    }

    /** An edge of a garment that is only thought. */
    void thought(Line line) {
        canvas.path(line.data(view), 1.4, "5 4");
    }

    /** The tape where it is seen: white with strokes across, between black edges, a bar at each end. */
    void tape(Line line) {
        tapeWithoutEnds(line);
        double[] first = line.runs().get(0);
        double[] last = line.runs().get(line.runs().size() - 1);
        int n = last.length;
        bar(first[0], first[1], first[2], first[3]);
        bar(last[n - 2], last[n - 1], last[n - 4], last[n - 3]);
    }

    /** The seen half of a tape that runs all round. */
    void tapeWithoutEnds(Line line) {
        String data = line.data(view);
        canvas.path(data, TAPE, Canvas.SOLID);
        canvas.shape(data, "none", "#fff", TAPE - 2.4);
        canvas.path(data, TAPE - 2, "1.2 5");
    }

    private void bar(double x, double y, double towardsX, double towardsY) {
        double length = Math.hypot(towardsX - x, towardsY - y);
        double acrossX = -(towardsY - y) / length * 9;
        double acrossY = (towardsX - x) / length * 9;
        canvas.line(
                view.x(x) - acrossX, view.y(y) - acrossY, view.x(x) + acrossX, view.y(y) + acrossY, 3.2, Canvas.SOLID);
    }

    /** The tape where it runs behind. */
    void behind(Line line) {
        canvas.path(line.data(view), 2.2, "3 3");
    }

    /** A tape all round, seen from a little above. */
    void round(double left, double right, double y, double dip) {
        double middle = (left + right) / 2;
        double bend = (right - left) * 0.33;
        behind(Line.of(
                left, y, middle - bend, y - dip * 0.75, middle, y - dip, middle + bend, y - dip * 0.75, right, y));
        tapeWithoutEnds(Line.of(
                left, y, middle - bend, y + dip * 0.75, middle, y + dip, middle + bend, y + dip * 0.75, right, y));
    }

    /** Words at a place of the picture, joined by a thin line to a point of the figure. */
    void label(double toX, double toY, double x, double y, String words) {
        canvas.line(view.x(toX), view.y(toY), x - 4, y - LETTERS * 0.35, 1, Canvas.SOLID);
        words(x, y, words);
    }

    void words(double x, double y, String words) {
        double line = y;
        for (String part : TextWidth.lines(words, LETTERS, WIDTH - MARGIN - x)) {
            canvas.text(x, line, LETTERS, "start", part);
            line += LINE;
        }
    }

    void all(List<Line> lines) {
        lines.forEach(this::stroke);
    }
}
