package campcloth.comfort;

import campcloth.event.Spell;
import campcloth.figure.Canvas;
import campcloth.figure.TextWidth;

/** The spells along the hours: a number, the name where there is room, a line through all frames at every change. */
final class CourseSpells {

    private static final double SMALL = 13;

    private final Course course;
    private final CoursePage page;
    private final Canvas canvas;

    CourseSpells(Course course, CoursePage page, Canvas canvas) {
        this.course = course;
        this.page = page;
        this.canvas = canvas;
    }

    void draw(double top, double bottom) {
        double hours =
                course.needs().stream().mapToDouble(n -> n.spell().hours()).sum();
        double from = 0;
        for (int i = 0; i < course.needs().size(); i++) {
            Spell spell = course.needs().get(i).spell();
            double left = page.left() + page.width() * from / hours;
            from += spell.hours();
            double right = page.left() + page.width() * from / hours;
            String words = words(i + 1, spell.name(), right - left - 4);
            if (!words.isEmpty()) {
                canvas.text((left + right) / 2, top + 12, SMALL, "middle", words);
            }
            canvas.line(left + Math.min(2, (right - left) / 4), top + 18, right, top + 18, 1.4, Canvas.SOLID);
            if (i > 0) {
                canvas.shape(Canvas.segment(left, top, left, bottom), "none", "#777", 0.9);
            }
        }
    }

    private String words(int number, String name, double room) {
        String alone = Integer.toString(number);
        String whole = number + " " + name;
        if (!page.narrow() && room >= 8 * SMALL * 0.6) {
            return TextWidth.shortened(whole, SMALL, room);
        }
        return TextWidth.of(alone, SMALL) <= room ? alone : "";
    }
}
