package campcloth.advice;

import campcloth.advice.sample.Points;
import java.util.List;

/**
 * One of the people who might wear it, the same for all cloths of a sample. Project choices, all.
 *
 * @param pace where in the range of each activity the metabolic rate lies, 0 to 1, all of it alike likely; warmth and heat are
 *     both judged at it
 * @param prickle how many times the usual coarse ends prickle them: from 1/2.5 to 2.5, log-uniform, since 5 % are felt by most
 *     people and 2 % by sensitive ones
 * @param usedToHeat how far they are used to heat: from not at all, whom the ranking presumes, to wholly, all of it alike likely
 */
record SampledWearer(double pace, double prickle, double usedToHeat) {

    static final int DIMENSIONS = 3;

    /** What is drawn of a wearer, in plain words. */
    static final List<String> DRAWN = List.of(
            "Work rate of the wearer: anywhere from the lower to the higher metabolic rate of each activity.",
            "How far the wearer is used to heat: anywhere from not at all to wholly, who flushes and sweats at a body temperature"
                    + " lower by 0.3 degrees, can sweat a quarter more and grow wetter.",
            "How readily wool prickles the wearer: from 0.4 to 2.5 times as usual.");

    static final SampledWearer USUAL = new SampledWearer(0.5, 1, 0);

    private static final double MOST_SENSITIVE = 2.5;

    static SampledWearer at(Points points, int sample) {
        return new SampledWearer(
                points.at(sample, 0), Math.pow(MOST_SENSITIVE, 2 * points.at(sample, 1) - 1), points.at(sample, 2));
    }
}
