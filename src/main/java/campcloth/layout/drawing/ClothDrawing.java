package campcloth.layout.drawing;

import campcloth.figure.Canvas;
import campcloth.layout.ClothEdge;
import campcloth.layout.CuttingSheet;
import campcloth.layout.Stripes;

/** The cloth in one window: its edges and folds, what is left over hatched, cuts right across, stripes, the nap. */
final class ClothDrawing {

    /** Room left and right of the cloth for rulers and words. */
    static final double LEFT_MM = 14;

    static final double RIGHT_MM = 18;

    private static final double WORDS_MM = Document.LEAST_TEXT_MM;
    private static final double TOUCH_CM = 1e-6;
    private static final double LEAST_WORDS_MM = 8;
    private static final double DENSEST_STRIPES_MM = 1.5;

    private final Canvas canvas;
    private final CuttingSheet sheet;
    private final Window window;

    ClothDrawing(Canvas canvas, CuttingSheet sheet, Window window) {
        this.canvas = canvas;
        this.sheet = sheet;
        this.window = window;
    }

    /** What lies under the parts. */
    void drawUnder() {
        Window w = window;
        canvas.area(
                "M" + Canvas.n(w.leftMm()) + " " + Canvas.n(w.bottomMm()) + "H" + Canvas.n(w.rightMm()) + "V"
                        + Canvas.n(w.topMm()) + "H" + Canvas.n(w.leftMm()) + "Z",
                "url(#left-over)");
    }

    /** What lies over the parts. */
    void drawOver(CutOrder order) {
        Clip clip = window.clip();
        endLine(window.bottomMm(), clip.lowCm() < TOUCH_CM);
        endLine(window.topMm(), clip.topCm() > sheet.lengthCm() - TOUCH_CM);
        drawEdge("left-edge", sheet.left(), window.leftMm(), 1, window.leftMm() - 10);
        drawEdge("right-edge", sheet.right(), window.rightMm(), -1, window.rightMm() + 4.5);
        for (int i = 0; i < order.crossCutsCm().size(); i++) {
            drawCrossCut(letters(i), order.crossCutsCm().get(i));
        }
        sheet.stripes().forEach(this::drawStripes);
        if (sheet.oneWay()) {
            drawNap();
        }
    }

    private void endLine(double y, boolean endOfCloth) {
        canvas.line(window.leftMm(), y, window.rightMm(), y, 0.3, endOfCloth ? Canvas.DASHED : Canvas.DOTTED);
    }

    private void drawEdge(String id, ClothEdge edge, double x, int inwards, double wordsX) {
        double top = window.topMm();
        double bottom = window.bottomMm();
        canvas.open(edge.isFold() ? id + "-fold" : id);
        switch (edge.kind()) {
            case SELVEDGE -> canvas.line(x, bottom, x, top, 1, Canvas.SOLID);
            case BOTH_SELVEDGES -> {
                canvas.line(x, bottom, x, top, 0.6, Canvas.SOLID);
                canvas.line(x - inwards * 1.2, bottom, x - inwards * 1.2, top, 0.6, Canvas.SOLID);
            }
            case FOLD -> {
                canvas.line(x, bottom, x, top, 0.9, Document.FOLD);
                drawFlap(x, inwards, edge.flapCm());
            }
        }
        double middle = (top + bottom) / 2;
        String words = edge.isFold() ? "FOLD, do not cut" : edge.kind().words();
        canvas.uprightText(wordsX, middle, WORDS_MM, "middle", words);
        canvas.close();
    }

    /** Where the upper layer ends, unless it covers the whole sheet. */
    private void drawFlap(double x, int inwards, double flapCm) {
        if (flapCm < sheet.widthCm() - TOUCH_CM) {
            double end = x + inwards * flapCm * window.mmPerCm();
            canvas.line(end, window.bottomMm(), end, window.topMm(), 0.4, "3 1");
            if (Math.abs(window.x(inwards > 0 ? sheet.widthCm() : 0) - end) > LEAST_WORDS_MM) {
                double middle = (window.topMm() + window.bottomMm()) / 2;
                canvas.uprightText(
                        end + (inwards > 0 ? 3.2 : -1.4), middle, WORDS_MM, "middle", "selvedge of the upper layer");
            }
        }
    }

    private void drawCrossCut(String letter, double atCm) {
        Clip clip = window.clip();
        if (atCm > clip.lowCm() - TOUCH_CM && atCm < clip.topCm() + TOUCH_CM) {
            double y = window.y(atCm);
            canvas.line(window.leftMm() - 4, y, window.rightMm() + 4, y, 0.5, "5 1.5");
            canvas.text(window.rightMm() + 4.5, y + 0.9, WORDS_MM, "start", letter + " ↑" + Drawn.cm(atCm));
        }
    }

    /** A to Z, then AA, AB and so on. */
    static String letters(int index) {
        String last = Character.toString('A' + index % 26);
        return index < 26 ? last : letters(index / 26 - 1) + last;
    }

    private void drawStripes(Stripes stripes) {
        if (stripes.everyCm() * window.mmPerCm() < DENSEST_STRIPES_MM) {
            return;
        }
        Clip clip = window.clip();
        double end = stripes.along() ? clip.rightCm() : clip.topCm();
        StringBuilder lines = new StringBuilder();
        for (int i = 0; stripes.firstCm() + i * stripes.everyCm() < end + TOUCH_CM; i++) {
            double at = stripes.firstCm() + i * stripes.everyCm();
            if (stripes.along()) {
                lines.append(Canvas.segment(window.x(at), window.bottomMm(), window.x(at), window.topMm()));
            } else if (at > clip.lowCm() - TOUCH_CM) {
                lines.append(Canvas.segment(window.leftMm(), window.y(at), window.rightMm(), window.y(at)));
            }
        }
        canvas.open(stripes.along() ? "stripes-along" : "stripes-across");
        canvas.path(lines, 0.2, Canvas.DOTTED);
        canvas.close();
    }

    private void drawNap() {
        double x = window.rightMm() + RIGHT_MM - 5;
        double middle = window.bottomMm() + (window.topMm() - window.bottomMm()) * 0.2;
        double length = Math.min(16, window.bottomMm() - window.topMm());
        canvas.open("nap");
        GrainArrow.arrow(canvas, x, middle, length, false);
        canvas.uprightText(x + 3.5, middle, WORDS_MM, "middle", "nap");
        canvas.close();
    }
}
