package campcloth.fibre.burn;

import campcloth.fibre.FlameAnswer;
import campcloth.fibre.FlameFeature;
import campcloth.fibre.FlameFinding.Next;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which of the questions not yet answered is expected to lessen the doubt between the classes most. */
final class NextQuestion {

    private NextQuestion() {}

    /** None where all are answered; of questions that tell as much, the earlier in the order of the test. */
    static Optional<Next> after(Evidence evidence, Belief belief, Set<FlameFeature> answered) {
        return Arrays.stream(FlameFeature.values())
                .filter(feature -> !answered.contains(feature))
                .map(feature -> new Next(feature, expectedBits(evidence, belief, feature)))
                .sorted(Comparator.comparingDouble(Next::expectedBits).reversed())
                .findFirst();
    }

    private static double expectedBits(Evidence evidence, Belief belief, FlameFeature feature) {
        List<FlameAnswer> answers = evidence.answers(feature);
        double[] shares = belief.shares();
        double left = 0;
        for (FlameAnswer answer : answers) {
            double chance = 0;
            for (int place = 0; place < shares.length; place++) {
                chance += shares[place] * evidence.likelihood(answer, place);
            }
            left += chance * belief.after(answer).doubtBits();
        }
        return Math.max(0, belief.doubtBits() - left);
    }
}
