package campcloth.fibre;

import java.util.List;
import java.util.Optional;

/**
 * What burning single threads tells of a cloth: which classes of fibre are likely, never how much of each.
 *
 * @param threads what each thread tells, in the order given
 * @param verdict what the threads tell together
 * @param sentence the same in words
 * @param melting whether some thread was seen to melt
 */
public record FlameFinding(List<OfThread> threads, Verdict verdict, String sentence, Melting melting) {

    public FlameFinding {
        threads = List.copyOf(threads);
    }

    /** How far the fibre is known. */
    public enum Verdict {
        /** One class is likely. */
        CLASS,
        /** One of several classes that are easily taken for each other. */
        FAMILY,
        /** Too little was seen, or it fits several families. */
        UNSURE,
        /** What was seen does not go together: likely a blend, a finish or a coating. */
        FITS_NOTHING,
        /** Each thread is known and they are of different fibres. */
        THREADS_DIFFER
    }

    /** Whether melting was seen. Nothing shows that a cloth does not melt: a small share may leave no bead. */
    public enum Melting {
        SHOWN,
        NOT_SHOWN
    }

    /**
     * What one thread tells.
     *
     * @param thread which thread
     * @param answered how many questions were answered
     * @param verdict how far its fibre is known
     * @param ranking all classes, most probable first
     * @param notInTheKey probability kept for what no class stands for: blends, finishes, other fibres
     * @param melts probability of the classes that melt together
     * @param melting whether it was seen to melt
     * @param meltingSeen the answers that show it
     * @param next the question that would tell most, where one is left
     */
    public record OfThread(
            String thread,
            int answered,
            Verdict verdict,
            List<Ranked> ranking,
            double notInTheKey,
            double melts,
            Melting melting,
            List<FlameAnswer> meltingSeen,
            Optional<Next> next) {

        public OfThread {
            ranking = List.copyOf(ranking);
            meltingSeen = List.copyOf(meltingSeen);
        }

        public FlameClass first() {
            return ranking.get(0).fibreClass();
        }
    }

    /**
     * A class and how probable it is.
     *
     * @param fibreClass the class
     * @param probability 0 to {@value campcloth.fibre.FlameKey#MOST_PROBABLE}
     * @param because the answers that spoke for or against it
     */
    public record Ranked(FlameClass fibreClass, double probability, List<Because> because) {

        public Ranked {
            because = List.copyOf(because);
        }
    }

    /**
     * What one answer says of one class.
     *
     * @param answer what was seen
     * @param speaks for or against the class
     * @param likelihood how likely that is seen with the class, 0 to 1
     */
    public record Because(FlameAnswer answer, Speaks speaks, double likelihood) {}

    /** Which way an answer speaks. */
    public enum Speaks {
        FOR,
        AGAINST
    }

    /**
     * The question that is expected to tell most.
     *
     * @param feature what to look for
     * @param expectedBits by how much the answer is expected to lessen the doubt between the classes, bit
     */
    public record Next(FlameFeature feature, double expectedBits) {}
}
