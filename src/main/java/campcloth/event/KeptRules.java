package campcloth.event;

import java.time.Instant;
import java.util.List;

/**
 * The rules of an event as they stood at one of its versions.
 *
 * @param eventId whose rules they are
 * @param version version of the event
 * @param keptAt when that version was written
 * @param rules the rules, may be none
 */
public record KeptRules(String eventId, long version, Instant keptAt, List<SafetyRule> rules) {

    public KeptRules {
        rules = List.copyOf(rules);
    }
}
