package campcloth.plan;

import campcloth.layout.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What a layout leaves over. Small pieces are put into it one after the other, the largest first, each as far down as it
 * goes beside what lies already; tried are the places where its box touches the boxes of others or the edges of the cloth.
 * Empty says that no such place was found, not that there is none.
 */
final class Offcuts {

    private static final double SHARED_CM2 = 1e-6;
    private static final double TOUCH_CM = 1e-9;

    private final double usableWidthCm;
    private final double lengthCm;
    private final List<Outline> lying = new ArrayList<>();

    private Offcuts(double usableWidthCm, Lay lay) {
        this.usableWidthCm = usableWidthCm;
        this.lengthCm = lay.lengthCm();
        lay.pieces().forEach(piece -> lying.add(Outline.of(piece.outlineCm())));
    }

    /** Where all the small pieces lie in the offcuts of the lay. */
    static Optional<List<PlacedPiece>> hold(double usableWidthCm, Lay lay, List<CutPieces.Cut> small) {
        Offcuts offcuts = new Offcuts(usableWidthCm, lay);
        List<CutPieces.Cut> largestFirst = small.stream()
                .sorted(Comparator.comparingDouble(
                        (CutPieces.Cut cut) -> -cut.outline().areaCm2()))
                .toList();
        List<PlacedPiece> placed = new ArrayList<>();
        for (CutPieces.Cut cut : largestFirst) {
            for (int copy = 1; copy <= cut.count(); copy++) {
                Optional<PlacedPiece> place = offcuts.place(cut, copy);
                if (place.isEmpty()) {
                    return Optional.empty();
                }
                placed.add(place.get());
            }
        }
        return Optional.of(placed);
    }

    private Optional<PlacedPiece> place(CutPieces.Cut cut, int copy) {
        boolean mirrored = cut.pair() && copy % 2 == 0;
        for (double y : edges(cut.outline().heightCm(), lengthCm, Outline::lowCm, Outline::heightCm)) {
            for (double x : edges(cut.outline().widthCm(), usableWidthCm, Outline::leftCm, Outline::widthCm)) {
                Outline there = cut.outline().lying(false, mirrored, x, y);
                if (lying.stream().allMatch(other -> there.sharedAreaCm2(other) <= SHARED_CM2)) {
                    lying.add(there);
                    return Optional.of(new PlacedPiece(cut.name(), copy, x, y, false, mirrored, there.points()));
                }
            }
        }
        return Optional.empty();
    }

    private interface Side {
        double of(Outline outline);
    }

    /** Coordinates at which a piece of that size touches something, within the cloth. */
    private TreeSet<Double> edges(double sizeCm, double mostCm, Side from, Side extent) {
        TreeSet<Double> edges = new TreeSet<>();
        edges.add(0.0);
        edges.add(mostCm - sizeCm);
        for (Outline outline : lying) {
            edges.add(from.of(outline) + extent.of(outline));
            edges.add(from.of(outline) - sizeCm);
        }
        edges.removeIf(at -> at < 0 || at > mostCm - sizeCm + TOUCH_CM);
        return edges;
    }
}
