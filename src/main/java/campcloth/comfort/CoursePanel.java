package campcloth.comfort;

import campcloth.figure.Canvas;
import campcloth.figure.TextWidth;
import campcloth.figure.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** One frame of the drawing of a course: lines over the same hours, each with its own stroke, named above the frame. */
final class CoursePanel {

    static final double KEY_LINE = 17;

    private static final double KEY_SIZE = 13;
    private static final int MOST_POINTS = 700;

    /**
     * A line.
     *
     * @param name in words
     * @param stroke tells it from the others in print
     * @param value its value; empty where there is none
     */
    record Line(String name, Stroke stroke, Function<Moment, Optional<Double>> value) {

        static final Stroke FULL = new Stroke(2.2, Canvas.SOLID);
        static final Stroke DASHED = new Stroke(1.8, "8 4");
        static final Stroke DOTTED = new Stroke(2, "2 4");
    }

    /** How a line is drawn. */
    record Stroke(double weight, String dash) {}

    private final List<Moment> moments;
    private final CoursePage page;
    private final double top;
    private final Canvas canvas;
    private double least = Double.POSITIVE_INFINITY;
    private double most = Double.NEGATIVE_INFINITY;
    private double step = 1;

    CoursePanel(List<Moment> moments, CoursePage page, double top, Canvas canvas) {
        this.moments = moments;
        this.page = page;
        this.top = top;
        this.canvas = canvas;
    }

    void draw(String title, List<Line> lines) {
        scale(lines);
        canvas.box(page.left(), top, page.width(), page.frame(), "none", 1);
        double labels = Double.POSITIVE_INFINITY;
        for (double tick = least; tick <= most + step / 1000; tick += step) {
            double y = y(tick);
            canvas.shape(Canvas.segment(page.left(), y, page.left() + page.width(), y), "none", "#ccc", 0.6);
            if (labels - y >= 12) {
                canvas.text(page.left() - 4, y + 4, 12, "end", Words.number(tick));
                labels = y;
            }
        }
        lines.forEach(this::path);
        key(title, lines.stream().filter(line -> !line.name.isEmpty()).toList());
    }

    private void scale(List<Line> lines) {
        for (Line line : lines) {
            for (Moment moment : moments) {
                line.value.apply(moment).ifPresent(value -> {
                    least = Math.min(least, value);
                    most = Math.max(most, value);
                });
            }
        }
        if (least > most) {
            least = 0;
            most = 1;
        }
        double span = Math.max(most - least, 0.5);
        step = Math.pow(10, Math.floor(Math.log10(span)));
        step *= span / step > 5 ? 2 : span / step > 2 ? 1 : 0.5;
        double bottom = least >= 0 ? 0 : Double.NEGATIVE_INFINITY;
        least = Math.max(bottom, Math.floor(least / step - 0.1) * step);
        most = Math.ceil(most / step + 0.1) * step;
    }

    private void path(Line line) {
        int every = Math.max(1, moments.size() / MOST_POINTS);
        StringBuilder path = new StringBuilder();
        boolean down = false;
        int stretch = -1;
        for (int i = 0; i < moments.size(); i++) {
            Moment moment = moments.get(i);
            boolean first = moment.dressed().stretch().fromMinute() != stretch;
            boolean last = i + 1 == moments.size()
                    || moments.get(i + 1).dressed().stretch()
                            != moment.dressed().stretch();
            if (i % every != 0 && !first && !last) {
                continue;
            }
            stretch = moment.dressed().stretch().fromMinute();
            Optional<Double> value = line.value.apply(moment);
            if (value.isPresent()) {
                double minute = first ? moment.minute() - 1 : moment.minute();
                path.append(down ? 'L' : 'M')
                        .append(Canvas.n(x(minute)))
                        .append(' ')
                        .append(Canvas.n(y(value.get())));
            }
            down = value.isPresent();
        }
        canvas.path(path, line.stroke.weight(), line.stroke.dash());
    }

    private void key(String title, List<Line> lines) {
        double y = top - 8 - (page.narrow() ? KEY_LINE * lines.size() : 0);
        double x = page.left();
        named(x, y, TextWidth.of(title, KEY_SIZE));
        canvas.boldText(x, y, KEY_SIZE, "start", title);
        x += page.narrow() ? 0 : TextWidth.of(title, KEY_SIZE) + 16;
        for (Line line : lines) {
            y += page.narrow() ? KEY_LINE : 0;
            double words = TextWidth.of(line.name, KEY_SIZE);
            named(x, y, 40 + words);
            canvas.line(x, y - 4, x + 34, y - 4, line.stroke.weight(), line.stroke.dash());
            canvas.text(x + 40, y, KEY_SIZE, "start", line.name);
            x += page.narrow() ? 0 : 40 + words + 18;
        }
    }

    /** Clears the ground for words. */
    private void named(double x, double y, double width) {
        canvas.box(x - 2, y - 13, width + 4, 17, "#fff", 0);
    }

    private double x(double minute) {
        return page.left() + page.width() * minute / moments.size();
    }

    private double y(double value) {
        return top + page.frame() * (most - value) / (most - least);
    }
}
