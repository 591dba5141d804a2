package campcloth.layout;

import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.layout.search.Watch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Lays pieces on a strip of cloth so that it takes little length (two-dimensional strip packing). The layout always holds:
 * every copy is there, lies within the cloth as it may, meets the pattern where it must, and overlaps no other; it is verified
 * by a method of its own before it is given out, and a plain stack of pieces takes its place should that ever fail. It is
 * short, not proven shortest, unless its length equals the lower bound.
 *
 * <p>Lengths at hand are used first: least length from the bolt, then few lengths at hand begun. Where a pattern is matched,
 * the place of the repeat on which a group lies is tried out among a few, and the length without matching told beside.
 */
public final class Nesting {

    private static final double WIDTH_TOLERANCE_CM = 1e-9;
    /** Parts of the effort. */
    private static final double UNMATCHED_SHARE = 0.25;

    private static final double FEWER_LENGTHS_SHARE = 0.25;
    private static final double LEAST_SECONDS = 0.005;

    private Nesting() {}

    /** A short layout of the pieces, or a refusal that names the piece at fault. */
    public static Layout layout(Strip strip, List<Piece> pieces, Effort effort) {
        return layout(strip, pieces, effort, Progress.NONE);
    }

    /** A short layout of the pieces, while somebody follows the search. */
    public static Layout layout(Strip strip, List<Piece> pieces, Effort effort, Progress progress) {
        check(strip, pieces);
        double bound = LowerBound.cm(strip, pieces);
        List<Integer> lengths =
                IntStream.rangeClosed(1, strip.atHand().size()).boxed().toList();
        Following following = new Following(progress, length -> UsedCloth.percent(strip, pieces, length));
        MatchChoice choice = new MatchChoice(strip, pieces, lengths, bound);
        double seconds = effort.seconds();
        if (!choice.matches()) {
            return fewer(strip, pieces, List.of(), effort, seconds, following, lengths, bound);
        }
        List<MatchPhase> phases = choice.best(effort, following);
        Layout matched = fewer(
                strip,
                pieces,
                phases,
                effort,
                seconds * (1 - UNMATCHED_SHARE - MatchChoice.SHARE),
                following,
                lengths,
                bound);
        Layout unmatched = new Laying(strip, pieces, lengths, List.of(), bound)
                .laid(seconds * UNMATCHED_SHARE, effort.seed(), quiet(following));
        return matched.beside(Math.min(matched.lengthCm(), unmatched.lengthCm()));
    }

    /** The search, then again with one length at hand less for as long as the bolt is none the longer. */
    private static Layout fewer(
            Strip strip,
            List<Piece> pieces,
            List<MatchPhase> phases,
            Effort effort,
            double seconds,
            Watch watch,
            List<Integer> lengths,
            double bound) {
        double share = lengths.isEmpty() ? 0 : FEWER_LENGTHS_SHARE;
        Laying first = new Laying(strip, pieces, lengths, phases, bound);
        Layout best = first.laid(seconds * (1 - share), effort.seed(), watch);
        double spent = first.spentSeconds();
        List<Integer> begun = best.lengthsBegun();
        double each = Math.max(LEAST_SECONDS, seconds * share / Math.max(1, begun.size()));
        List<Integer> left = lengths;
        for (int without : begun) {
            if (watch.isStopped() || spent > seconds) {
                return best;
            }
            List<Integer> others =
                    left.stream().filter(number -> number != without).toList();
            Laying next = new Laying(strip, pieces, others, phases, bound);
            Layout layout = next.laid(each, effort.seed(), quiet(watch));
            spent += next.spentSeconds();
            if (layout.lengthCm() <= best.lengthCm() + WIDTH_TOLERANCE_CM
                    && layout.lengthsBegun().size() <= best.lengthsBegun().size()) {
                best = layout;
                left = others;
            }
        }
        return best;
    }

    /** Only whether to stop. */
    static Watch quiet(Watch watch) {
        return new Watch() {
            @Override
            public void better(double length) {}

            @Override
            public boolean isStopped() {
                return watch.isStopped();
            }
        };
    }

    /** Refuses what can lie on no strip of that width, whatever the effort. */
    public static void check(Strip strip, List<Piece> pieces) {
        int copies = pieces.stream().mapToInt(Piece::count).sum();
        if (copies < 1 || copies > Piece.MOST_COPIES) {
            throw Refused.of(
                    "pieces",
                    "holds " + copies + " copies in all",
                    "give from 1 to " + Piece.MOST_COPIES + " copies, in several layouts if there are more");
        }
        List<Refusal> tooWide = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            double width = piece.outline().widthCm();
            if (width > strip.usableWidthCm() + WIDTH_TOLERANCE_CM) {
                tooWide.add(new Refusal(
                        "pieces[" + i + "].outlineCm",
                        piece.name() + " is " + Words.fixed(width, 1) + " cm wide, the cloth "
                                + Words.fixed(strip.usableWidthCm(), 1) + " cm",
                        width > strip.widthCm() + WIDTH_TOLERANCE_CM
                                ? "take wider cloth or divide the piece by a seam"
                                : "keep less of the edges free, take wider cloth or divide the piece by a seam"));
            }
        }
        if (!tooWide.isEmpty()) {
            throw new Refused(tooWide);
        }
    }

    /** Refuses a piece that lies nowhere with its match point where it must be. */
    static void refuseHomeless(Optional<Piece> homeless, List<Piece> pieces) {
        homeless.ifPresent(piece -> {
            throw Refused.of(
                    "pieces[" + pieces.indexOf(piece) + "].matchAtCm",
                    "of " + piece.name() + " cannot meet its place of the repeat on cloth so narrow",
                    "choose another place in matchPhases, take wider cloth, or leave out the match across");
        });
    }
}
