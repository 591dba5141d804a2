package campcloth.comfort;

import campcloth.figure.Canvas;
import campcloth.figure.SvgDocument;
import campcloth.figure.TextWidth;
import java.util.List;

/** The band that says how it feels, the hours below it and what its hatchings mean. */
final class CourseBand {

    private static final double SMALL = 13;
    private static final double BAND = 34;

    private final Course course;
    private final CoursePage page;
    private final Canvas canvas;

    CourseBand(Course course, CoursePage page, Canvas canvas) {
        this.course = course;
        this.page = page;
        this.canvas = canvas;
    }

    /** Gives where it ends. */
    double draw(double above) {
        double top = above + page.gap();
        canvas.box(page.left(), top - 20, TextWidth.of("How it feels", SMALL) + 4, 17, "#fff", 0);
        canvas.boldText(page.left(), top - 8, SMALL, "start", "How it feels");
        List<Moment> moments = course.moments();
        int begin = 0;
        for (int i = 1; i <= moments.size(); i++) {
            Feeling feeling = Feeling.of(moments.get(begin));
            if (i == moments.size() || Feeling.of(moments.get(i)) != feeling) {
                block(top, begin, i, feeling);
                begin = i;
            }
        }
        return top + BAND;
    }

    private void block(double top, int from, int to, Feeling feeling) {
        double scale = page.width() / course.moments().size();
        double width = (to - from) * scale;
        double left = page.left() + from * scale;
        canvas.box(left, top, width, BAND, fill(feeling), 0.8);
        double words = TextWidth.of(feeling.words(), SMALL) + 4;
        if (words <= width) {
            canvas.box(left + (width - words) / 2, top + 8, words, 18, "#fff", 0);
            canvas.text(left + width / 2, top + 21, SMALL, "middle", feeling.words());
        }
    }

    double hours(double top) {
        int step = 1;
        while (course.hours() / step > page.mostHours()) {
            step *= step == 1 ? 3 : 2;
        }
        for (int hour = 0; hour <= course.hours() + 1e-9; hour += step) {
            double x = page.left() + page.width() * hour / course.hours();
            canvas.line(x, top, x, top + 5, 1, Canvas.SOLID);
            canvas.text(x, top + 18, 12, "middle", Integer.toString(hour));
        }
        canvas.text(page.left() + page.width() / 2, top + 34, SMALL, "middle", "hours after the begin");
        return top + 46;
    }

    double legend(double top) {
        double x = page.narrow() ? page.right() : page.left();
        double y = top;
        for (Feeling feeling : Feeling.values()) {
            canvas.box(x, y, 22, 14, fill(feeling), 0.8);
            canvas.text(x + 28, y + 12, SMALL, "start", feeling.words());
            if (page.narrow()) {
                y += 19;
            } else {
                x += 28 + TextWidth.of(feeling.words(), SMALL) + 18;
            }
        }
        return page.narrow() ? y : y + 24;
    }

    private static String fill(Feeling feeling) {
        return switch (feeling) {
            case TOO_COLD -> SvgDocument.LEVEL;
            case TOO_WARM -> SvgDocument.RISING;
            case TOO_COLD_AND_TOO_WARM -> SvgDocument.CROSSED;
            case COMFORTABLE -> "#fff";
            case NOT_COMPUTED -> SvgDocument.DOTS;
        };
    }
}
