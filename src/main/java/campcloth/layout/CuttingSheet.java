package campcloth.layout;

import java.util.List;

/**
 * All that a cutting drawing shows. The sheet is the cloth as it lies to be cut, so folded cloth is as narrow as it lies.
 *
 * @param title its heading
 * @param facts lines about cloth and plan, in words
 * @param widthCm width of the sheet
 * @param lengthCm length of the sheet, from the cut edge
 * @param left its left edge
 * @param right its right edge
 * @param parts what is chalked
 * @param oneWay every part lies the same way up, since the cloth has a nap
 * @param stripes where the pattern of the cloth repeats; empty where it has none
 */
public record CuttingSheet(
        String title,
        List<String> facts,
        double widthCm,
        double lengthCm,
        ClothEdge left,
        ClothEdge right,
        List<SheetPart> parts,
        boolean oneWay,
        List<Stripes> stripes) {

    public CuttingSheet {
        facts = List.copyOf(facts);
        parts = List.copyOf(parts);
        stripes = List.copyOf(stripes);
    }

    /** A layout on open cloth of which nothing else is known. */
    public static CuttingSheet of(Layout layout, String title) {
        List<SheetPart> parts = layout.placements().stream()
                .map(at -> new SheetPart(
                        nameOf(layout, at), layout.outlineOf(at), at.turned(), at.mirrored(), SheetPart.Cut.ONE_LAYER))
                .toList();
        return new CuttingSheet(
                title,
                List.of(),
                layout.widthCm(),
                layout.lengthCm(),
                ClothEdge.SELVEDGE,
                ClothEdge.SELVEDGE,
                parts,
                false,
                List.of());
    }

    private static String nameOf(Layout layout, Placement at) {
        long copies = layout.placements().stream()
                .filter(other -> other.piece().equals(at.piece()))
                .count();
        return copies > 1 ? at.piece() + " " + at.copy() : at.piece();
    }

    public boolean isFolded() {
        return left.isFold() || right.isFold();
    }
}
