package campcloth.advice;

import campcloth.cloth.ClothColumns;
import campcloth.cloth.ClothMake;
import campcloth.fire.ClothWeight;
import campcloth.fire.FireJudgement;
import campcloth.fire.FireWarning;
import campcloth.fire.WornCloth;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * What fire and rules say of a make between two masses: judged at both ends, once, when first asked for. Heavier cloth is never
 * judged worse, so what lies between lies between what is said at the ends. The masses at which judgements leap are ends, so that
 * they mostly say the same. May be shared between threads.
 */
final class FireTable {

    /** Ends between the masses at which something leaps: so many times heavier. */
    private static final double STEP = 1.1;

    private static final double LIGHTEST_GSM = 10;
    private static final double HEAVIEST_GSM = 2000;

    /** As little as a piece may weigh of what counts as well known. */
    private static final double TOLERANCE = 0.9;

    /** Just below an end. */
    private static final double JUST_BELOW = 1 - 1e-7;

    /**
     * What may be said between two masses.
     *
     * @param best mildest verdict
     * @param worst strictest verdict
     */
    record Span(Verdict best, Verdict worst, double leastHazard, double mostHazard) {

        Span with(Span other) {
            return new Span(
                    best.compareTo(other.best) <= 0 ? best : other.best,
                    worst.compareTo(other.worst) >= 0 ? worst : other.worst,
                    Math.min(leastHazard, other.leastHazard),
                    Math.max(mostHazard, other.mostHazard));
        }
    }

    private final Judging judging;
    private final ClothColumns columns;
    private final double[] ends;
    private final boolean rulesWeigh;
    /** By make and place among the ends. */
    private final Map<Long, Span> spans = new ConcurrentHashMap<>();

    FireTable(Judging judging, ClothColumns columns) {
        this.judging = judging;
        this.columns = columns;
        double[] asked = judging.question().event().rules().stream()
                .flatMap(rule -> rule.conditions().minWeightGsm().stream())
                .mapToDouble(Double::doubleValue)
                .toArray();
        this.ends = ends(asked);
        this.rulesWeigh = asked.length > 0;
    }

    private static double[] ends(double[] asked) {
        int steps = (int) (Math.log(HEAVIEST_GSM / LIGHTEST_GSM) / Math.log(STEP));
        DoubleStream even = IntStream.rangeClosed(0, steps).mapToDouble(i -> LIGHTEST_GSM * Math.pow(STEP, i));
        DoubleStream lower = Arrays.stream(asked).map(gsm -> gsm / TOLERANCE);
        return DoubleStream.concat(
                        even,
                        DoubleStream.concat(
                                DoubleStream.concat(Arrays.stream(ClothWeight.leaps()), DoubleStream.of(HEAVIEST_GSM)),
                                DoubleStream.concat(Arrays.stream(asked), lower)))
                .filter(gsm -> gsm >= LIGHTEST_GSM && gsm <= HEAVIEST_GSM)
                .sorted()
                .distinct()
                .toArray();
    }

    /** The mass to grade a cloth by, g/m2. */
    double gradedGsm(int row) {
        ClothMake make = columns.makeNumbered(columns.make(row));
        return ClothWeight.of(columns.weightGsm(row), columns.leastGsm(row), columns.massIsEstimated(row), make.blend())
                .gradedGsm();
    }

    Span of(int make, double gradedGsm) {
        int found = Arrays.binarySearch(ends, gradedGsm * (1 + 1e-9));
        int cell = Math.max(0, Math.min(ends.length - 2, found >= 0 ? found : -found - 2));
        return spans.computeIfAbsent(
                (long) make * ends.length + cell,
                any -> judged(columns.makeNumbered(make), ends[cell], ends[cell + 1]));
    }

    /** The best that can be said of a make, however heavy it is. */
    Span heaviest(int make) {
        return at(columns.makeNumbered(make), ClothWeight.exactly(HEAVIEST_GSM));
    }

    private Span judged(ClothMake make, double fromGsm, double toGsm) {
        double below = toGsm < HEAVIEST_GSM ? toGsm * JUST_BELOW : toGsm;
        Span span = at(make, ClothWeight.exactly(fromGsm)).with(at(make, ClothWeight.exactly(below)));
        if (!rulesWeigh) {
            return span;
        }
        return span.with(at(make, lightPiece(fromGsm))).with(at(make, lightPiece(below)));
    }

    private static ClothWeight lightPiece(double gsm) {
        return new ClothWeight(gsm, Math.max(LIGHTEST_GSM, TOLERANCE * gsm));
    }

    private Span at(ClothMake make, ClothWeight weight) {
        FireJudgement judged = judging.fire()
                .ofGarment(
                        WornCloth.of(make, weight, judging.question().wearAtFire()),
                        judging.question().outfit(),
                        judging.question().event());
        Verdict verdict = verdict(judged);
        return new Span(verdict, verdict, judged.hazard(), judged.hazard());
    }

    private static Verdict verdict(FireJudgement judged) {
        return switch (judged.gate()) {
            case RULED_OUT -> Verdict.RULED_OUT;
            case CAUTION -> Verdict.CAUTION;
            case CLEAR ->
                judged.warnings().stream().allMatch(w -> w.severity() == FireWarning.Severity.NOTE)
                        ? Verdict.SUITABLE
                        : Verdict.CAUTION;
        };
    }
}
