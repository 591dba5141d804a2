package campcloth.garment;

import java.util.List;
import java.util.Optional;

/**
 * Whether a garment goes on, and what can still be changed at a try-on.
 *
 * @param opening the opening that the body must pass, where there is one
 * @param rooms what each group of seams can still give or take
 */
public record Fitting(Optional<Opening> opening, List<SeamRoom> rooms) {

    /** Nothing to pass and nothing to change. */
    public static final Fitting NONE = new Fitting(Optional.empty(), List.of());

    public Fitting {
        rooms = List.copyOf(rooms);
    }
}
