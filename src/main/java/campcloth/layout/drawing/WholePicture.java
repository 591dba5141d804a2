package campcloth.layout.drawing;

import campcloth.figure.Canvas;
import campcloth.layout.CuttingSheet;

/** The whole cloth in one picture, as wide as an A4 page within its margins and as long as it must be. */
public final class WholePicture {

    private WholePicture() {}

    public static String of(CuttingSheet sheet) {
        SheetDrawing drawing = new SheetDrawing(sheet);
        Canvas canvas = new Canvas();
        Scale scale = drawing.widest();
        double top = new TitleBlock(canvas, sheet, SheetDrawing.PAPER_MM).draw(scale, drawing.order);
        Clip whole = new Clip(0, 0, sheet.widthCm(), sheet.lengthCm());
        double below = drawing.drawCloth(canvas, whole, scale, top);
        CutList list = drawing.list();
        double end = list.draw(canvas, below, list.heightMm());
        Box frame = new Box(0, 0, SheetDrawing.PAPER_MM, end + 2);
        return Document.of(sheet.title(), drawing.description(), frame, "", canvas);
    }
}
