package campcloth.plan;

import campcloth.figure.Refused;
import campcloth.garment.Design;
import campcloth.garment.Designs;
import campcloth.garment.Garment;
import campcloth.garment.GarmentPiece;
import campcloth.layout.Match;
import campcloth.layout.Outline;
import campcloth.layout.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The garments of an order made up, and all pieces that are cut for them. */
final class CutPieces {

    /**
     * One line of the order made up.
     *
     * @param label what its pieces are called by, empty where it is the only line
     */
    record MadeUp(CuttingOrder.Line line, Garment garment, String label) {

        String nameOf(GarmentPiece piece) {
            return label.isEmpty() ? piece.name() : label + " " + piece.name();
        }

        /** Garments are matched each for itself. */
        Match matchOf(GarmentPiece piece) {
            Match own = piece.match();
            return label.isEmpty() ? own : new Match(own.at(), label + " " + own.group());
        }

        int copies(GarmentPiece piece) {
            return piece.count() * line.count();
        }
    }

    /** All copies of one piece. */
    record Cut(String name, Outline outline, int count, boolean pair, boolean foldable, Match match) {

        Piece piece(boolean nap) {
            return new Piece(name, outline, count, !nap, false, pair);
        }

        /** The same that has to meet the pattern of the cloth. */
        Piece matched(boolean nap) {
            return new Piece(name, outline, count, !nap, false, pair, Optional.of(match));
        }
    }

    private final List<MadeUp> garments;
    private final List<Cut> cuts;

    private CutPieces(List<MadeUp> garments, List<Cut> cuts) {
        this.garments = garments;
        this.cuts = cuts;
    }

    /** Makes up every line; refuses with the path of the line at fault. */
    static CutPieces of(CuttingOrder order) {
        List<MadeUp> garments = new ArrayList<>();
        for (int i = 0; i < order.garments().size(); i++) {
            CuttingOrder.Line line = order.garments().get(i);
            String label = order.garments().size() == 1 ? "" : line.design() + " " + (i + 1);
            Garment garment = Refused.within("garments[" + i + "]", () -> madeUp(line, order.cloth()));
            garments.add(new MadeUp(line, garment, label));
        }
        List<Cut> cuts = cuts(garments, Garment::pieces);
        checkCount(cuts);
        return new CutPieces(List.copyOf(garments), cuts);
    }

    private static List<Cut> cuts(List<MadeUp> garments, Function<Garment, List<GarmentPiece>> which) {
        List<Cut> cuts = new ArrayList<>();
        for (MadeUp madeUp : garments) {
            for (GarmentPiece piece : which.apply(madeUp.garment())) {
                cuts.add(new Cut(
                        madeUp.nameOf(piece),
                        piece.outline(),
                        madeUp.copies(piece),
                        piece.pair(),
                        piece.foldable(),
                        madeUp.matchOf(piece)));
            }
        }
        return List.copyOf(cuts);
    }

    private static Garment madeUp(CuttingOrder.Line line, ClothToCut cloth) {
        Design design = Designs.named(line.design());
        return design.madeUp(line.wearer(), line.options(), cloth.sewn());
    }

    private static void checkCount(List<Cut> cuts) {
        int pieces = cuts.stream().mapToInt(Cut::count).sum();
        if (pieces > Piece.MOST_COPIES) {
            throw Refused.of(
                    "garments",
                    "come to " + pieces + " pieces",
                    "plan at most " + Piece.MOST_COPIES + " pieces at a time");
        }
    }

    /** The same with the small pieces of every garment cut from the same cloth; refused where they become too many. */
    CutPieces withSmallPieces() {
        List<Cut> more = new ArrayList<>(cuts);
        more.addAll(smallCuts());
        checkCount(more);
        return new CutPieces(garments, List.copyOf(more));
    }

    /** Facings, bindings, pockets: not among {@link #cuts}. */
    List<Cut> smallCuts() {
        return cuts(garments, Garment::smallPieces);
    }

    List<MadeUp> garments() {
        return garments;
    }

    List<Cut> cuts() {
        return cuts;
    }

    double areaCm2() {
        return cuts.stream().mapToDouble(c -> c.count() * c.outline().areaCm2()).sum();
    }

    double widestCm() {
        return cuts.stream().mapToDouble(c -> c.outline().widthCm()).max().orElseThrow();
    }
}
