package campcloth.garment;

import campcloth.figure.Words;

/**
 * What a group of seams can still give or take after a try-on.
 *
 * @param seams which seams
 * @param measure what they alter, in words
 * @param letOutCm how much the measure can still grow
 * @param takeInCm how much it can shrink before the seams must be trimmed or the ease is gone
 */
public record SeamRoom(String seams, String measure, double letOutCm, double takeInCm) {

    /** Allowance that must stay beyond a seam for it to hold; common practice, no source. */
    public static final double LEAST_LEFT_CM = 1;

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
        return new SeamRoom(
                seams,
                measure,
                2 * count * Math.max(0, allowanceCm - LEAST_LEFT_CM),
                Math.max(0, easeCm - leastEaseCm));
    }

    public String words() {
        return seams + ": " + measure + " can be let out by " + Words.fixed(letOutCm, 1) + " cm and taken in by "
                + Words.fixed(takeInCm, 1) + " cm.";
    }
}
