package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothColumns;
import campcloth.cloth.ClothMake;
import campcloth.comfort.SpellComfort;
import campcloth.fibre.FibreFamily;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Looks over a great many cloths by their columns and tells which of them may be among the best: how good each may be at most,
 *  and how bad at worst. First without fire, all of them; then with it, the most promising first, until no cloth that is left can
 * come before as many as are wanted surely do; of those that are left the same once more, the models of comfort run for each. The
 * processors share the work.
 */
final class QuickPass {

    /** Rows that one processor takes at a time. */
    private static final int LOT = 4096;

    private static final int LOTS_AT_ONCE = 4;

    /** More makes are not judged beforehand, each at its heaviest. */
    private static final int MOST_MAKES = 20_000;

    private static final double BEST_SCORE = 128;
    private static final int PLACES = 1 << 16;
    private static final int ROW_BITS = 31;

    private final Judging judging;
    private final Cloth any;
    private final ClothColumns columns;
    private final int wanted;
    private final ComfortTable comfort;
    private final FireTable fire;
    private final FireTable.@Nullable Span[] heaviest;
    private final boolean[] mineral;
    private final Verdict mildest;

    private QuickPass(Judging judging, Cloth any, ClothColumns columns, int wanted) {
        this.judging = judging;
        this.any = any;
        this.columns = columns;
        this.wanted = wanted;
        this.comfort = ComfortTable.of(judging, any, columns);
        this.fire = new FireTable(judging, columns);
        this.heaviest = new FireTable.@Nullable Span[columns.makes()];
        this.mineral = new boolean[columns.makes()];
        this.mildest = judging.ofTheRest().isEmpty() ? Verdict.SUITABLE : Verdict.CAUTION;
    }

    /**
     * The rows that may hold one of the best, the most promising first.
     *
     * @param any any cloth
     * @param wanted how many of the best are asked for
     */
    static List<Promising> of(Judging judging, Cloth any, ClothColumns columns, int wanted) {
        QuickPass pass = new QuickPass(judging, any, columns, wanted);
        pass.lookAtMakes();
        long[] keys = pass.withoutFire();
        List<Promising> roughly =
                pass.gathered(keys.length, LOT, i -> rank(keys[i]), (i, reader) -> pass.roughly(row(keys[i]), reader));
        return pass.gathered(
                roughly.size(),
                LOT / 16,
                i -> roughly.get(i).most(),
                (i, reader) -> pass.closely(roughly.get(i).row()));
    }

    private void lookAtMakes() {
        IntStream.range(0, columns.makes()).parallel().forEach(make -> {
            mineral[make] = columns.makeNumbered(make).blend().percentOf(FibreFamily.MINERAL) > 0;
            if (columns.makes() <= MOST_MAKES) {
                heaviest[make] = fire.heaviest(make);
            }
        });
    }

    /** Of every cloth the most that it can come to, with its row: in rising order the most promising first. */
    private long[] withoutFire() {
        int lots = (columns.rows() + LOT - 1) / LOT;
        long[] keys = IntStream.range(0, lots)
                .parallel()
                .mapToObj(lot -> {
                    ComfortTable.Reader reader = comfort.new Reader();
                    long[] some = new long[LOT];
                    int count = 0;
                    for (int row = lot * LOT; row < Math.min(columns.rows(), (lot + 1) * LOT); row++) {
                        if (columns.holds(row)) {
                            some[count++] = key(row, most(row, reader));
                        }
                    }
                    return Arrays.copyOf(some, count);
                })
                .flatMapToLong(Arrays::stream)
                .toArray();
        Arrays.parallelSort(keys);
        return keys;
    }

    private double most(int row, ComfortTable.Reader reader) {
        int make = columns.make(row);
        FireTable.Span best = heaviest[make];
        Verdict verdict = best == null ? mildest : stricter(mildest, best.best());
        double hazard = best == null ? 0 : best.leastHazard();
        reader.read(columns.thicknessMm(row), columns.permeabilityMmS(row), columns.vapourResistanceM2PaW(row));
        double score = reader.score() + reader.error() + ofFigures(row, make) + ofFire(hazard);
        return Rank.of(verdict, suits(make), score);
    }

    /** What itch and weight bring to the score: they follow from the columns. */
    private double ofFigures(int row, int make) {
        return judging.weight(Criteria.ITCH)
                        * Itch.score(
                                columns.coarseEndsPercent(row),
                                columns.bastRoughness(row),
                                mineral[make],
                                judging.question().wear().nextToSkin())
                + judging.weight(Criteria.WEIGHT)
                        * Weight.score(
                                columns.weightGsm(row),
                                judging.question().wear().clothAreaM2());
    }

    private double ofFire(double hazard) {
        return judging.weight(Criteria.FIRE) * Fire.score(hazard);
    }

    private boolean suits(int make) {
        ClothMake of = columns.makeNumbered(make);
        return !of.stretch() || judging.question().wear().stretchAllowed();
    }

    /** How good one of many cloths may be. */
    private interface Look {
        Promising at(int i, ComfortTable.Reader reader);
    }

    /**
     * Looks at cloths, the most promising first, until those that are left are beaten.
     *
     * @param lot how many one processor takes at a time
     * @param most the best rank that the one of a number, and those after it, may have
     */
    private List<Promising> gathered(int cloths, int lot, IntToDoubleFunction most, Look look) {
        PriorityQueue<Double> surely = new PriorityQueue<>();
        List<Promising> promising = new ArrayList<>();
        int step = lot * LOTS_AT_ONCE;
        for (int from = 0; from < cloths && !isBeaten(most.applyAsDouble(from), surely); from += step) {
            int start = from;
            List<Promising> looked = IntStream.range(0, LOTS_AT_ONCE)
                    .parallel()
                    .mapToObj(n -> looked(start + n * lot, Math.min(cloths, start + (n + 1) * lot), look))
                    .flatMap(List::stream)
                    .toList();
            for (Promising one : looked) {
                surely.add(one.least());
                if (surely.size() > wanted) {
                    surely.remove();
                }
            }
            looked.stream().filter(one -> !isBeaten(one.most(), surely)).forEach(promising::add);
        }
        return promising.stream()
                .filter(one -> !isBeaten(one.most(), surely))
                .sorted(Comparator.comparingDouble(Promising::most).reversed())
                .toList();
    }

    private List<Promising> looked(int from, int to, Look look) {
        ComfortTable.Reader reader = comfort.new Reader();
        return IntStream.range(from, to).mapToObj(i -> look.at(i, reader)).toList();
    }

    private Promising roughly(int row, ComfortTable.Reader reader) {
        reader.read(columns.thicknessMm(row), columns.permeabilityMmS(row), columns.vapourResistanceM2PaW(row));
        return promising(row, reader.score(), reader.error(), reader.mayPass(), reader.surelyPasses());
    }

    /** The same with the models run for the cloth's own figures. */
    private Promising closely(int row) {
        List<SpellComfort> spells = judging.comfort()
                .of(
                        Bounds.sheet(
                                any,
                                columns.thicknessMm(row),
                                columns.permeabilityMmS(row),
                                columns.vapourResistanceM2PaW(row)),
                        judging.question().wear());
        boolean passes = !Warnings.asksForCaution(spells, judging.bounds());
        return promising(
                row,
                judging.comfortScore(spells),
                comfort.leap(),
                passes || comfort.leap() > ComfortTable.ROUNDING,
                passes && comfort.leap() == ComfortTable.ROUNDING);
    }

    private Promising promising(int row, double comfortScore, double error, boolean mayPass, boolean surelyPasses) {
        int make = columns.make(row);
        FireTable.Span at = fire.of(make, fire.gradedGsm(row));
        double score = comfortScore + ofFigures(row, make);
        boolean suits = suits(make);
        Verdict atBest = stricter(mildest, mayPass && suits ? Verdict.SUITABLE : Verdict.CAUTION);
        Verdict atWorst = stricter(mildest, surelyPasses && suits ? Verdict.SUITABLE : Verdict.CAUTION);
        return new Promising(
                row,
                Rank.of(stricter(atBest, at.best()), suits, score + error + ofFire(at.leastHazard())),
                Rank.of(stricter(atWorst, at.worst()), suits, score - error + ofFire(at.mostHazard())));
    }

    /** Whether as many as are wanted surely come before. */
    private boolean isBeaten(double most, PriorityQueue<Double> surely) {
        return surely.size() == wanted && most < surely.element();
    }

    private static Verdict stricter(Verdict one, Verdict other) {
        return one.compareTo(other) >= 0 ? one : other;
    }

    /** A rank and a row in one number; the greater the rank, the smaller. The rank is rounded up, never down. */
    private static long key(int row, double rank) {
        return (long) ((BEST_SCORE - rank) * PLACES) << ROW_BITS | row;
    }

    private static int row(long key) {
        return (int) (key & ((1L << ROW_BITS) - 1));
    }

    private static double rank(long key) {
        return BEST_SCORE - (double) (key >> ROW_BITS) / PLACES;
    }

    /**
     * A cloth that may be among the best.
     *
     * @param most the best {@link Rank} it may have
     * @param least the worst
     */
    record Promising(int row, double most, double least) {}
}
