package campcloth.layout;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import java.util.List;
import java.util.Optional;

/**
 * How a pattern of stripes or checks repeats on the cloth, lengths in cm.
 *
 * @param lengthCm repeat along the cloth; empty where nothing repeats along it
 * @param widthCm repeat across the cloth; empty where nothing repeats across it
 * @param fromCutCm where a repeat begins along, from the cut edge; for a pattern that looks the same upside down a line about
 *     which it does
 * @param fromSelvedgeCm where a repeat begins across, from the left edge; for a pattern that looks the same mirrored a line
 *     about which it does
 * @param sameUpsideDown the pattern looks the same with its ends exchanged, so that pieces may be turned as far as it goes
 * @param sameMirrored the pattern looks the same with left and right exchanged
 * @param phases the place of the repeat that match groups shall lie on; what is left open the search chooses
 */
public record Repeat(
        Optional<Double> lengthCm,
        Optional<Double> widthCm,
        double fromCutCm,
        double fromSelvedgeCm,
        boolean sameUpsideDown,
        boolean sameMirrored,
        List<MatchPhase> phases) {

    /** Shorter repeats are a texture that nobody matches; common practice, no source. */
    private static final double LEAST_CM = 0.5;

    private static final double MOST_CM = 1000;
    private static final double AXIS_CM = 1e-9;

    public Repeat {
        phases = List.copyOf(phases);
        lengthCm.ifPresent(new Range("repeatLengthCm", LEAST_CM, MOST_CM, "cm")::check);
        widthCm.ifPresent(new Range("repeatWidthCm", LEAST_CM, MOST_CM, "cm")::check);
        new Range("repeatFromCutCm", 0, MOST_CM, "cm").check(fromCutCm);
        new Range("repeatFromSelvedgeCm", 0, MOST_CM, "cm").check(fromSelvedgeCm);
        if (lengthCm.isEmpty() && widthCm.isEmpty()) {
            throw Refused.of("repeatLengthCm", "is missing, and so is repeatWidthCm", "give one of them, or no repeat");
        }
    }

    /** A pattern of which nothing is known but how it repeats. */
    public static Repeat every(Optional<Double> lengthCm, Optional<Double> widthCm) {
        return new Repeat(lengthCm, widthCm, 0, 0, false, false, List.of());
    }

    /** Whether a repeat of so many cm is one that people match. */
    public static boolean isMatched(double repeatCm) {
        return repeatCm >= LEAST_CM;
    }

    /** The place that a group shall lie on, as far as it was said. */
    MatchPhase said(String group) {
        return phases.stream()
                .filter(phase -> phase.group().equals(group))
                .findFirst()
                .orElse(new MatchPhase(group, Optional.empty(), Optional.empty()));
    }

    /** Whether a piece that may lie so still looks the same round its match point, which lies on a place of the repeat. */
    boolean meets(MatchPhase phase, boolean turned, boolean mirrored) {
        return (!turned || isAxis(lengthCm, phase.alongCm()))
                && (turned == mirrored || isAxis(widthCm, phase.acrossCm()));
    }

    private static boolean isAxis(Optional<Double> repeat, Optional<Double> place) {
        if (repeat.isEmpty()) {
            return true;
        }
        double half = repeat.get() / 2;
        double beyond = Math.abs(place.orElse(0.0)) % half;
        return Math.min(beyond, half - beyond) <= AXIS_CM;
    }

    /** Whether the pattern's look allows a piece to lie so; a piece both turned and mirrored has its ends exchanged only. */
    boolean looksTheSame(boolean turned, boolean mirrored) {
        return (!turned || lengthCm.isEmpty() || sameUpsideDown)
                && (turned == mirrored || widthCm.isEmpty() || sameMirrored);
    }
}
