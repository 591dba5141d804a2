package campcloth.layout.drawing;

import campcloth.figure.Canvas;
import campcloth.figure.SvgDocument;
import campcloth.figure.TextWidth;
import campcloth.layout.ClothEdge;
import campcloth.layout.CuttingSheet;
import java.util.ArrayList;
import java.util.List;

/**
 * The whole cloth in one picture for a phone: where each part lies, its number, its way up; below, what each number is. Nothing
 * to measure stands in it. Lengths in units of which {@value #WIDTH} make the width.
 */
public final class CompactPicture {

    private static final double WIDTH = 340;
    private static final double MARGIN = 10;
    private static final double LETTERS = 13;
    private static final double LINE = 17;
    private static final double TALLEST = 1400;
    private static final double NUMBER_HEIGHT = 17;

    private final CuttingSheet sheet;
    private final SheetDrawing drawing;
    private final Canvas canvas = new Canvas();
    private final List<Integer> unnumbered = new ArrayList<>();
    private double y;

    private CompactPicture(CuttingSheet sheet) {
        this.sheet = sheet;
        this.drawing = new SheetDrawing(sheet);
    }

    public static String of(CuttingSheet sheet) {
        return new CompactPicture(sheet).drawn();
    }

    private String drawn() {
        y = 6;
        write(TextWidth.shortened(sheet.title(), LETTERS + 2, 2 * (WIDTH - 2 * MARGIN)), LETTERS + 2);
        write(
                "As it lies " + Drawn.cm(sheet.widthCm()) + " cm wide, " + Drawn.cm(sheet.lengthCm()) + " cm long.",
                LETTERS);
        cloth();
        write("Arrow: along the grain, its head at the top of the pattern. Hatched: left over.", LETTERS);
        y += 4;
        for (Drawn part : drawing.parts) {
            String size = (part.layers().isEmpty() ? "" : ", " + part.layers()) + ", " + part.size() + " cm";
            double room = 1.6 * (WIDTH - 2 * MARGIN) - TextWidth.of(size, LETTERS);
            write(part.number() + ": " + TextWidth.shortened(part.part().name(), LETTERS, room) + size, LETTERS);
        }
        if (!unnumbered.isEmpty()) {
            write(
                    "No room for the number of: "
                            + String.join(
                                    ", ",
                                    unnumbered.stream().map(String::valueOf).toList()) + ".",
                    LETTERS);
        }
        return new SvgDocument(sheet.title(), drawing.description())
                .hatched("left-over", 7, "M0 7L7 0", "#999", 0.8)
                .of(0, 0, WIDTH, y + MARGIN, canvas.drawn());
    }

    private void cloth() {
        y += 20;
        canvas.text(MARGIN, y, LETTERS, "start", sheet.left().kind().words());
        canvas.text(WIDTH - MARGIN, y, LETTERS, "end", sheet.right().kind().words());
        double scale = Math.min((WIDTH - 2 * MARGIN) / sheet.widthCm(), TALLEST / sheet.lengthCm());
        double left = (WIDTH - scale * sheet.widthCm()) / 2;
        double top = y + 8;
        double bottom = top + scale * sheet.lengthCm();
        Clip whole = new Clip(0, 0, sheet.widthCm(), sheet.lengthCm());
        Window window = new Window(whole, left, bottom, scale);
        canvas.box(left, top, window.rightMm() - left, bottom - top, "url(#left-over)", 0.6);
        List<Shape> seen =
                drawing.parts.stream().map(part -> window.onPaper(part.shape())).toList();
        seen.forEach(shape -> canvas.shape(PartDrawing.closed(shape), "#fff", "#000", 1.6));
        for (int i = 0; i < seen.size(); i++) {
            marked(drawing.parts.get(i), seen.get(i));
        }
        edge(sheet.left(), window, left, 3);
        edge(sheet.right(), window, window.rightMm(), -3);
        canvas.line(left, bottom, window.rightMm(), bottom, 1.4, "6 3");
        y = bottom + LINE;
        canvas.text(WIDTH / 2, y, LETTERS, "middle", "cut end: measure from here");
    }

    private void edge(ClothEdge edge, Window window, double x, double inwards) {
        double top = window.topMm();
        double bottom = window.bottomMm();
        switch (edge.kind()) {
            case SELVEDGE -> canvas.line(x, bottom, x, top, 3, Canvas.SOLID);
            case BOTH_SELVEDGES -> {
                canvas.line(x, bottom, x, top, 2, Canvas.SOLID);
                canvas.line(x + inwards, bottom, x + inwards, top, 2, Canvas.SOLID);
            }
            case FOLD -> {
                canvas.shape(Canvas.segment(x, bottom, x, top), "none", "#fff", 4);
                canvas.line(x, bottom, x, top, 3, "12 4 2 4");
            }
        }
    }

    private void marked(Drawn part, Shape seen) {
        Room room = new Room(seen);
        String number = Integer.toString(part.number());
        double width = TextWidth.of(number, LETTERS + 1) + 4;
        for (LabelSpot spot : LabelSpot.all(seen)) {
            if (room.take(new Box(spot.x() - width / 2, spot.y() - NUMBER_HEIGHT / 2, width, NUMBER_HEIGHT))) {
                canvas.boldText(spot.x(), spot.y() + 5, LETTERS + 1, "middle", number);
                arrow(room, part.part().turned());
                return;
            }
        }
        unnumbered.add(part.number());
    }

    private void arrow(Room room, boolean topDown) {
        for (LabelSpot spot : LabelSpot.all(room.shape())) {
            for (double across : new double[] {0.25, 0.75, 0.5}) {
                double x = spot.x() + (across - 0.5) * spot.width();
                if (room.take(new Box(x - 5, spot.y() - 15, 10, 30))) {
                    double tip = spot.y() + (topDown ? 13 : -13);
                    double barb = tip + (topDown ? -6 : 6);
                    canvas.path(
                            Canvas.segment(x, spot.y() + (topDown ? -13 : 13), x, tip)
                                    + Canvas.segment(x - 4, barb, x, tip)
                                    + Canvas.segment(x + 4, barb, x, tip),
                            1.2,
                            Canvas.SOLID);
                    return;
                }
            }
        }
    }

    private void write(String words, double letters) {
        for (String line : TextWidth.lines(words, letters, WIDTH - 2 * MARGIN)) {
            y += letters + LINE - LETTERS;
            canvas.text(MARGIN, y, letters, "start", line);
        }
    }
}
