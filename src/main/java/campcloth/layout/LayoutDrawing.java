package campcloth.layout;

import campcloth.layout.drawing.A4Pages;
import campcloth.layout.drawing.CompactPicture;
import campcloth.layout.drawing.CutRows;
import campcloth.layout.drawing.PagePicture;
import campcloth.layout.drawing.WholePicture;
import java.util.List;

/**
 * A cutting sheet drawn to be chalked from: SVG in black on white, one unit to a mm of paper. The cut edge lies at the
 * bottom. Every part carries a number in an order in which it can be cut, its name and size where there is room, an arrow
 * along the grain, and at its corners how far they lie from the edge of the cloth and from the cut edge. A list says the
 * same in words. No letter is smaller than 2.5 mm on A4 within margins of 10 mm.
 */
public final class LayoutDrawing {

    private LayoutDrawing() {}

    /** A layout on open cloth as one picture. */
    public static String svg(Layout layout, String title) {
        return svg(CuttingSheet.of(layout, title));
    }

    /** The whole cloth as one picture, as long as it must be. */
    public static String svg(CuttingSheet sheet) {
        return WholePicture.of(sheet);
    }

    /** The whole cloth for a phone: parts by number and their way up, no measures. */
    public static String compactSvg(CuttingSheet sheet) {
        return CompactPicture.of(sheet);
    }

    /** The same in figures and sentences, in an order in which the parts can be cut. */
    public static List<CutRow> rows(CuttingSheet sheet) {
        return CutRows.of(sheet);
    }

    /** The whole cloth as one picture that fits a page of A4 or US Letter, however long it is. */
    public static String onePage(CuttingSheet sheet) {
        return PagePicture.of(sheet);
    }

    /** The same over A4 pages, each a picture of its own. */
    public static List<String> a4Pages(CuttingSheet sheet) {
        return A4Pages.of(sheet);
    }
}
