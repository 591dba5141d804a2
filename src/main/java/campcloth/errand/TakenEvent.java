package campcloth.errand;

import campcloth.event.Event;
import campcloth.event.KeptEvent;
import java.util.Optional;

/**
 * The event of an errand as it stood when the errand was kept: what changes on file later does not change it.
 *
 * @param event the event
 * @param onFile which event on file it was taken from; empty where it was told with the errand
 */
public record TakenEvent(Event event, Optional<OnFile> onFile) {

    /**
     * An event on file at one of its versions.
     *
     * @param id how it is named in addresses
     * @param version which of its versions
     */
    public record OnFile(String id, long version) {}

    /** One on file, as it stands. */
    public static TakenEvent of(KeptEvent kept) {
        return new TakenEvent(kept.event(), Optional.of(new OnFile(kept.id(), kept.version())));
    }

    /** One that was told with the errand. */
    public static TakenEvent told(Event event) {
        return new TakenEvent(event, Optional.empty());
    }
}
