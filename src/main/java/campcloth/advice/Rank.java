package campcloth.advice;

/** What {@link Ranking#BEST_FIRST} orders by, but for the id, in one number: the greater, the sooner. */
final class Rank {

    /** More than any score. */
    private static final double GATE = 1000;

    private Rank() {}

    static double of(Verdict verdict, boolean suitsDesign, double score) {
        return score - GATE * Contenders.gate(verdict, suitsDesign);
    }

    static double of(Judged judged) {
        return of(judged.verdict(), judged.suitsDesign(), judged.score());
    }
}
