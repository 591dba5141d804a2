package campcloth.advice;

import campcloth.cloth.ClothColumns;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Ranks cloths of the catalogue, however many they are. Up to {@value #MOST_WHOLE} are judged each. Of more a quick pass over their
 * figures tells which may be among the best; these are judged, the most promising first, until none that is left can come before
 * those that are wanted. So the first of them are the same, in the same order, as though all had been judged.
 */
public final class Shortlist {

    /** Some half a second of judging: project choice. */
    static final int MOST_WHOLE = 2_000;

    /** So many of a great many cloths are ranked, where not more are asked for. */
    public static final int USUAL = 100;

    private static final int AT_ONCE = 256;

    /** Two ways to add up the same score may differ by so much. */
    private static final double ROUNDING = 1e-6;

    private final Adviser adviser;
    private final Cloths cloths;
    private final int mostWhole;

    public Shortlist(Adviser adviser, Cloths cloths) {
        this(adviser, cloths, MOST_WHOLE);
    }

    Shortlist(Adviser adviser, Cloths cloths, int mostWhole) {
        this.adviser = adviser;
        this.cloths = cloths;
        this.mostWhole = mostWhole;
    }

    /**
     * The best cloths.
     *
     * @param question the question with the cloths that are ranked as its candidates
     * @param ranking their ranking
     * @param judged how many were judged in full
     * @param lower how many come after those ranked and are not told of
     */
    public record Ranked(Question question, Ranking ranking, int judged, int lower) {

        /** In a sentence; empty where every cloth is ranked. */
        public String note() {
            return lower == 0
                    ? ""
                    : "Of " + (lower + ranking.judged().size()) + " cloths " + judged
                            + " were judged in full; a quick pass over the figures of the others tells that none of them comes"
                            + " before the " + ranking.judged().size() + " that are ranked here.";
        }
    }

    /**
     * Ranks what a search finds.
     *
     * @param about the question, its candidates are judged, too
     * @param wanted how many are asked for; all that are judged where all are
     */
    public Ranked rank(Question about, ClothSearch search, int wanted) {
        ClothColumns columns = cloths.columns(search);
        if (columns.cloths() <= mostWhole) {
            Map<String, Candidate> all = new LinkedHashMap<>();
            about.candidates().forEach(candidate -> all.put(candidate.id(), candidate));
            candidates(columns.ids()).forEach(candidate -> all.putIfAbsent(candidate.id(), candidate));
            return whole(about.of(List.copyOf(all.values())));
        }
        return best(about, columns, Math.max(wanted, USUAL));
    }

    /** Ranks the candidates of a question. */
    public Ranked whole(Question question) {
        return new Ranked(
                question, adviser.rank(question), question.candidates().size(), 0);
    }

    private Ranked best(Question about, ClothColumns columns, int wanted) {
        long begun = System.nanoTime();
        Candidate any = any(columns);
        Judging judging = adviser.judging(about, any);
        Best best = new Best(judging, wanted);
        best.judge(about.candidates());
        Set<String> told = about.candidates().stream().map(Candidate::id).collect(Collectors.toSet());
        List<QuickPass.Promising> promising = QuickPass.of(judging, any.cloth(), columns, wanted);
        for (int from = 0;
                from < promising.size() && !best.beats(promising.get(from).most());
                from += AT_ONCE) {
            List<String> ids = promising.subList(from, Math.min(promising.size(), from + AT_ONCE)).stream()
                    .map(one -> columns.id(one.row()))
                    .filter(id -> !told.contains(id))
                    .toList();
            best.judge(candidates(ids));
        }
        List<Weighed> ranked = best.ranked();
        Question question =
                about.of(ranked.stream().map(w -> w.judged().candidate()).toList());
        Ranking ranking = judging.about(question).ranking(ranked);
        adviser.tookSince(begun, columns.cloths());
        return new Ranked(
                question,
                ranking,
                best.weighed.size(),
                columns.cloths() + told.size() - inBoth(columns, told) - ranked.size());
    }

    private static int inBoth(ClothColumns columns, Set<String> told) {
        return told.isEmpty()
                ? 0
                : (int) IntStream.range(0, columns.rows())
                        .filter(row -> columns.holds(row) && told.contains(columns.id(row)))
                        .count();
    }

    /** Those judged so far. */
    private static final class Best {

        private final Judging judging;
        private final int wanted;
        private final List<Weighed> weighed = new ArrayList<>();
        private final PriorityQueue<Double> ranks = new PriorityQueue<>();

        Best(Judging judging, int wanted) {
            this.judging = judging;
            this.wanted = wanted;
        }

        void judge(List<Candidate> candidates) {
            for (Weighed one : candidates.parallelStream().map(judging::weighed).toList()) {
                weighed.add(one);
                ranks.add(Rank.of(one.judged()));
                if (ranks.size() > wanted) {
                    ranks.remove();
                }
            }
        }

        boolean beats(double most) {
            return ranks.size() == wanted && most < ranks.element() - ROUNDING;
        }

        List<Weighed> ranked() {
            return weighed.stream()
                    .sorted((one, other) -> Ranking.BEST_FIRST.compare(one.judged(), other.judged()))
                    .limit(wanted)
                    .toList();
        }
    }

    private Candidate any(ClothColumns columns) {
        for (int row = 0; row < columns.rows(); row++) {
            if (columns.holds(row)) {
                List<Candidate> found = candidates(List.of(columns.id(row)));
                if (!found.isEmpty()) {
                    return found.get(0);
                }
            }
        }
        throw new IllegalStateException("none of " + columns.cloths() + " cloths is there any more");
    }

    private List<Candidate> candidates(List<String> ids) {
        return cloths.byIds(ids).stream().map(Shortlist::candidate).toList();
    }

    private static Candidate candidate(KeptCloth kept) {
        return new Candidate(kept.id(), kept.cloth());
    }
}
