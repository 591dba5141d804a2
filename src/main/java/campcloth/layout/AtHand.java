package campcloth.layout;

import campcloth.figure.Range;
import java.util.Optional;

/**
 * A length of the cloth that is at hand and is used before any is bought.
 *
 * @param lengthCm its length
 * @param widthCm its width, its left edge that of the strip; empty for the strip's width
 * @param repeatFromCutCm where a repeat begins along it, from its cut edge; empty for the strip's
 */
public record AtHand(double lengthCm, Optional<Double> widthCm, Optional<Double> repeatFromCutCm) {

    /** Most lengths at hand that one layout takes. */
    public static final int MOST = 20;

    public AtHand {
        new Range("lengthCm", 1, 100_000, "cm").check(lengthCm);
        widthCm.ifPresent(new Range("widthCm", 1, 100_000, "cm")::check);
        repeatFromCutCm.ifPresent(new Range("repeatFromCutCm", 0, 1000, "cm")::check);
    }
}
