package campcloth.comfort;

import static campcloth.figure.Words.fixed;
import static campcloth.figure.Words.number;

import campcloth.comfort.Course.InSpell;
import campcloth.event.Spell;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The course of an event in plain sentences. */
public final class CourseWords {

    private static final double LEAST_TOLD_H = 0.1;

    private CourseWords() {}

    /** The whole event first, then its worst quarter-hours where they lie beyond comfort. */
    public static List<String> summary(Course course) {
        List<String> words = new ArrayList<>();
        words.add("Of " + hours(course.hours()) + " h: too cold " + hours(course.hoursTooCold()) + " h, too warm "
                + hours(course.hoursTooWarm()) + " h, comfortable " + hours(course.hoursInComfort()) + " h"
                + (course.hoursNotComputed() > 0 ? ", not computed " + hours(course.hoursNotComputed()) + " h." : "."));
        beyondComfort(course.coldest()).ifPresent(q -> words.add("Coldest quarter-hour: " + words(q)));
        beyondComfort(course.warmest()).ifPresent(q -> words.add("Most sweating quarter-hour: " + words(q)));
        if (course.hoursByInsulationAlone() > 0) {
            words.add("For " + hours(course.hoursByInsulationAlone())
                    + " h the body model does not hold: cold is judged by insulation alone, sweating not at all.");
        }
        if (course.beyondBearing()) {
            words.add(
                    "Nobody can go on so all the time: stop, cool down or warm up long before. The curves stand still where the body"
                            + " reaches its limit.");
        }
        return words;
    }

    private static Optional<QuarterHour> beyondComfort(Optional<QuarterHour> worst) {
        return worst.filter(quarter -> quarter.beyond() > 0);
    }

    /** One spell, after its number. */
    static String spell(int number, InSpell in) {
        Spell spell = in.needs().spell();
        String head = number + " " + spell.name() + ": " + number(spell.hours()) + " h, " + number(spell.airC())
                + " degrees Celsius, " + lower(spell.activity())
                + spell.wetting().map(wet -> " in " + lower(wet) + " clothes").orElse("") + ". ";
        Optional<String> unknown = in.notComputed().map(why -> "The body is not followed: " + why + ".");
        String cold = in.hoursTooCold() > 0 ? "Too cold for " + hours(in.hoursTooCold()) + " h. " : "";
        String warm = in.hoursTooWarm() > 0 ? "Too warm for " + hours(in.hoursTooWarm()) + " h. " : "";
        String rest = cold.isEmpty() && warm.isEmpty() && unknown.isEmpty() ? "Comfortable." : "";
        return (head + cold + warm + rest + unknown.orElse("")).strip();
    }

    /** A quarter-hour: when, and by how much. */
    public static String words(QuarterHour quarter) {
        String when = "\"" + quarter.spell() + "\", " + hours(quarter.fromMinute() / 60.0) + " h after the begin: ";
        double beyond = Math.abs(quarter.beyond());
        boolean outside = quarter.beyond() > 0;
        return when
                + switch (quarter.measure()) {
                    case SKIN ->
                        fixed(beyond, 1) + " K " + (outside ? "colder than" : "above")
                                + " what is still bearable to the skin.";
                    case INSULATION ->
                        fixed(beyond, 2) + " clo " + (outside ? "too little" : "more than the least there must be")
                                + ".";
                    case WETTEDNESS ->
                        fixed(beyond, 0) + " % of the skin " + (outside ? "wetter" : "less wet")
                                + " than is comfortable.";
                };
    }

    private static String lower(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }

    private static String hours(double hours) {
        return hours > 0 && hours < LEAST_TOLD_H
                ? "less than " + fixed(LEAST_TOLD_H, 1)
                : fixed(Math.round(hours * 10) / 10.0, 1);
    }
}
