package campcloth.plan;

import campcloth.figure.Range;
import java.util.Optional;

/**
 * The repeat of stripes or checks, as the shop sells the cloth.
 *
 * @param lengthCm along the cloth, empty where nothing has to match along it
 * @param widthCm across
 */
public record Repeat(Optional<Double> lengthCm, Optional<Double> widthCm) {

    private static final Range LENGTH = new Range("repeatLengthCm", 0.2, 200, "cm");
    private static final Range WIDTH = new Range("repeatWidthCm", 0.2, 200, "cm");

    /** No pattern to match. */
    public static final Repeat NONE = new Repeat(Optional.empty(), Optional.empty());

    public Repeat {
        lengthCm.ifPresent(LENGTH::check);
        widthCm.ifPresent(WIDTH::check);
    }

    boolean isNone() {
        return lengthCm.isEmpty() && widthCm.isEmpty();
    }
}
