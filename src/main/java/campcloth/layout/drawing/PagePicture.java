package campcloth.layout.drawing;

import campcloth.figure.Canvas;
import campcloth.layout.CuttingSheet;

/**
 * The whole cloth in one picture that fits a page of A4 or US Letter beside a few lines of text, at the largest plain scale at which it
 * does. Its letters keep their size; measures that find no room are left to the larger drawings where the list would not fit either.
 */
public final class PagePicture {

    /** Height at most: about seven tenths of what Letter leaves within margins of 10 mm, 259 mm; A4 leaves 277. */
    public static final double HEIGHT_MM = 185;

    private PagePicture() {}

    public static String of(CuttingSheet sheet) {
        SheetDrawing drawing = new SheetDrawing(sheet);
        Scale scale = scale(sheet, drawing);
        Canvas canvas = new Canvas();
        double top = block(canvas, sheet).drawBriefly(scale, drawing.order);
        Clip whole = new Clip(0, 0, sheet.widthCm(), sheet.lengthCm());
        double below = drawing.drawCloth(canvas, whole, scale, top);
        double end = drawList(canvas, drawing, below);
        Box frame = new Box(0, 0, SheetDrawing.PAPER_MM, end + 1);
        String size = " width=\"" + Canvas.n(frame.width()) + "mm\" height=\"" + Canvas.n(frame.height()) + "mm\"";
        return Document.of(sheet.title(), drawing.description(), frame, size, canvas);
    }

    private static TitleBlock block(Canvas canvas, CuttingSheet sheet) {
        return new TitleBlock(canvas, sheet, SheetDrawing.PAPER_MM);
    }

    private static Scale scale(CuttingSheet sheet, SheetDrawing drawing) {
        double headMm = block(new Canvas(), sheet).drawBriefly(drawing.widest(), drawing.order);
        double roomMm = HEIGHT_MM - headMm - Rulers.BELOW_MM;
        double besideListMm = roomMm - drawing.listOfNames().heightMm();
        double cmPerMm = sheet.lengthCm() / (besideListMm > roomMm / 2 ? besideListMm : roomMm);
        return Scale.plain(Math.max(drawing.widest().ratioValue(), cmPerMm * 10));
    }

    private static double drawList(Canvas canvas, SheetDrawing drawing, double topMm) {
        double leftMm = HEIGHT_MM - topMm;
        CutList all = drawing.list();
        CutList list = all.heightMm() <= leftMm ? all : drawing.listOfNames();
        return list.heightMm() <= leftMm ? list.draw(canvas, topMm, list.heightMm()) : topMm;
    }
}
