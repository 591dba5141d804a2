package campcloth.advice;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Counts, over many rankings of the same cloths, who is first and who is among the first three. Gates are fixed: whoever
 * stands behind a stricter one comes after all others, whatever the scores. Who is as good as others shares the places with them.
 */
final class Places {

    static final int TOP = 3;

    private final List<Integer> gates;
    private final double[] first;
    private final double[] topThree;
    private int rankings;

    /** @param gates a number for each cloth, the mildest gate the least */
    Places(List<Integer> gates) {
        this.gates = List.copyOf(gates);
        this.first = new double[gates.size()];
        this.topThree = new double[gates.size()];
    }

    /** One more ranking, by a score for each cloth. */
    void add(double[] scores) {
        List<Integer> order = IntStream.range(0, scores.length)
                .boxed()
                .sorted(Comparator.<Integer, Integer>comparing(gates::get)
                        .thenComparing(Comparator.<Integer>comparingDouble(i -> scores[i])
                                .reversed()))
                .toList();
        int from = 0;
        while (from < Math.min(TOP, order.size())) {
            int to = from + 1;
            while (to < order.size() && alike(order.get(from), order.get(to), scores)) {
                to++;
            }
            for (int cloth : order.subList(from, to)) {
                first[cloth] += from == 0 ? 1.0 / to : 0;
                topThree[cloth] += (double) (Math.min(TOP, to) - from) / (to - from);
            }
            from = to;
        }
        rankings++;
    }

    private boolean alike(int one, int other, double[] scores) {
        return gates.get(one).equals(gates.get(other)) && scores[one] == scores[other];
    }

    /** How often it was first, percent of the rankings. */
    double firstPercent(int cloth) {
        return 100 * first[cloth] / rankings;
    }

    /** How often it was among the first three, percent of the rankings. */
    double topThreePercent(int cloth) {
        return 100 * topThree[cloth] / rankings;
    }
}
