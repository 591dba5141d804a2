package campcloth.errand;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The errands that are kept. Each method is one unit of work. */
public interface Errands {

    KeptErrand add(Errand errand);

    Optional<KeptErrand> byId(String id);

    /** The newest, newest first, so many at most. */
    List<KeptErrand> latest(int most);

    /** Hands out all of them, oldest first, a few in memory at a time. */
    void each(Consumer<KeptErrand> each);

    /** Removes one; whether it was there. */
    boolean remove(String id);
}
