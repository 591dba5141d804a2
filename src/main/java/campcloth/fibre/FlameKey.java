package campcloth.fibre;

import campcloth.fibre.burn.Evidence;
import campcloth.fibre.burn.EvidenceReader;
import campcloth.fibre.burn.ThreadKey;
import campcloth.fibre.burn.Together;
import campcloth.figure.Fault;
import campcloth.figure.Refused;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The burn-test key: which fibre a thread is likely of, by what it does in a flame. It ranks classes of fibre and never tells
 * shares. Its likelihoods are chosen after published keys and not measured (source {@value #SOURCE}). It has nothing to do
 * with tests of how fast cloth burns. Safe for use by several threads.
 */
public final class FlameKey {

    /** Source of the likelihoods, weights and thresholds. */
    public static final String SOURCE = "project-burn-key";

    /** What the key was made after, and its own choices first. */
    public static final List<String> SOURCES = List.of(
            SOURCE,
            "burn-test-keys",
            "flammability-leaflet",
            "home-making-1919",
            "cci-notes-13-18",
            "burn-test-handout");

    /** What all classes share at most: the rest stays with blends, finishes and fibres that the key does not know. */
    public static final double MOST_PROBABLE = 0.95;

    /** From this probability on a class is called likely. */
    public static final double CLASS_FROM = 0.60;

    /** From this probability on a family is, where no class is. */
    public static final double FAMILY_FROM = 0.75;

    /** With fewer answers the verdict is unsure. */
    public static final int FEWEST_ANSWERS = 2;

    /** Where the best class explains less than this part of what it might, nothing fits. */
    public static final double FITS_FROM = 0.1;

    /** Most threads of one cloth. */
    public static final int MOST_THREADS = 8;

    /** What the answer does not tell, in sentences. */
    public static final List<String> CAUTIONS = List.of(
            "The probabilities follow a table that was chosen after published keys; nobody measured them.",
            "Burning never tells how much of each fibre there is. A small share of a synthetic fibre may leave no bead.",
            "Blends, coatings, dyes and finishes hide what is below. A flame-retardant treatment makes cotton go out by"
                    + " itself, and it can wash out.",
            "Cotton, linen and viscose are easily taken for each other, so are wool, hair and silk, and polyester and"
                    + " polyamide. A microscope or a laboratory tells them apart.",
            "A bead, melting or drops show that it melts. Nothing here shows that it does not.",
            "This is no fire test. It says nothing of how fast a garment burns.");

    /** What to know before the cloth is entered as unknown, whatever was seen. */
    private static final List<String> ENTERING = List.of(
            "Enter it as unknown 100 %. It is then graded as the worst plausible fibre: as cloth that burns and melts.",
            "If you decide on fibres yourself, the shares are your own: this test gives none.");

    private static final String MELTS =
            "It was seen to melt: molten cloth sticks to skin. Enter no blend that is without a fibre that melts.";

    private static final String NOT_SEEN_TO_MELT = "It was not seen to melt. That does not show that it does not.";

    private final Evidence evidence;

    private FlameKey(Evidence evidence) {
        this.evidence = evidence;
    }

    /**
     * Reads the tables {@code burn-test.csv}, {@code burn-test-classes.csv} and {@code burn-test-answers.csv}; what is wrong in
     * them goes to the faults given. The key is of use only where there is no fault.
     *
     * @throws IOException where a table cannot be read at all
     */
    public static FlameKey read(Reader evidence, Reader classes, Reader answers, Fibres fibres, List<Fault> faults)
            throws IOException {
        return new FlameKey(EvidenceReader.read(evidence, classes, answers, fibres, faults));
    }

    public List<FlameClass> classes() {
        return evidence.classes();
    }

    /** The answers of a feature, in the order of the table. */
    public List<FlameAnswer> answers(FlameFeature feature) {
        return evidence.answers(feature);
    }

    /** What to know before a cloth of which that was found is entered, in sentences. */
    public static List<String> warnings(FlameFinding finding) {
        List<String> warnings = new ArrayList<>(ENTERING);
        warnings.add(finding.melting() == FlameFinding.Melting.SHOWN ? MELTS : NOT_SEEN_TO_MELT);
        return warnings;
    }

    /** What these threads of one cloth tell; refuses what is no answer, and threads of one name. */
    public FlameFinding finding(List<ThreadSeen> threads) {
        if (threads.isEmpty() || threads.size() > MOST_THREADS) {
            throw Refused.of(
                    "threads", "are " + threads.size(), "tell of at least one thread and at most " + MOST_THREADS);
        }
        ThreadKey key = new ThreadKey(evidence);
        Set<String> names = new HashSet<>();
        List<FlameFinding.OfThread> findings = new ArrayList<>();
        for (int i = 0; i < threads.size(); i++) {
            ThreadSeen thread = threads.get(i);
            String field = "threads[" + i + "]";
            if (!names.add(thread.thread().toLowerCase(Locale.ROOT))) {
                throw Refused.of(field + ".thread", "stands twice", "name each thread once: warp, weft, pile");
            }
            findings.add(Refused.within(field + ".observations", () -> key.finding(thread)));
        }
        return Together.of(findings);
    }
}
