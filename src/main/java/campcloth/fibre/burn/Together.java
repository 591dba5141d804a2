package campcloth.fibre.burn;

import campcloth.fibre.FibreFamily;
import campcloth.fibre.FlameClass;
import campcloth.fibre.FlameFinding;
import campcloth.fibre.FlameFinding.Melting;
import campcloth.fibre.FlameFinding.OfThread;
import campcloth.fibre.FlameFinding.Verdict;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What several threads of one cloth tell together: the least known of them decides, and one that melts makes it melt. */
public final class Together {

    /** Classes less probable than this are not named in a sentence. */
    private static final double PLAUSIBLE = 0.05;

    private Together() {}

    /** At least one thread. */
    public static FlameFinding of(List<OfThread> threads) {
        Verdict verdict = verdict(threads);
        Melting melting = threads.stream().anyMatch(thread -> thread.melting() == Melting.SHOWN)
                ? Melting.SHOWN
                : Melting.NOT_SHOWN;
        return new FlameFinding(threads, verdict, sentence(verdict, threads), melting);
    }

    private static Verdict verdict(List<OfThread> threads) {
        Set<Verdict> each = threads.stream()
                .map(OfThread::verdict)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Verdict.class)));
        if (each.contains(Verdict.FITS_NOTHING)) {
            return Verdict.FITS_NOTHING;
        }
        if (each.contains(Verdict.UNSURE)) {
            return Verdict.UNSURE;
        }
        long families = threads.stream()
                .map(thread -> thread.first().family())
                .distinct()
                .count();
        long classes = threads.stream().map(OfThread::first).distinct().count();
        if (families > 1 || (classes > 1 && !each.contains(Verdict.FAMILY))) {
            return Verdict.THREADS_DIFFER;
        }
        return classes == 1 && !each.contains(Verdict.FAMILY) ? Verdict.CLASS : Verdict.FAMILY;
    }

    private static String sentence(Verdict verdict, List<OfThread> threads) {
        return switch (verdict) {
            case CLASS -> "Likely " + threads.get(0).first().name() + ". It may still be a blend or carry a finish.";
            case FAMILY ->
                "One of "
                        + threads.stream()
                                .flatMap(thread -> family(thread).stream())
                                .distinct()
                                .map(FlameClass::name)
                                .collect(Collectors.joining("; "))
                        + ". Burning does not tell them apart here, and it may still be a blend or carry a finish.";
            case UNSURE -> "Unsure. Answer the next question, or treat the cloth as unknown.";
            case FITS_NOTHING ->
                "What was seen does not go together in any fibre of the key. Likely a blend, a coating or"
                        + " a finish: untwist the thread, test its parts apart, and treat the cloth as unknown.";
            case THREADS_DIFFER ->
                "The threads are of different fibres: "
                        + threads.stream()
                                .map(thread -> thread.thread() + " likely "
                                        + (thread.verdict() == Verdict.CLASS
                                                ? thread.first().name()
                                                : "one of "
                                                        + family(thread).stream()
                                                                .map(FlameClass::name)
                                                                .collect(Collectors.joining("; "))))
                                .collect(Collectors.joining(", "))
                        + ".";
        };
    }

    /** The classes of the likeliest family that are themselves plausible, most probable first. */
    private static List<FlameClass> family(OfThread thread) {
        FibreFamily family = thread.first().family();
        return thread.ranking().stream()
                .filter(ranked -> ranked.fibreClass().family() == family && ranked.probability() >= PLAUSIBLE)
                .map(FlameFinding.Ranked::fibreClass)
                .toList();
    }
}
