package campcloth.errand;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The errands that are kept. Each method is one unit of work. An errand that the asker may not read is as though it were not there. */
public interface Errands {

    KeptErrand add(Errand errand);

    Optional<KeptErrand> byId(String id);

    /** The newest of the asker's own and common ones, newest first, so many at most. */
    List<KeptErrand> latest(int most);

    /** Hands out all of those, oldest first, a few in memory at a time. */
    void each(Consumer<KeptErrand> each);

    /** Removes one; whether it was there. */
    boolean remove(String id);
}
