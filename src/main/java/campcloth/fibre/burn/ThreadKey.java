package campcloth.fibre.burn;

import campcloth.fibre.FibreFamily;
import campcloth.fibre.FlameAnswer;
import campcloth.fibre.FlameFinding.Because;
import campcloth.fibre.FlameFinding.Melting;
import campcloth.fibre.FlameFinding.OfThread;
import campcloth.fibre.FlameFinding.Ranked;
import campcloth.fibre.FlameFinding.Speaks;
import campcloth.fibre.FlameFinding.Verdict;
import campcloth.fibre.FlameKey;
import campcloth.fibre.ThreadSeen;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** What one thread tells. */
public final class ThreadKey {

    /** An answer speaks for or against a class from this factor on, over or under its mean over the classes. */
    private static final double TELLING = 1.5;

    private final Evidence evidence;

    public ThreadKey(Evidence evidence) {
        this.evidence = evidence;
    }

    /** Refuses, under the key of the feature, what is no answer of it. */
    public OfThread finding(ThreadSeen thread) {
        List<FlameAnswer> answers = evidence.given(thread.seen());
        Belief belief = Belief.after(evidence, answers);
        double[] probabilities = belief.probabilities();
        List<Ranked> ranking = belief.ranked().stream()
                .map(place -> new Ranked(evidence.classes().get(place), probabilities[place], because(answers, place)))
                .toList();
        List<FlameAnswer> melting =
                answers.stream().filter(FlameAnswer::melting).toList();
        return new OfThread(
                thread.thread(),
                answers.size(),
                verdict(belief, answers, ranking),
                ranking,
                1 - FlameKey.MOST_PROBABLE,
                ranking.stream()
                        .filter(ranked -> ranked.fibreClass().melts())
                        .mapToDouble(Ranked::probability)
                        .sum(),
                melting.isEmpty() ? Melting.NOT_SHOWN : Melting.SHOWN,
                melting,
                NextQuestion.after(evidence, belief, thread.seen().keySet()));
    }

    private static Verdict verdict(Belief belief, List<FlameAnswer> answers, List<Ranked> ranking) {
        if (answers.size() < FlameKey.FEWEST_ANSWERS) {
            return Verdict.UNSURE;
        }
        if (belief.bestFit(answers) < FlameKey.FITS_FROM || meltsAgainst(answers, ranking)) {
            return Verdict.FITS_NOTHING;
        }
        if (ranking.get(0).probability() >= FlameKey.CLASS_FROM) {
            return Verdict.CLASS;
        }
        Map<FibreFamily, Double> families = new EnumMap<>(FibreFamily.class);
        ranking.forEach(ranked -> families.merge(ranked.fibreClass().family(), ranked.probability(), Double::sum));
        double first = families.getOrDefault(ranking.get(0).fibreClass().family(), 0.0);
        return first >= FlameKey.FAMILY_FROM ? Verdict.FAMILY : Verdict.UNSURE;
    }

    /** Whether it was seen to melt and is likeliest of what does not: no such fibre is then named, however well the rest fits. */
    private static boolean meltsAgainst(List<FlameAnswer> answers, List<Ranked> ranking) {
        return answers.stream().anyMatch(FlameAnswer::melting)
                && !ranking.get(0).fibreClass().melts();
    }

    private List<Because> because(List<FlameAnswer> answers, int place) {
        List<Because> because = new ArrayList<>();
        for (FlameAnswer answer : answers) {
            double likelihood = evidence.likelihood(answer, place);
            double mean = mean(answer);
            if (likelihood >= mean * TELLING) {
                because.add(new Because(answer, Speaks.FOR, likelihood));
            } else if (likelihood * TELLING <= mean) {
                because.add(new Because(answer, Speaks.AGAINST, likelihood));
            }
        }
        return because;
    }

    private double mean(FlameAnswer answer) {
        return IntStream.range(0, evidence.classes().size())
                .mapToDouble(place -> evidence.likelihood(answer, place))
                .average()
                .orElse(0);
    }
}
