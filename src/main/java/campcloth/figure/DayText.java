package campcloth.figure;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.regex.Pattern;

/** Days and times of day as they are written: year, month and day, hours and minutes, as in ISO 8601, with four digits of the year. */
public final class DayText {

    private static final Pattern FORM = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

    private DayText() {}

    /** The day; empty where nothing was written. */
    public static Optional<LocalDate> day(String field, Optional<String> text) {
        return text.map(written -> day(field, written));
    }

    /** The time of day, by the sun; empty where nothing was written. */
    public static Optional<LocalTime> solarTime(String field, Optional<String> text) {
        return text.map(written -> solarTime(field, written));
    }

    private static LocalDate day(String field, String text) {
        try {
            if (FORM.matcher(text).matches()) {
                return LocalDate.parse(text);
            }
        } catch (DateTimeException noSuchDay) {
            throw refused(field, text);
        }
        throw refused(field, text);
    }

    private static Refused refused(String field, String text) {
        return Refused.of(field, Words.quoted(text) + " is not a day", "write year, month and day such as 2027-07-16");
    }

    private static LocalTime solarTime(String field, String text) {
        try {
            return LocalTime.parse(text);
        } catch (DateTimeException none) {
            throw Refused.of(field, "is no time of day", "write hours and minutes of solar time, as 13:30");
        }
    }
}
