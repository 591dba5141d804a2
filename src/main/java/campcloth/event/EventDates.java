package campcloth.event;

import campcloth.figure.Refused;
import java.time.LocalDate;

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
}
