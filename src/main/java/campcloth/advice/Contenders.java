package campcloth.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The cloths that are worth sampling: those that may be among the first three. What is ruled out is never one. */
final class Contenders {

    /** Project choice. In the four seasons of the catalogue under 5 % of all places went to cloths left out. */
    static final int MOST = 40;

    private Contenders() {}

    /** Of the mildest gates that give three cloths together: nobody behind a stricter gate comes before those. */
    static List<Judged> open(List<Judged> ranked) {
        List<Judged> open = new ArrayList<>();
        for (Judged judged : ranked) {
            boolean placesGone = open.size() >= Places.TOP && gate(judged) > gate(open.get(open.size() - 1));
            if (judged.verdict() == Verdict.RULED_OUT || placesGone) {
                break;
            }
            open.add(judged);
        }
        return open;
    }

    /**
     * Of the cloths given, in order of the ranking, the first three and those that come nearest to the third place in any of some
     * trial rankings, as far as {@value #MOST}; their numbers in their order.
     */
    static List<Integer> nearest(int cloths, List<double[]> trials) {
        double[] nearest = new double[cloths];
        for (int i = 0; i < cloths; i++) {
            nearest[i] = i < Places.TOP ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        }
        for (double[] scores : trials) {
            double third = third(scores);
            for (int i = 0; i < cloths; i++) {
                nearest[i] = Math.max(nearest[i], scores[i] - third);
            }
        }
        return IntStream.range(0, cloths)
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(i -> -nearest[i]))
                .limit(MOST)
                .sorted()
                .toList();
    }

    private static double third(double[] scores) {
        double[] sorted = scores.clone();
        Arrays.sort(sorted);
        return sorted[Math.max(0, sorted.length - Places.TOP)];
    }

    /** What comes before any score in {@link Ranking#BEST_FIRST}: the less, the milder. */
    static int gate(Judged judged) {
        return gate(judged.verdict(), judged.suitsDesign());
    }

    static int gate(Verdict verdict, boolean suitsDesign) {
        return 2 * verdict.ordinal() + (suitsDesign ? 0 : 1);
    }
}
