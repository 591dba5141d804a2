package campcloth.comfort;

import campcloth.comfort.CoursePanel.Line;
import campcloth.comfort.Reading.Value;
import campcloth.event.Spell;
import campcloth.figure.Canvas;
import campcloth.figure.TextWidth;
import campcloth.figure.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Draws a {@link Course} from the top down. */
final class CoursePicture {

    private static final double LINE = 19;
    private static final double SMALL = 13;
    private static final double SPELLS = 30;

    private final Course course;
    private final CoursePage page;
    private final Canvas canvas = new Canvas();
    private double y;

    CoursePicture(Course course, CoursePage page) {
        this.course = course;
        this.page = page;
    }

    double height() {
        return y + 10;
    }

    String drawn(String title, List<String> sentences) {
        double edge = page.narrow() ? page.right() : page.left();
        double letters = page.narrow() ? 15 : 19;
        y = 8;
        for (String line :
                TextWidth.lines(TextWidth.shortened(title, letters, 2 * page.width()), letters, page.width())) {
            y += letters + 3;
            canvas.text(edge, y, letters, "start", line);
        }
        y += 14;
        double top = y;
        y += SPELLS;
        Canvas over = new Canvas();
        frames(over);
        CourseBand band = new CourseBand(course, page, over);
        y = band.draw(y);
        new CourseSpells(course, page, canvas).draw(top, y);
        y = band.hours(y);
        y = band.legend(y);
        canvas.add(over);
        write(edge, page.narrow() ? names() : sentences);
        return canvas.drawn();
    }

    private List<String> names() {
        List<SpellNeeds> needs = course.needs();
        return IntStream.range(0, needs.size())
                .mapToObj(i -> {
                    Spell spell = needs.get(i).spell();
                    String hours = ": " + Words.number(spell.hours()) + " h";
                    double room = page.wholeWidth() - 2 * page.right() - TextWidth.of(hours, SMALL);
                    return TextWidth.shortened((i + 1) + " " + spell.name(), SMALL, room) + hours;
                })
                .toList();
    }

    private void write(double edge, List<String> sentences) {
        for (String sentence : sentences) {
            for (String line : TextWidth.lines(sentence, SMALL, page.wholeWidth() - edge - page.right())) {
                y += LINE;
                canvas.text(edge, y, SMALL, "start", line);
            }
        }
    }

    private void frames(Canvas over) {
        frame(
                over,
                "Air, degrees",
                List.of(new Line(
                        "",
                        Line.FULL,
                        m -> Optional.of(m.dressed().stretch().needs().spell().airC()))));
        frame(
                over,
                "Insulation, clo",
                List.of(
                        new Line(
                                "the clothing gives",
                                Line.FULL,
                                m -> value(m.dressed().givenClo())),
                        new Line(
                                "is needed to feel neutral",
                                Line.DASHED,
                                m -> value(m.dressed().stretch().needs().neededClo()))));
        frame(
                over,
                "Skin, degrees",
                List.of(
                        new Line("when working little", Line.FULL, m -> m.felt().map(Moment.Felt::skinC)),
                        new Line(
                                "below this too cold",
                                Line.DOTTED,
                                m -> m.felt().map(Moment.Felt::coldSkinC))));
        frame(
                over,
                "Wet skin, %",
                List.of(
                        new Line(
                                "with sweating, when working much",
                                Line.FULL,
                                m -> m.felt().map(f -> 100 * f.wettedness())),
                        new Line("wet clothing too", Line.DASHED, m -> m.felt().map(f -> 100 * f.wetness())),
                        new Line(
                                "above this too warm",
                                Line.DOTTED,
                                m -> m.felt().map(f -> 100 * f.comfortableWettedness()))));
    }

    private void frame(Canvas over, String title, List<Line> lines) {
        long named = lines.stream().filter(line -> !line.name().isEmpty()).count();
        y += page.gapAbove((int) named);
        new CoursePanel(course.moments(), page, y, over).draw(title, lines);
        y += page.frame();
    }

    private static Optional<Double> value(Reading reading) {
        return reading.inRange().map(Value::value);
    }
}
