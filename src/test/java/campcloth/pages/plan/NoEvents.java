package campcloth.pages.plan;

import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.KeptRules;
import campcloth.event.RulesHistory;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Nothing on file; to keep something is a fault of whoever is tested, and fails the test. */
final class NoEvents implements Events {

    @Override
    public Optional<KeptEvent> byId(String id) {
        return Optional.empty();
    }

    @Override
    public void each(Consumer<KeptEvent> each) {
        // none
    }

    @Override
    public Page latest(int page, int size) {
        return new Page(List.of(), 0);
    }

    @Override
    public KeptEvent add(Event event) {
        throw new AssertionError("whoever reads a form keeps no event");
    }

    @Override
    public Change replace(String id, long expectedVersion, Event event) {
        return new Change.Missing();
    }

    @Override
    public Change remove(String id, long expectedVersion) {
        return new Change.Missing();
    }

    @Override
    public Optional<KeptRules> rulesAt(String id, long version) {
        return Optional.empty();
    }

    @Override
    public Optional<RulesHistory> rulesHistory(String id, int most) {
        return Optional.empty();
    }
}
