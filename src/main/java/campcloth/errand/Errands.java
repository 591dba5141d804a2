package campcloth.errand;

import java.util.List;
import java.util.Optional;

/** The errands that are kept. Each method is one unit of work. */
public interface Errands {

    KeptErrand add(Errand errand);

    Optional<KeptErrand> byId(String id);

    /** The newest, newest first, so many at most. */
    List<KeptErrand> latest(int most);

    /** Removes one; whether it was there. */
    boolean remove(String id);
}
