package campcloth.store;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.Shares;
import campcloth.cloth.Cloths;
import campcloth.errand.Errands;
import campcloth.event.Events;
import campcloth.plan.Plans;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;

/** Where things of every kind are kept, and whoever asks for them. */
abstract class KeptThings {

    @Autowired
    Askers askers;

    @Autowired
    Shares shares;

    @Autowired
    Cloths cloths;

    @Autowired
    Events events;

    @Autowired
    Plans plans;

    @Autowired
    Errands errands;

    OwnedThings things;

    @BeforeEach
    void ofEveryKind() {
        things = new OwnedThings(cloths, events, plans, errands);
    }

    <T> T ask(Asker asker, Supplier<T> work) {
        return askers.as(asker, work);
    }
}
