package campcloth.comfort;

import campcloth.comfort.Course.InSpell;
import campcloth.figure.SvgDocument;
import java.util.ArrayList;
import java.util.List;

/**
 * The course of an event drawn: an SVG picture in black on white that is read in print as on a screen. Four frames over the
 * same hours: air, insulation needed against given, skin temperature, wet skin; below them a band that says too cold,
 * comfortable, too warm or not computed by words and by hatching; then every spell in a sentence. Title and description say the
 * same in words, and so does {@link CourseTable}.
 */
public final class CourseDrawing {

    private CourseDrawing() {}

    /** For paper and wide screens. */
    public static String svg(Course course, String title) {
        return svg(course, title, CoursePage.WIDE);
    }

    /** For phones: as much in less width, the spells by name only. */
    public static String narrowSvg(Course course, String title) {
        return svg(course, title, CoursePage.NARROW);
    }

    private static String svg(Course course, String title, CoursePage page) {
        List<String> sentences = sentences(course);
        CoursePicture picture = new CoursePicture(course, page);
        String drawn = picture.drawn(title, sentences);
        return new SvgDocument(title, String.join(" ", sentences))
                .hatchings(8)
                .of(0, 0, page.wholeWidth(), picture.height(), drawn);
    }

    private static List<String> sentences(Course course) {
        List<String> sentences = new ArrayList<>(CourseWords.summary(course));
        List<InSpell> spells = course.spells();
        for (int i = 0; i < spells.size(); i++) {
            sentences.add(CourseWords.spell(i + 1, spells.get(i)));
        }
        return sentences;
    }
}
