package campcloth.garment;

import campcloth.figure.Words;
import java.util.OptionalDouble;

/**
 * What a group of seams can still give or take after a try-on.
 *
 * @param seams which seams
 * @param measure what they alter, in words
 * @param letOutCm how much the measure can still grow
 * @param takeInCm how much it can shrink before the ease is gone; empty where the body below is not known
 */
public record SeamRoom(String seams, String measure, double letOutCm, OptionalDouble takeInCm) {

    /** Allowance that must stay beyond a seam for it to hold; common practice, no source. */
    public static final double LEAST_LEFT_CM = 1;

    public SeamRoom(String seams, String measure, double letOutCm, double takeInCm) {
        this(seams, measure, letOutCm, OptionalDouble.of(takeInCm));
    }

    /**
     * Lengthwise seams that join the panels round the body: each lets out twice what its allowance has over
     * {@value #LEAST_LEFT_CM} cm, since both panels give.
     *
     * @param count how many such seams there are
     * @param allowanceCm cloth beyond each
     * @param easeCm ease of the measure over the body, all of it
     * @param leastEaseCm ease that must stay
     */
    public static SeamRoom round(
            String seams, String measure, int count, double allowanceCm, double easeCm, double leastEaseCm) {
        return new SeamRoom(seams, measure, letOutCm(count, allowanceCm), Math.max(0, easeCm - leastEaseCm));
    }

    /** The same where the body's own measure was not given, so that the ease is not known. */
    public static SeamRoom round(String seams, String measure, int count, double allowanceCm) {
        return new SeamRoom(seams, measure, letOutCm(count, allowanceCm), OptionalDouble.empty());
    }

    private static double letOutCm(int count, double allowanceCm) {
        return 2 * count * Math.max(0, allowanceCm - LEAST_LEFT_CM);
    }

    public String words() {
        String letOut = seams + ": " + measure + " can be let out by " + Words.fixed(letOutCm, 1) + " cm";
        if (takeInCm.isEmpty()) {
            return letOut + "; how far it can be taken in is not known, the body's own measure was not given.";
        }
        return letOut + " and taken in by " + Words.fixed(takeInCm.getAsDouble(), 1) + " cm.";
    }
}
