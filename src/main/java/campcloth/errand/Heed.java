package campcloth.errand;

import campcloth.advice.Warning;
import java.util.List;

/**
 * What to heed about a garment of one cloth at an event.
 *
 * @param warnings about this cloth and this event: what says STOP first, then CAUTION, then NOTE
 * @param fires how the cloth stands at each fire of the event, in the order of its spells
 * @param event what holds at the event whichever cloth is worn, first aid included
 * @param making what to mind when it is cut and sewn
 */
public record Heed(List<Warning> warnings, List<AtTheFire> fires, List<String> event, List<String> making) {

    public Heed {
        warnings = List.copyOf(warnings);
        fires = List.copyOf(fires);
        event = List.copyOf(event);
        making = List.copyOf(making);
    }
}
