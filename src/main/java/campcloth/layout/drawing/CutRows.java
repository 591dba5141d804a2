package campcloth.layout.drawing;

import campcloth.layout.CutRow;
import campcloth.layout.CuttingSheet;
import campcloth.layout.SheetPart;
import java.util.List;

/** What a cutting drawing shows, part by part, in figures and sentences. */
public final class CutRows {

    private CutRows() {}

    public static List<CutRow> of(CuttingSheet sheet) {
        List<Drawn> parts = new SheetDrawing(sheet).parts;
        return parts.stream().map(part -> row(sheet, part, parts.size())).toList();
    }

    private static CutRow row(CuttingSheet sheet, Drawn part, int of) {
        SheetPart cut = part.part();
        double left = part.shape().leftCm();
        double low = part.shape().lowCm();
        String layers = part.layers().isEmpty() ? "" : ", " + part.layers();
        String sentence = "Piece " + part.number() + " of " + of + ", " + cut.name() + layers + ": " + Drawn.cm(left)
                + " cm from the left edge (" + sheet.left().kind().words() + "), " + Drawn.cm(low)
                + " cm from the cut end, "
                + Drawn.cm(cut.outline().widthCm()) + " cm wide, "
                + Drawn.cm(cut.outline().heightCm()) + " cm along the cloth" + part.lying() + ".";
        return new CutRow(
                part.number(),
                of,
                cut.name(),
                left,
                low,
                cut.outline().widthCm(),
                cut.outline().heightCm(),
                cut.turned(),
                cut.mirrored(),
                cut.cut(),
                sentence);
    }
}
