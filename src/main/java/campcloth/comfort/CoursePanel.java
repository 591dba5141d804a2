package campcloth.comfort;

import campcloth.figure.SvgText;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** One frame of the drawing of a course: lines over the same hours, each with its own stroke, named above the frame. */
final class CoursePanel {

    private static final double KEY_SIZE = 13;
    private static final double CHARACTER = 0.56;
    private static final int MOST_POINTS = 700;

    /**
     * A line.
     *
     * @param name in words
     * @param stroke attributes that tell it from the others in print
     * @param value its value; empty where there is none
     */
    record Line(String name, String stroke, Function<Moment, Optional<Double>> value) {}

    private final List<Moment> moments;
    private final double left;
    private final double width;
    private final double top;
    private final double height;
    private double least = Double.POSITIVE_INFINITY;
    private double most = Double.NEGATIVE_INFINITY;
    private double step = 1;

    CoursePanel(List<Moment> moments, double left, double width, double top, double height) {
        this.moments = moments;
        this.left = left;
        this.width = width;
        this.top = top;
        this.height = height;
    }

    String drawn(String title, List<Line> lines) {
        scale(lines);
        StringBuilder svg = new StringBuilder("<g>");
        svg.append("<rect x=\"" + n(left) + "\" y=\"" + n(top) + "\" width=\"" + n(width) + "\" height=\"" + n(height)
                + "\" fill=\"none\" stroke=\"#000\" stroke-width=\"1\"/>\n");
        for (double tick = least; tick <= most + step / 1000; tick += step) {
            double y = y(tick);
            svg.append("<path d=\"M" + n(left) + " " + n(y) + "h" + n(width)
                    + "\" stroke=\"#ccc\" stroke-width=\"0.6\"/>");
            svg.append(text(left - 6, y + 4, 12, "end", Words.number(tick)));
        }
        for (Line line : lines) {
            path(line, svg);
        }
        return svg.append(key(title, lines)).append("</g>\n").toString();
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

    private void path(Line line, StringBuilder svg) {
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
                path.append(down ? 'L' : 'M').append(n(x(minute))).append(' ').append(n(y(value.get())));
            }
            down = value.isPresent();
        }
        svg.append("<path d=\"" + path + "\" fill=\"none\" stroke=\"#000\" stroke-linejoin=\"round\" " + line.stroke
                + "/>\n");
    }

    private String key(String title, List<Line> lines) {
        StringBuilder svg = new StringBuilder();
        double y = top - 8;
        svg.append("<text x=\"" + n(left) + "\" y=\"" + n(y) + "\" font-size=\"" + n(KEY_SIZE)
                + "\" font-weight=\"bold\">" + SvgText.of(title) + "</text>");
        double x = left + title.length() * CHARACTER * KEY_SIZE * 1.1 + 16;
        List<String> parts = new ArrayList<>();
        for (Line line : lines) {
            if (line.name.isEmpty()) {
                continue;
            }
            parts.add("<path d=\"M" + n(x) + " " + n(y - 4) + "h34\" fill=\"none\" stroke=\"#000\" " + line.stroke
                    + "/>" + text(x + 40, y, KEY_SIZE, "start", line.name));
            x += 40 + line.name.length() * CHARACTER * KEY_SIZE + 18;
        }
        String ground = "<rect x=\"" + n(left) + "\" y=\"" + n(y - 13) + "\" width=\"" + n(x - left)
                + "\" height=\"17\" fill=\"#fff\"/>";
        return ground + svg.append(String.join("", parts)).append('\n');
    }

    private double x(double minute) {
        return left + width * minute / moments.size();
    }

    private double y(double value) {
        return top + height * (most - value) / (most - least);
    }

    static String text(double x, double y, double size, String anchor, String words) {
        return "<text x=\"" + n(x) + "\" y=\"" + n(y) + "\" font-size=\"" + n(size) + "\" text-anchor=\"" + anchor
                + "\">" + SvgText.of(words) + "</text>\n";
    }

    static String n(double value) {
        return Words.fixed(value, 1);
    }
}
