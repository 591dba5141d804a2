package campcloth.event;

import campcloth.figure.Range;
import java.time.LocalTime;
import java.util.Optional;

/**
 * What somebody said of the sky over a spell.
 *
 * @param startsAt when the spell starts, local solar time: the sun is highest at 12:00
 * @param cloudPercent share of the sky that clouds cover; an eighth (octa) is 12.5
 * @param shelter what is over the wearer; the open is presumed
 */
public record Sky(Optional<LocalTime> startsAt, Optional<Double> cloudPercent, Optional<Shelter> shelter) {

    private static final Range CLOUD = new Range("cloudPercent", 0, 100, "%");

    /** Nobody said anything. */
    public static final Sky UNTOLD = new Sky(Optional.empty(), Optional.empty(), Optional.empty());

    public Sky {
        cloudPercent.ifPresent(CLOUD::check);
    }

    /** The same, empty where nobody said anything. */
    public Optional<Sky> told() {
        return equals(UNTOLD) ? Optional.empty() : Optional.of(this);
    }

    /**
     * How much of the sun reaches a wearer where nobody said: all of it in the open under a sun that can be reckoned, else none.
     *
     * @param placed whether the latitude is known
     */
    public Sun sunUntold(boolean placed) {
        return placed && startsAt.isPresent() && open() ? Sun.FULL : Sun.NONE;
    }

    /** Whether the wearer is under the open sky. */
    public boolean open() {
        return shelter.orElse(Shelter.OPEN) == Shelter.OPEN;
    }
}
