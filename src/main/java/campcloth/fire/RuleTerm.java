package campcloth.fire;

import campcloth.event.EventDates;
import campcloth.event.Provenance;
import java.util.Optional;

/** Whether a rule's term covers the event. A rule holds whatever its dates say; they can only raise a question. */
final class RuleTerm {

    private static final String APPLIED = ": it is applied all the same; ask for the one that holds.";

    private RuleTerm() {}

    /** The question that its dates raise; empty where they raise none. */
    static Optional<String> question(Provenance rule, Optional<EventDates> event) {
        if (!rule.hasTerm()) {
            return Optional.empty();
        }
        if (event.isEmpty()) {
            return Optional.of("Its term is " + words(rule) + " and the event has no date" + APPLIED);
        }
        EventDates days = event.get();
        Optional<String> late = rule.validFrom()
                .filter(from -> from.isAfter(days.startsOn()))
                .map(from -> "Its term begins on " + from + ", after the event begins" + APPLIED);
        return rule.validUntil()
                .filter(until -> until.isBefore(days.endsOn()))
                .map(until -> "Its term ended on " + until + ", before the event "
                        + (until.isBefore(days.startsOn()) ? "begins" : "ends") + APPLIED)
                .or(() -> late);
    }

    private static String words(Provenance rule) {
        String from = rule.validFrom().map(day -> "from " + day).orElse("");
        String until = rule.validUntil().map(day -> "until " + day).orElse("");
        return (from + " " + until).strip();
    }
}
