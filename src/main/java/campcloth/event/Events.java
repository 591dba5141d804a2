package campcloth.event;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The events on file. Each method is one unit of work. An event that the asker may not read is as though it were not there; lists hold
 * their own and common ones, not those that are only shared with them.
 */
public interface Events {

    Optional<KeptEvent> byId(String id);

    /** Hands on the asker's own and common ones, the oldest first. */
    void each(Consumer<KeptEvent> each);

    /**
     * One page of them, the one that was changed last first.
     *
     * @param page counted from 0
     */
    Page latest(int page, int size);

    KeptEvent add(Event event);

    /** Replaces an event if it still has the version expected. A marshal with its link may replace its rules alone. */
    Change replace(String id, long expectedVersion, Event event);

    /** Removes an event if it still has the version expected. */
    Change remove(String id, long expectedVersion);

    /** The rules as they stood at a version of the event; empty where there is no such event or version. */
    Optional<KeptRules> rulesAt(String id, long version);

    /**
     * The versions of an event's rules; empty where there is no such event.
     *
     * @param most how many versions to list at most
     */
    Optional<RulesHistory> rulesHistory(String id, int most);

    /**
     * A page of events.
     *
     * @param events the events
     * @param total how many are listed in all
     */
    record Page(List<KeptEvent> events, long total) {

        public Page {
            events = List.copyOf(events);
        }
    }

    /** How a change went. */
    sealed interface Change {
        /** Done; the event as it stands now (as it last stood where it was removed). */
        record Done(KeptEvent event) implements Change {}

        /** Somebody changed it in between. */
        record Stale(long actualVersion) implements Change {}

        /** There is no such event. */
        record Missing() implements Change {}
    }
}
