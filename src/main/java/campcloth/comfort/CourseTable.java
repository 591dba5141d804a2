package campcloth.comfort;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The course of an event as a table: what its drawing shows, spell by spell, in figures and sentences. */
public final class CourseTable {

    private CourseTable() {}

    /**
     * A spell. A minute can be too cold for one who works little and too warm for one who works much; so the hours of all four
     * kinds together can be more than the spell has.
     *
     * @param number from 1
     * @param name of the spell
     * @param hours how long it lasts
     * @param hoursTooCold for one who works little
     * @param hoursTooWarm for one who works much
     * @param hoursComfortable neither
     * @param hoursNotComputed of which nothing can be said
     * @param sentence the same in words
     * @param worst its coldest and its most sweating quarter-hour, where they lie beyond comfort, a sentence each
     */
    public record Row(
            int number,
            String name,
            double hours,
            double hoursTooCold,
            double hoursTooWarm,
            double hoursComfortable,
            double hoursNotComputed,
            String sentence,
            List<String> worst) {}

    /** The spells in their order. */
    public static List<Row> rows(Course course) {
        List<Course> parts = course.parts();
        List<Course.InSpell> spells = course.spells();
        return IntStream.range(0, parts.size())
                .mapToObj(i -> row(i + 1, parts.get(i), spells.get(i)))
                .toList();
    }

    private static Row row(int number, Course part, Course.InSpell spell) {
        return new Row(
                number,
                spell.needs().spell().name(),
                part.hours(),
                part.hoursTooCold(),
                part.hoursTooWarm(),
                part.hoursInComfort(),
                part.hoursNotComputed(),
                CourseWords.spell(number, spell),
                Stream.of(part.coldest(), part.warmest())
                        .flatMap(quarter -> quarter.stream())
                        .filter(quarter -> quarter.beyond() > 0)
                        .map(CourseWords::words)
                        .toList());
    }
}
