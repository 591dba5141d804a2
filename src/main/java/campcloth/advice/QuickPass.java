package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothColumns;
import campcloth.cloth.ClothMake;
import campcloth.fibre.FibreFamily;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Looks over a great many cloths by their columns and tells which of them may be among the best: how good each may be at most,
 * and how bad at worst. First without fire, all of them; then with it, the most promising first, until no cloth that is left can
 * come before as many as are wanted surely are. Both processors share the work.
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
    private final ClothColumns columns;
    private final int wanted;
    private final ComfortTable comfort;
    private final FireTable fire;
    private final FireTable.@Nullable Span[] heaviest;
    private final boolean[] mineral;
    private final Verdict mildest;

    private QuickPass(Judging judging, Cloth any, ClothColumns columns, int wanted) {
        this.judging = judging;
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
        return pass.withFire(pass.withoutFire());
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
        double score = withoutFire(row, make, reader);
        return Rank.of(verdict, suits(make), score + reader.error() + ofFire(hazard));
    }

    /** The score but for what fire brings. */
    private double withoutFire(int row, int make, ComfortTable.Reader reader) {
        reader.read(columns.thicknessMm(row), columns.permeabilityMmS(row), columns.vapourResistanceM2PaW(row));
        return reader.score()
                + judging.weight(Criteria.ITCH)
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
        return judging.weight(Criteria.FIRE) * (100 - hazard);
    }

    private boolean suits(int make) {
        ClothMake of = columns.makeNumbered(make);
        return !of.stretch() || judging.question().wear().stretchAllowed();
    }

    private List<Promising> withFire(long[] keys) {
        PriorityQueue<Double> surely = new PriorityQueue<>();
        List<Promising> promising = new ArrayList<>();
        int step = LOT * LOTS_AT_ONCE;
        for (int from = 0; from < keys.length && !isBeaten(rank(keys[from]), surely); from += step) {
            int start = from;
            List<Promising> looked = IntStream.range(0, LOTS_AT_ONCE)
                    .parallel()
                    .mapToObj(lot -> looked(keys, start + lot * LOT, Math.min(keys.length, start + (lot + 1) * LOT)))
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

    private List<Promising> looked(long[] keys, int from, int to) {
        ComfortTable.Reader reader = comfort.new Reader();
        List<Promising> looked = new ArrayList<>();
        for (int i = from; i < to; i++) {
            looked.add(promising((int) (keys[i] & ((1L << ROW_BITS) - 1)), reader));
        }
        return looked;
    }

    private Promising promising(int row, ComfortTable.Reader reader) {
        int make = columns.make(row);
        FireTable.Span at = fire.of(make, fire.gradedGsm(row));
        double score = withoutFire(row, make, reader);
        boolean suits = suits(make);
        Verdict atBest = stricter(mildest, reader.mayPass() && suits ? Verdict.SUITABLE : Verdict.CAUTION);
        Verdict atWorst = stricter(mildest, reader.surelyPasses() && suits ? Verdict.SUITABLE : Verdict.CAUTION);
        return new Promising(
                row,
                Rank.of(stricter(atBest, at.best()), suits, score + reader.error() + ofFire(at.leastHazard())),
                Rank.of(stricter(atWorst, at.worst()), suits, score - reader.error() + ofFire(at.mostHazard())));
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
