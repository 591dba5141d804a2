package campcloth.rest;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Days as they stand in bodies: year, month, day as in ISO 8601, with four digits of the year. */
final class DayText {

    private static final Pattern FORM = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

    private DayText() {}

    /** The day; empty where nothing was sent. */
    static Optional<LocalDate> day(String field, @Nullable String text) {
        if (text == null) {
            return Optional.empty();
        }
        try {
            if (FORM.matcher(text).matches()) {
                return Optional.of(LocalDate.parse(text));
            }
        } catch (DateTimeException noSuchDay) {
            throw refused(field, text);
        }
        throw refused(field, text);
    }

    private static Refused refused(String field, String text) {
        return Refused.of(field, Words.quoted(text) + " is not a day", "write year, month and day such as 2027-07-16");
    }
}
