package campcloth.event;

import campcloth.figure.Refused;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The days of an event.
 *
 * @param startsOn its first day
 * @param endsOn its last day, the first day itself at the earliest
 */
public record EventDates(LocalDate startsOn, LocalDate endsOn) {

    public EventDates {
        if (endsOn.isBefore(startsOn)) {
            throw Refused.of("endsOn", "is " + endsOn + ", before startsOn", "give " + startsOn + " or a later day");
        }
    }

    /** The days as they were told: the first alone is the last as well; refuses a last day alone. */
    public static Optional<EventDates> told(Optional<LocalDate> first, Optional<LocalDate> last) {
        if (first.isEmpty() && last.isPresent()) {
            throw Refused.of("startsOn", "is missing beside endsOn", "give the first day too, or neither");
        }
        return first.map(day -> new EventDates(day, last.orElse(day)));
    }
}
