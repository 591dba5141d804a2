package campcloth.plan;

import campcloth.layout.Effort;
import campcloth.layout.Layout;
import campcloth.layout.Nesting;
import campcloth.layout.Piece;
import campcloth.layout.Progress;
import campcloth.layout.Strip;
import java.util.List;

/**
 * How the layouts of one plan are looked for: how long each, and who may end all of them. What is then found so far is taken.
 *
 * @param progress hears of each layout's lengths by turns, so that only its wish to end means anything here
 */
record Search(Effort effort, Progress progress) {

    private static final double LEAST_SECONDS = 0.02;

    /** With nobody who ends it. */
    static Search of(Effort effort) {
        return new Search(effort, Progress.NONE);
    }

    Layout layout(Strip strip, List<Piece> pieces) {
        return Nesting.layout(strip, pieces, effort, progress);
    }

    /** Where there is little choice, little is spent. */
    Search briefer(double share) {
        return new Search(new Effort(Math.max(LEAST_SECONDS, effort.seconds() * share), effort.seed()), progress);
    }

    boolean isStopped() {
        return progress.isStopped();
    }
}
