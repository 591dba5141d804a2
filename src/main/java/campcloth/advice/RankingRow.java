package campcloth.advice;

import campcloth.figure.Words;
import java.util.List;
import java.util.Optional;

/**
 * One cloth of a ranking, as drawn.
 *
 * @param place from 1
 * @param name of the cloth, as written
 * @param verdict comes before any score
 * @param suitsDesign whether the garment can be made of it
 * @param score 0 to 100, between scoreLow and scoreHigh
 * @param topThreePercent how often it is among the first three; empty where it was not drawn
 */
public record RankingRow(
        int place,
        String name,
        Verdict verdict,
        boolean suitsDesign,
        double score,
        double scoreLow,
        double scoreHigh,
        Optional<Double> topThreePercent) {

    static RankingRow of(int place, Judged judged, Robustness robustness) {
        return new RankingRow(
                place,
                judged.candidate().cloth().name(),
                judged.verdict(),
                judged.suitsDesign(),
                judged.score(),
                judged.scoreLow(),
                judged.scoreHigh(),
                robustness.topThreePercent(judged.candidate().id()));
    }

    /** What comes before the score, in words. */
    public List<String> provisos() {
        String gate = switch (verdict) {
            case SUITABLE -> "";
            case CAUTION -> "with caution";
            case RULED_OUT -> "ruled out";
        };
        String design = suitsDesign ? "" : "not for this garment";
        return List.of(gate, design).stream().filter(words -> !words.isEmpty()).toList();
    }

    /** The same in a sentence. */
    public String sentence() {
        String provisos = provisos().isEmpty() ? "" : " (" + String.join(", ", provisos()) + ")";
        return place + ". " + name + provisos + ": score " + whole(score) + ", from " + whole(scoreLow) + " to "
                + whole(scoreHigh) + "; "
                + topThreePercent
                        .map(percent -> "among the first three in " + whole(percent) + " % of the drawn rankings.")
                        .orElse("not drawn, so nothing is known of how firm its place is.");
    }

    static String whole(double value) {
        return Words.fixed(value, 0);
    }
}
