package campcloth.layout.drawing;

import campcloth.figure.Canvas;
import campcloth.figure.TextWidth;
import campcloth.layout.CuttingSheet;
import java.util.ArrayList;
import java.util.List;

/**
 * The cloth over as many A4 pages as it needs, from the cut edge on: at a scale at which it fits one page where that is not
 * too small to chalk from, else as wide as the page. The list stands below the last stretch or on pages of its own.
 */
public final class A4Pages {

    private static final double MARGIN_MM = 10;
    static final double WIDTH_MM = 210;
    static final double HEIGHT_MM = 297;
    /** The paper as attributes of a document. */
    static final String SIZE = " width=\"210mm\" height=\"297mm\"";

    private static final double ROOM_MM = HEIGHT_MM - 2 * MARGIN_MM;
    private static final double HEAD_MM = 8;
    private static final double FOOT_MM = 5;
    /** Smallest scale chosen to get all on one page. */
    private static final double SMALLEST_RATIO = 12.5;

    private static final int MOST_PAGES = 60;

    private final SheetDrawing drawing;
    private final List<Canvas> pages = new ArrayList<>();
    private final List<String> contents = new ArrayList<>();

    private A4Pages(CuttingSheet sheet) {
        this.drawing = new SheetDrawing(sheet);
    }

    /** One document for each page. */
    public static List<String> of(CuttingSheet sheet) {
        return new A4Pages(sheet).drawn();
    }

    private List<String> drawn() {
        CuttingSheet sheet = drawing.sheet;
        double titleMm =
                new TitleBlock(new Canvas(), sheet, SheetDrawing.PAPER_MM).draw(drawing.widest(), drawing.order);
        double firstMm = ROOM_MM - FOOT_MM - titleMm - Rulers.BELOW_MM;
        double otherMm = ROOM_MM - FOOT_MM - HEAD_MM - Rulers.BELOW_MM;
        Scale scale = scale(firstMm, otherMm);
        List<Clip> stretches = Breaks.of(
                sheet.widthCm(),
                sheet.lengthCm(),
                drawing.shapes,
                firstMm / scale.mmPerCm(),
                otherMm / scale.mmPerCm());
        double end = 0;
        for (Clip stretch : stretches) {
            Canvas page = page(
                    "from " + Drawn.cm(stretch.lowCm()) + " to " + Drawn.cm(stretch.topCm()) + " cm from the cut edge");
            double top = pages.size() > 1
                    ? HEAD_MM
                    : new TitleBlock(page, sheet, SheetDrawing.PAPER_MM).draw(scale, drawing.order);
            end = drawing.drawCloth(page, stretch, scale, top);
        }
        drawList(end);
        return documents();
    }

    private Scale scale(double firstMm, double otherMm) {
        Scale widest = drawing.widest();
        double besideListMm = firstMm - drawing.listOfNames().heightMm();
        for (double roomMm : new double[] {besideListMm, firstMm}) {
            double onOnePage = roomMm <= 0 ? Double.MAX_VALUE : drawing.sheet.lengthCm() * 10 / roomMm;
            if (onOnePage <= SMALLEST_RATIO) {
                return Scale.plain(Math.max(widest.ratioValue(), onOnePage));
            }
        }
        double onMostPages = drawing.sheet.lengthCm() * 10 / (otherMm * 0.6 * MOST_PAGES);
        return Scale.plain(Math.max(widest.ratioValue(), onMostPages));
    }

    private void drawList(double end) {
        CutList list = drawing.list();
        double left = ROOM_MM - FOOT_MM - end;
        if (list.heightMm() <= left) {
            list.draw(pages.get(pages.size() - 1), end, list.heightMm());
        }
        while (!list.isDone()) {
            list.draw(page("list of the parts"), HEAD_MM, ROOM_MM - FOOT_MM - HEAD_MM);
        }
    }

    private Canvas page(String content) {
        Canvas page = new Canvas();
        pages.add(page);
        contents.add(content);
        return page;
    }

    private List<String> documents() {
        List<String> documents = new ArrayList<>();
        Box frame = new Box(-MARGIN_MM, -MARGIN_MM, WIDTH_MM, HEIGHT_MM);
        for (int i = 0; i < pages.size(); i++) {
            Canvas page = pages.get(i);

            String words = "Page " + (i + 1) + " of " + pages.size() + ": " + contents.get(i);
            if (i > 0) {
                page.text(
                        0,
                        3.5,
                        3.4,
                        "start",
                        TextWidth.lines(drawing.sheet.title(), 3.4, 90).get(0));
            }
            page.text(SheetDrawing.PAPER_MM, ROOM_MM, Document.LEAST_TEXT_MM, "end", words);
            documents.add(Document.of(
                    drawing.sheet.title() + ", page " + (i + 1) + " of " + pages.size(),
                    words + ". " + drawing.description(),
                    frame,
                    SIZE,
                    page));
        }
        return documents;
    }
}
