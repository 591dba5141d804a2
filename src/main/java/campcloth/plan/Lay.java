package campcloth.plan;

import campcloth.layout.Layout;
import campcloth.layout.Outline;
import campcloth.layout.Placement;
import campcloth.layout.Strip;
import java.util.List;

/**
 * All pieces on the cloth.
 *
 * @param lengthCm cloth that they take
 * @param pieces where each lies, as on open cloth
 */
record Lay(double lengthCm, List<PlacedPiece> pieces) {

    /** A lay on open cloth, and the bound that the layout proved. */
    record Open(Lay lay, double lowerBoundCm) {}

    /** The shorter of the layout searched and of the rows that the rule of thumb has in mind. */
    static Open open(double usableWidthCm, boolean nap, CutPieces pieces, Search search) {
        Layout layout = search.layout(
                Strip.ofWidth(usableWidthCm),
                pieces.cuts().stream().map(cut -> cut.piece(nap)).toList());
        Lay searched = of(layout);
        Lay rows = RowsLay.of(usableWidthCm, pieces);
        return new Open(rows.lengthCm < searched.lengthCm ? rows : searched, layout.lowerBoundCm());
    }

    static Lay of(Layout layout) {
        List<PlacedPiece> placed = layout.placements().stream()
                .map(placement -> placed(placement, layout.outlineOf(placement)))
                .toList();
        return new Lay(layout.lengthCm(), placed);
    }

    private static PlacedPiece placed(Placement placement, Outline lying) {
        return new PlacedPiece(
                placement.piece(),
                placement.copy(),
                placement.xCm(),
                placement.yCm(),
                placement.turned(),
                placement.mirrored(),
                lying.points(),
                placement.atHand());
    }
}
