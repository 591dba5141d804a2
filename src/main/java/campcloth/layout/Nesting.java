package campcloth.layout;

import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.layout.search.Ring;
import campcloth.layout.search.StripPacking;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays pieces on a strip of cloth so that it takes little length (two-dimensional strip packing). The layout always holds:
 * every copy is there, lies within the strip as it may, and overlaps no other; it is verified by a method of its own before
 * it is given out, and a plain stack of pieces takes its place should that ever fail. It is short, not proven shortest,
 * unless its length equals the lower bound.
 */
public final class Nesting {

    private static final double WIDTH_TOLERANCE_CM = 1e-9;

    private record Lie(boolean turned, boolean mirrored) {}

    private record Copy(Piece piece, int number, List<Lie> lies) {}

    private Nesting() {}

    /** A short layout of the pieces, or a refusal that names the piece at fault. */
    public static Layout layout(Strip strip, List<Piece> pieces, Effort effort) {
        return layout(strip, pieces, effort, Progress.NONE);
    }

    /** A short layout of the pieces, while somebody follows the search. */
    public static Layout layout(Strip strip, List<Piece> pieces, Effort effort, Progress progress) {
        refuseWhatCannotLie(strip, pieces);
        double bound = LowerBound.cm(strip, pieces);
        List<Copy> copies = new ArrayList<>();
        Map<String, Integer> numbers = new HashMap<>();
        for (Piece piece : pieces) {
            for (int copy = 1; copy <= piece.count(); copy++) {
                int number = numbers.merge(piece.name(), 1, Integer::sum);
                copies.add(new Copy(piece, number, lies(piece, copy)));
            }
        }
        List<StripPacking.Spot> spots = StripPacking.spots(
                strip.widthCm(),
                strip.gapCm(),
                bound,
                items(copies),
                effort.seconds(),
                effort.seed(),
                new Following(progress, length -> usedPercent(strip, pieces, length)));
        Layout layout = layoutOf(strip, pieces, bound, placements(copies, spots));
        return Verification.faults(layout).isEmpty() ? layout : layoutOf(strip, pieces, bound, stacked(strip, copies));
    }

    private static void refuseWhatCannotLie(Strip strip, List<Piece> pieces) {
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
            if (width > strip.widthCm() + WIDTH_TOLERANCE_CM) {
                tooWide.add(new Refusal(
                        "pieces[" + i + "].outlineCm",
                        piece.name() + " is " + Words.fixed(width, 1) + " cm wide, the cloth "
                                + Words.fixed(strip.widthCm(), 1) + " cm",
                        "take wider cloth or divide the piece by a seam"));
            }
        }
        if (!tooWide.isEmpty()) {
            throw new Refused(tooWide);
        }
    }

    /** The ways in which a copy, counted from 1 within its piece, may lie. */
    private static List<Lie> lies(Piece piece, int copy) {
        List<Lie> lies = new ArrayList<>();
        for (boolean mirrored : new boolean[] {false, true}) {
            for (boolean turned : new boolean[] {false, true}) {
                if (piece.allowsMirrored(copy, mirrored) && piece.allowsTurned(turned)) {
                    lies.add(new Lie(turned, mirrored));
                }
            }
        }
        return lies;
    }

    private static List<StripPacking.Item> items(List<Copy> copies) {
        Map<List<Object>, StripPacking.Item> made = new HashMap<>();
        return copies.stream()
                .map(copy -> made.computeIfAbsent(
                        List.of(copy.piece.outline(), copy.lies),
                        key -> new StripPacking.Item(copy.lies.stream()
                                .map(lie -> ring(copy.piece.outline().lying(lie.turned, lie.mirrored, 0, 0)))
                                .toList())))
                .toList();
    }

    private static Ring ring(Outline outline) {
        return Ring.of(
                outline.points().stream().mapToDouble(Point::xCm).toArray(),
                outline.points().stream().mapToDouble(Point::yCm).toArray());
    }

    private static List<Placement> placements(List<Copy> copies, List<StripPacking.Spot> spots) {
        List<Placement> placements = new ArrayList<>();
        for (int i = 0; i < copies.size(); i++) {
            Copy copy = copies.get(i);
            StripPacking.Spot spot = spots.get(i);
            Lie lie = copy.lies.get(spot.way());
            placements.add(new Placement(copy.piece.name(), copy.number, spot.x(), spot.y(), lie.turned, lie.mirrored));
        }
        return placements;
    }

    /** Every copy above the one before. */
    private static List<Placement> stacked(Strip strip, List<Copy> copies) {
        List<Placement> placements = new ArrayList<>();
        double low = 0;
        for (Copy copy : copies) {
            Lie lie = copy.lies.get(0);
            placements.add(new Placement(copy.piece.name(), copy.number, 0, low, lie.turned, lie.mirrored));
            low += copy.piece.outline().heightCm() + strip.gapCm();
        }
        return placements;
    }

    private static Layout layoutOf(Strip strip, List<Piece> pieces, double bound, List<Placement> placements) {
        Layout bare = new Layout(strip, pieces, 0, bound, 0, placements);
        double length = placements.stream()
                .mapToDouble(p -> p.yCm() + bare.pieceOf(p).outline().heightCm())
                .max()
                .orElseThrow();
        return new Layout(strip, pieces, length, bound, usedPercent(strip, pieces, length), placements);
    }

    private static double usedPercent(Strip strip, List<Piece> pieces, double length) {
        double area = pieces.stream()
                .mapToDouble(piece -> piece.count() * piece.outline().areaCm2())
                .sum();
        return Math.min(100, 100 * area / (strip.widthCm() * length));
    }
}
