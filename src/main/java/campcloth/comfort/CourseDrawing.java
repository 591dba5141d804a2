package campcloth.comfort;

import static campcloth.comfort.CoursePanel.n;
import static campcloth.comfort.CoursePanel.text;

import campcloth.comfort.Course.InSpell;
import campcloth.comfort.CoursePanel.Line;
import campcloth.comfort.Reading.Value;
import campcloth.figure.SvgText;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The course of an event drawn: an SVG picture in black on white that is read in print as on a screen. Four frames over the
 * same hours: air, insulation needed against given, skin temperature, wet skin; below them a band that says too cold,
 * comfortable, too warm or not computed by words and by hatching; then every spell in a sentence. Title and description say the
 * same in words.
 */
public final class CourseDrawing {

    private static final double LEFT = 64;
    private static final double WIDTH = 860;
    private static final double RIGHT = 26;
    private static final double FRAME = 92;
    private static final double GAP = 34;
    private static final double BAND = 34;
    private static final double LINE = 19;
    private static final double SMALL = 13;
    private static final double CHARACTER = 0.56;
    private static final int LONGEST_LINE = 122;

    private static final String FULL = "stroke-width=\"2.2\"";
    private static final String DASHED = "stroke-width=\"1.8\" stroke-dasharray=\"8 4\"";
    private static final String DOTTED = "stroke-width=\"1.6\" stroke-dasharray=\"1.5 4\" stroke-linecap=\"round\"";

    private final Course course;
    private final List<InSpell> spells;
    private final StringBuilder svg = new StringBuilder();
    private double y;

    private CourseDrawing(Course course) {
        this.course = course;
        this.spells = course.spells();
    }

    /** The drawing as a whole SVG document. */
    public static String svg(Course course, String title) {
        return new CourseDrawing(course).drawn(title);
    }

    private String drawn(String title) {
        List<String> lines = wrapped(sentences());
        double height = 96 + 4 * (FRAME + GAP) + BAND + 92 + LINE * lines.size() + 24;
        svg.append(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"title desc\" viewBox=\"0 0 "
                        + n(LEFT + WIDTH + RIGHT) + " " + n(height) + "\" font-family=\"sans-serif\" fill=\"#000\">\n");
        svg.append("<title id=\"title\">" + SvgText.of(title) + "</title>\n");
        svg.append("<desc id=\"desc\">" + SvgText.of(String.join(" ", sentences())) + "</desc>\n");
        svg.append(patterns());
        svg.append("<rect width=\"" + n(LEFT + WIDTH + RIGHT) + "\" height=\"" + n(height) + "\" fill=\"#fff\"/>\n");
        svg.append(text(LEFT, 28, 19, "start", shortened(title, 88)));
        y = 50;
        drawSpells(4 * (FRAME + GAP) + BAND + 38);
        y = 96;
        frames();
        band();
        hours();
        legend();
        for (String line : lines) {
            svg.append(text(LEFT, y, SMALL, "start", line));
            y += LINE;
        }
        return svg.append("</svg>\n").toString();
    }

    private List<String> sentences() {
        List<String> sentences = new ArrayList<>(CourseWords.summary(course));
        for (int i = 0; i < spells.size(); i++) {
            sentences.add(CourseWords.spell(i + 1, spells.get(i)));
        }
        return sentences;
    }

    private void frames() {
        frame(
                "Air, degrees",
                List.of(new Line(
                        "",
                        FULL,
                        m -> Optional.of(m.dressed().stretch().needs().spell().airC()))));
        frame(
                "Insulation, clo",
                List.of(
                        new Line(
                                "the clothing gives",
                                FULL,
                                m -> value(m.dressed().givenClo())),
                        new Line(
                                "is needed to feel neutral",
                                DASHED,
                                m -> value(m.dressed().stretch().needs().neededClo()))));
        frame(
                "Skin, degrees",
                List.of(
                        new Line("when working little", FULL, m -> m.felt().map(Moment.Felt::skinC)),
                        new Line("below this too cold", DOTTED, m -> m.felt().map(Moment.Felt::coldSkinC))));
        frame(
                "Wet skin, %",
                List.of(
                        new Line(
                                "with sweating, when working much",
                                FULL,
                                m -> m.felt().map(f -> 100 * f.wettedness())),
                        new Line("wet clothing too", DASHED, m -> m.felt().map(f -> 100 * f.wetness())),
                        new Line(
                                "above this too warm",
                                DOTTED,
                                m -> m.felt().map(f -> 100 * f.comfortableWettedness()))));
    }

    private void frame(String title, List<Line> lines) {
        svg.append(new CoursePanel(course.moments(), LEFT, WIDTH, y, FRAME).drawn(title, lines));
        y += FRAME + GAP;
    }

    private static Optional<Double> value(Reading reading) {
        return reading.inRange().map(Value::value);
    }

    /** Names above, a line through all frames at every change. */
    private void drawSpells(double depth) {
        double hours =
                spells.stream().mapToDouble(s -> s.needs().spell().hours()).sum();
        double from = 0;
        for (int i = 0; i < spells.size(); i++) {
            double to = from + spells.get(i).needs().spell().hours();
            double left = LEFT + WIDTH * from / hours;
            double right = LEFT + WIDTH * to / hours;
            String name = (i + 1) + " " + spells.get(i).needs().spell().name();
            int room = (int) ((right - left - 6) / (CHARACTER * SMALL));
            String number = (i + 1) + "";
            String words = name.length() <= room
                    ? name
                    : room >= 8 ? shortened(name, room) : room >= number.length() ? number : "";
            svg.append(text((left + right) / 2, y + 12, SMALL, "middle", words));
            svg.append("<path d=\"M" + n(left + 2) + " " + n(y + 18) + "H" + n(right - 2)
                    + "\" stroke=\"#000\" stroke-width=\"1.4\"/>\n");
            if (i > 0) {
                svg.append("<path d=\"M" + n(left) + " " + n(y) + "v" + n(depth)
                        + "\" stroke=\"#777\" stroke-width=\"0.9\"/>\n");
            }
            from = to;
        }
    }

    private void band() {
        svg.append("<text x=\"" + n(LEFT) + "\" y=\"" + n(y - 8) + "\" font-size=\"" + n(SMALL)
                + "\" font-weight=\"bold\">How it feels</text>\n");
        List<Moment> moments = course.moments();
        int begin = 0;
        for (int i = 1; i <= moments.size(); i++) {
            Feeling feeling = Feeling.of(moments.get(begin));
            if (i == moments.size() || Feeling.of(moments.get(i)) != feeling) {
                block(begin, i, feeling);
                begin = i;
            }
        }
    }

    private void block(int from, int to, Feeling feeling) {
        double scale = WIDTH / course.moments().size();
        double width = (to - from) * scale;
        double left = LEFT + from * scale;
        svg.append("<rect x=\"" + n(left) + "\" y=\"" + n(y) + "\" width=\"" + n(width) + "\" height=\"" + n(BAND)
                + "\" fill=\"" + fill(feeling) + "\" stroke=\"#000\" stroke-width=\"0.8\"/>\n");
        double words = feeling.words().length() * CHARACTER * SMALL + 8;
        if (words <= width) {
            svg.append("<rect x=\"" + n(left + (width - words) / 2) + "\" y=\"" + n(y + 8) + "\" width=\"" + n(words)
                    + "\" height=\"18\" fill=\"#fff\"/>");
            svg.append(text(left + width / 2, y + 21, SMALL, "middle", feeling.words()));
        }
    }

    private void hours() {
        y += BAND;
        int step = 1;
        while (course.hours() / step > 14) {
            step *= step == 1 ? 3 : 2;
        }
        for (int hour = 0; hour <= course.hours() + 1e-9; hour += step) {
            double x = LEFT + WIDTH * hour / course.hours();
            svg.append("<path d=\"M" + n(x) + " " + n(y) + "v5\" stroke=\"#000\"/>");
            svg.append(text(x, y + 18, 12, "middle", hour + ""));
        }
        svg.append(text(LEFT + WIDTH / 2, y + 34, SMALL, "middle", "hours after the begin"));
        y += 46;
    }

    private void legend() {
        double x = LEFT;
        for (Feeling feeling : Feeling.values()) {
            svg.append("<rect x=\"" + n(x) + "\" y=\"" + n(y) + "\" width=\"22\" height=\"14\" fill=\"" + fill(feeling)
                    + "\" stroke=\"#000\" stroke-width=\"0.8\"/>");
            svg.append(text(x + 28, y + 12, SMALL, "start", feeling.words()));
            x += 28 + feeling.words().length() * CHARACTER * SMALL + 18;
        }
        y += 46;
    }

    private static String fill(Feeling feeling) {
        return switch (feeling) {
            case TOO_COLD -> "url(#cold)";
            case TOO_WARM -> "url(#warm)";
            case TOO_COLD_AND_TOO_WARM -> "url(#both)";
            case COMFORTABLE -> "#fff";
            case NOT_COMPUTED -> "url(#unknown)";
        };
    }

    private static String patterns() {
        return "<defs>" + pattern("cold", "M0 4H8") + pattern("warm", "M0 8L8 0") + pattern("both", "M0 4H8M4 0V8")
                + "<pattern id=\"unknown\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\">"
                + "<circle cx=\"4\" cy=\"4\" r=\"0.9\"/></pattern></defs>\n";
    }

    private static String pattern(String id, String path) {
        return "<pattern id=\"" + id + "\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\"><path d=\"" + path
                + "\" stroke=\"#000\" stroke-width=\"1\" fill=\"none\"/></pattern>";
    }

    private static List<String> wrapped(List<String> sentences) {
        List<String> lines = new ArrayList<>();
        for (String sentence : sentences) {
            String rest = sentence;
            while (rest.length() > LONGEST_LINE) {
                int blank = rest.lastIndexOf(' ', LONGEST_LINE);
                int cut = Words.cut(rest, blank > LONGEST_LINE / 2 ? blank : LONGEST_LINE);
                lines.add(rest.substring(0, cut));
                rest = "    " + rest.substring(cut).strip();
            }
            lines.add(rest);
        }
        return lines;
    }

    private static String shortened(String words, int most) {
        return words.length() <= most ? words : words.substring(0, Words.cut(words, Math.max(1, most - 1))) + "\u2026";
    }
}
