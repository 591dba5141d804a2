package campcloth.layout;

import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Whether a layout holds: every copy once, each turned and mirrored only as it may be, all within the strip, no two
 * overlapping on one cloth, match points on their place of the repeat, and length and bound as claimed. Pieces that touch share a little area by rounding; up to {@value
 * #TOUCHING_CM2} cm2 (0.001 mm2) counts as touching. The gap between pieces is not verified here.
 */
public final class Verification {

    static final double TOUCHING_CM2 = 1e-5;
    private static final double EDGE_CM = 1e-7;
    private static final double BOUND_CM = 1e-5;

    private Verification() {}

    /** What is wrong, in words; empty for a layout that holds. */
    public static List<String> faults(Layout layout) {
        List<String> faults = new ArrayList<>();
        addMissing(layout, faults);
        if (!faults.isEmpty()) {
            return faults;
        }
        List<Outline> outlines =
                layout.placements().stream().map(layout::outlineOf).toList();
        for (int i = 0; i < outlines.size(); i++) {
            Placement placement = layout.placements().get(i);
            addForbiddenLie(layout, placement, faults);
            PatternCheck.addMiss(layout, placement, faults);
            addOverEdge(layout, placement, outlines.get(i), faults);
            for (int j = 0; j < i; j++) {
                boolean apart =
                        !placement.atHand().equals(layout.placements().get(j).atHand());
                double shared = apart ? 0 : Overlap.areaCm2(outlines.get(i), outlines.get(j));
                if (shared > TOUCHING_CM2) {
                    faults.add(words(placement) + " and "
                            + words(layout.placements().get(j)) + " share " + shared + " cm2");
                }
            }
        }
        if (layout.lowerBoundCm() > layout.lengthCm() + BOUND_CM) {
            faults.add("the length " + layout.lengthCm() + " is below the bound " + layout.lowerBoundCm());
        }
        return faults;
    }

    private static void addMissing(Layout layout, List<String> faults) {
        Map<String, Integer> asked = Layout.copies(layout.pieces());
        Set<List<Object>> seen = new HashSet<>();
        for (Placement placement : layout.placements()) {
            int copies = asked.getOrDefault(placement.piece(), 0);
            if (placement.copy() < 1
                    || placement.copy() > copies
                    || !seen.add(List.of(placement.piece(), placement.copy()))) {
                faults.add(words(placement) + " was not asked for, or lies twice");
            }
        }
        int copies = asked.values().stream().mapToInt(Integer::intValue).sum();
        if (layout.placements().size() < copies) {
            faults.add(layout.placements().size() + " of " + copies + " copies lie on the cloth");
        }
    }

    private static void addForbiddenLie(Layout layout, Placement placement, List<String> faults) {
        Piece piece = layout.pieceOf(placement);
        if (!piece.allowsTurned(placement.turned())) {
            faults.add(words(placement) + " is turned, against the nap");
        }
        if (!piece.allowsMirrored(layout.copyOfPiece(placement), placement.mirrored())) {
            faults.add(words(placement) + (placement.mirrored() ? " is mirrored" : " is not mirrored"));
        }
    }

    private static void addOverEdge(Layout layout, Placement placement, Outline outline, List<String> faults) {
        Strip strip = layout.strip();
        Optional<AtHand> length =
                placement.atHand().map(number -> strip.atHand().get(number - 1));
        double side = strip.selvedgeCm() + strip.edgeGapCm();
        double width = length.flatMap(AtHand::widthCm).orElse(strip.widthCm());
        double top = length.map(AtHand::lengthCm).orElse(layout.lengthCm());
        if (outline.leftCm() < side - EDGE_CM
                || outline.lowCm() < strip.edgeGapCm() - EDGE_CM
                || outline.leftCm() + outline.widthCm() > width - side + EDGE_CM
                || outline.lowCm() + outline.heightCm() > top - strip.edgeGapCm() + EDGE_CM) {
            faults.add(words(placement) + " lies over the edge");
        }
    }

    private static String words(Placement placement) {
        return placement.piece() + " " + placement.copy() + " at " + Words.fixed(placement.xCm(), 2) + ", "
                + Words.fixed(placement.yCm(), 2);
    }
}
