package campcloth.advice;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How far the order of a ranking hangs on figures and on a wearer that nobody knows exactly. Not how likely it is that anybody is
 * comfortable, and not whether the models are right: only how the order changes while figures and wearer move within their
 * intervals. The weather, the rest of the outfit and what fire and rules say stay as they are. The ranking judges cold by the
 * lower and heat by the higher metabolic rate of an activity and presumes a wearer not used to heat; a drawn wearer has one
 * rate for both and is used to heat more or less. So the first place may be open even where all figures are exact.
 *
 * @param samples how many times figures and wearers were drawn
 * @param seed of the draws; the same seed draws the same
 * @param firstPlacePercent how often the first of the ranking stays first; empty where all are ruled out
 * @param topThreePercent how often a cloth is among the first three, by its id; who ties for a place shares it
 * @param drawn what was drawn and from where, in plain words; empty where nothing was
 * @param because in plain words
 */
public record Robustness(
        int samples,
        long seed,
        Optional<Double> firstPlacePercent,
        Map<String, Double> topThreePercent,
        List<String> drawn,
        String because) {

    public Robustness {
        topThreePercent = Map.copyOf(topThreePercent);
        drawn = List.copyOf(drawn);
    }

    static Robustness nothingToChoose(int samples, long seed) {
        return new Robustness(samples, seed, Optional.empty(), Map.of(), List.of(), "Nothing is left to choose from.");
    }

    /** How many cloths were drawn: those that may be among the first three. */
    public int sampled() {
        return topThreePercent.size();
    }

    /** How often a cloth is among the first three; empty where it was not sampled. */
    public Optional<Double> topThreePercent(String clothId) {
        return Optional.ofNullable(topThreePercent.get(clothId));
    }
}
