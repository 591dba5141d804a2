package campcloth.fibre.burn;

import campcloth.fibre.FlameAnswer;
import campcloth.fibre.FlameClass;
import campcloth.fibre.FlameKey;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How probable each class is after some answers: Bayes' rule from a uniform prior, the likelihoods of each answer raised to
 * the weight of its feature. The classes share {@value campcloth.fibre.FlameKey#MOST_PROBABLE}; the rest stays with what the
 * key does not know.
 */
final class Belief {

    private final Evidence evidence;
    private final double[] logs;

    private Belief(Evidence evidence, double[] logs) {
        this.evidence = evidence;
        this.logs = logs;
    }

    /** Before anything was seen: every class alike. */
    static Belief before(Evidence evidence) {
        return new Belief(evidence, new double[evidence.classes().size()]);
    }

    static Belief after(Evidence evidence, List<FlameAnswer> answers) {
        Belief belief = before(evidence);
        for (FlameAnswer answer : answers) {
            belief = belief.after(answer);
        }
        return belief;
    }

    Belief after(FlameAnswer answer) {
        double[] next = logs.clone();
        for (int place = 0; place < next.length; place++) {
            next[place] += answer.feature().weight() * Math.log(evidence.likelihood(answer, place));
        }
        return new Belief(evidence, next);
    }

    /** The places of the classes, most probable first; classes alike stay in the order of the table. */
    List<Integer> ranked() {
        return IntStream.range(0, logs.length)
                .boxed()
                .sorted((one, other) -> Double.compare(logs[other], logs[one]))
                .toList();
    }

    /** By place of the class; they sum to {@value campcloth.fibre.FlameKey#MOST_PROBABLE}. */
    double[] probabilities() {
        double[] shares = shares();
        for (int place = 0; place < shares.length; place++) {
            shares[place] *= FlameKey.MOST_PROBABLE;
        }
        return shares;
    }

    /** Among the classes alone: they sum to 1. */
    double[] shares() {
        double most = Arrays.stream(logs).max().orElse(0);
        double[] shares = Arrays.stream(logs).map(log -> Math.exp(log - most)).toArray();
        double sum = Arrays.stream(shares).sum();
        for (int place = 0; place < shares.length; place++) {
            shares[place] /= sum;
        }
        return shares;
    }

    /** Doubt between the classes, bit. */
    double doubtBits() {
        return -Arrays.stream(shares())
                        .filter(share -> share > 0)
                        .map(share -> share * Math.log(share))
                        .sum()
                / Math.log(2);
    }

    /**
     * How well the class that explains the answers best does so: its weighted likelihood as a part of what it would be with
     * the answers most usual for it, 0 to 1; 1 where nothing was answered.
     */
    double bestFit(List<FlameAnswer> answers) {
        List<FlameClass> classes = evidence.classes();
        return IntStream.range(0, classes.size())
                .mapToDouble(place -> Math.exp(answers.stream()
                        .mapToDouble(answer -> shortfall(answer, place))
                        .sum()))
                .max()
                .orElse(1);
    }

    private double shortfall(FlameAnswer answer, int place) {
        double usual = evidence.answers(answer.feature()).stream()
                .mapToDouble(other -> evidence.likelihood(other, place))
                .max()
                .orElse(1);
        return answer.feature().weight() * Math.log(evidence.likelihood(answer, place) / usual);
    }
}
