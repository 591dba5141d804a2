package campcloth.plan;

import campcloth.figure.Range;
import java.util.Optional;

/**
 * A piece of the same cloth that is at hand.
 *
 * @param lengthCm its length as it lies there
 * @param widthCm its width, selvedges included; empty where it is as wide as the cloth
 */
public record AtHand(double lengthCm, Optional<Double> widthCm) {

    private static final Range LENGTH = new Range("lengthCm", 1, 100_000, "cm");
    private static final Range WIDTH = new Range("widthCm", 5, 1000, "cm");

    public AtHand {
        LENGTH.check(lengthCm);
        widthCm.ifPresent(WIDTH::check);
    }
}
