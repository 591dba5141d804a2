package campcloth.layout.drawing;

import campcloth.figure.Canvas;
import campcloth.figure.TextWidth;
import campcloth.layout.MeasuringCard;
import java.util.List;

/** Draws a {@link MeasuringCard}: from the top down, all lengths in mm of paper. */
public final class CardPage {

    private static final double MARGIN_MM = 10;
    private static final double TITLE_MM = 5;
    private static final double WORDS_MM = 2.9;
    private static final double LINE = 1.3;
    private static final double CONTROL_MM = 100;
    private static final double THIN = 0.2;
    private static final double THICK = 0.35;
    private static final double GAP_MM = 8;
    private static final double SKETCH_MM = 44;
    private static final double ROW_MM = 7;
    private static final double NAMES_MM = 34;

    private final MeasuringCard card;
    private final Canvas canvas = new Canvas();
    private double y;

    private CardPage(MeasuringCard card) {
        this.card = card;
    }

    public static String of(MeasuringCard card) {
        return new CardPage(card).drawn();
    }

    private String drawn() {
        write(List.of(card.title()), 0, TITLE_MM, SheetDrawing.PAPER_MM);
        y += 1;
        write(card.intro(), 0, WORDS_MM, SheetDrawing.PAPER_MM);
        control();
        squareAndSketch();
        table();
        blanks();
        write(card.foot(), 0, Document.LEAST_TEXT_MM, SheetDrawing.PAPER_MM);
        return Document.of(
                card.title(),
                "A page of A4 in true size: " + String.join(" ", card.intro()),
                new Box(-MARGIN_MM, -MARGIN_MM, A4Pages.WIDTH_MM, A4Pages.HEIGHT_MM),
                A4Pages.SIZE,
                canvas);
    }

    private void write(List<String> sentences, double x, double sizeMm, double widthMm) {
        for (String sentence : sentences) {
            for (String line : TextWidth.lines(sentence, sizeMm, widthMm)) {
                y += LINE * sizeMm;
                canvas.text(x, y, sizeMm, "start", line);
            }
        }
    }

    private void control() {
        y += 8;
        canvas.open("control-length", "control length of 10 cm");
        canvas.line(0, y, CONTROL_MM, y, THICK, Canvas.SOLID);
        for (int cm = 0; cm <= 10; cm++) {
            double tick = cm % 5 == 0 ? 3 : 1.5;
            canvas.line(cm * 10, y - tick, cm * 10, y, THIN, Canvas.SOLID);
            canvas.text(cm * 10, y + 3.4, Document.LEAST_TEXT_MM, "middle", Integer.toString(cm));
        }
        canvas.close();
        canvas.text(CONTROL_MM + GAP_MM, y, WORDS_MM, "start", "10 cm: check with a ruler before you use the square.");
        y += 8;
    }

    private void squareAndSketch() {
        double top = y;
        double side = card.squareCm() * 10;
        canvas.open("square", "square to cut around, " + Drawn.cm(card.squareCm()) + " cm on a side");
        square(0, top, side, THICK, Canvas.SOLID);
        canvas.line(side / 2, top + side - 15, side / 2, top + 15, THIN, Canvas.SOLID);
        arrowHead(side / 2, top + 15, -1);
        arrowHead(side / 2, top + side - 15, 1);
        canvas.uprightText(side / 2 - 2, top + side / 2, WORDS_MM, "middle", "along the warp");
        canvas.text(
                side / 2,
                top + 8,
                WORDS_MM,
                "middle",
                Drawn.cm(card.squareCm()) + " x " + Drawn.cm(card.squareCm())
                        + " cm, measured to the middle of the line");
        canvas.close();
        sketch(side + GAP_MM, top);
        y = top + SKETCH_MM + 5;
        write(card.besideSquare(), side + GAP_MM, WORDS_MM, SheetDrawing.PAPER_MM - side - GAP_MM);
        y = Math.max(y, top + side) + 6;
    }

    private void square(double x, double top, double side, double weightMm, String dash) {
        canvas.line(x, top, x + side, top, weightMm, dash);
        canvas.line(x + side, top, x + side, top + side, weightMm, dash);
        canvas.line(x + side, top + side, x, top + side, weightMm, dash);
        canvas.line(x, top + side, x, top, weightMm, dash);
    }

    private void arrowHead(double x, double at, int down) {
        canvas.line(x, at, x - 1.5, at - down * 3, THIN, Canvas.SOLID);
        canvas.line(x, at, x + 1.5, at - down * 3, THIN, Canvas.SOLID);
    }

    /** The marked piece, not in true size: three pairs each way. */
    private void sketch(double x, double top) {
        canvas.open("marked-piece", "piece with three pairs of marks each way, not in true size");
        square(x, top, SKETCH_MM, THIN, Canvas.SOLID);
        double edge = SKETCH_MM * (card.pieceCm() - card.apartCm()) / 2 / card.pieceCm();
        double far = SKETCH_MM - edge;
        for (double share : new double[] {0.25, 0.5, 0.75}) {
            double across = share * SKETCH_MM;
            canvas.line(x + across, top + edge, x + across, top + far, THIN, Canvas.DOTTED);
            canvas.line(x + edge, top + across, x + far, top + across, THIN, Canvas.DOTTED);
            for (double end : new double[] {edge, far}) {
                canvas.line(x + across - 1.5, top + end, x + across + 1.5, top + end, THICK, Canvas.SOLID);
                canvas.line(x + end, top + across - 1.5, x + end, top + across + 1.5, THICK, Canvas.SOLID);
            }
        }
        double beside = x + SKETCH_MM + 3;
        canvas.line(beside, top + edge, beside, top + far, THIN, Canvas.SOLID);
        arrowHead(beside, top + edge, -1);
        arrowHead(beside, top + far, 1);
        canvas.text(beside + 3, top + SKETCH_MM / 2, WORDS_MM, "start", Drawn.cm(card.apartCm()) + " cm, warp");
        canvas.close();
    }

    private void table() {
        int columns = card.heads().size();
        double width = (SheetDrawing.PAPER_MM - NAMES_MM) / (columns - 1);
        double top = y;
        double bottom = top + ROW_MM * (card.rows().size() + 1);
        canvas.open("table", "table to fill in");
        for (int row = 0; row <= card.rows().size() + 1; row++) {
            double at = top + row * ROW_MM;
            canvas.line(0, at, SheetDrawing.PAPER_MM, at, row == 1 ? THICK : THIN, Canvas.SOLID);
        }
        for (int column = 0; column <= columns; column++) {
            double at = column == 0 ? 0 : NAMES_MM + (column - 1) * width;
            canvas.line(at, top, at, bottom, THIN, Canvas.SOLID);
        }
        for (int column = 0; column < columns; column++) {
            double at = column == 0 ? 0 : NAMES_MM + (column - 1) * width;
            canvas.text(at + 1.5, top + 4.6, WORDS_MM, "start", card.heads().get(column));
        }
        for (int row = 0; row < card.rows().size(); row++) {
            canvas.text(
                    1.5,
                    top + (row + 1) * ROW_MM + 4.6,
                    WORDS_MM,
                    "start",
                    card.rows().get(row));
        }
        canvas.close();
        y = bottom + 2;
    }

    private void blanks() {
        canvas.open("blanks", "lines to write on");
        for (String blank : card.blanks()) {
            y += ROW_MM;
            canvas.text(0, y, WORDS_MM, "start", blank);
            double from = TextWidth.of(blank, WORDS_MM) + 2;
            canvas.line(from, y + 0.8, SheetDrawing.PAPER_MM, y + 0.8, THIN, Canvas.DOTTED);
        }
        canvas.close();
        y += 4;
    }
}
