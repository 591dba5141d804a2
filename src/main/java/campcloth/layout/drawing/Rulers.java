package campcloth.layout.drawing;

import campcloth.figure.Canvas;
import campcloth.layout.CuttingSheet;
import campcloth.layout.SheetPart;

/** Measures along the edges of a window: up from the cut edge, across from the left edge, and from a fold at the right. */
final class Rulers {

    /** Room below the cloth for the rulers. */
    static final double BELOW_MM = 12;

    private static final double SIZE_MM = Document.LEAST_TEXT_MM;
    private static final double SMALL_STEP_CM = 10;
    private static final double LEAST_TICK_MM = 1.2;
    private static final double LEAST_NUMBER_MM = 9;
    private static final double TOUCH_CM = 1e-6;

    private final Canvas canvas;
    private final CuttingSheet sheet;
    private final Window window;

    Rulers(Canvas canvas, CuttingSheet sheet, Window window) {
        this.canvas = canvas;
        this.sheet = sheet;
        this.window = window;
    }

    void draw() {
        canvas.open("rulers");
        drawUp();
        drawAcross(false, window.bottomMm());
        boolean fromRight = sheet.parts().stream().anyMatch(part -> part.cut() == SheetPart.Cut.ON_RIGHT_FOLD);
        if (fromRight) {
            drawAcross(true, window.bottomMm() + 5);
        }
        canvas.close();
    }

    private void drawUp() {
        StringBuilder ticks = new StringBuilder();
        double step = step(LEAST_TICK_MM);
        double numbers = step(LEAST_NUMBER_MM * 0.6);
        double x = window.leftMm();
        for (double at = Math.ceil(window.clip().lowCm() / step - TOUCH_CM) * step;
                at <= window.clip().topCm() + TOUCH_CM;
                at += step) {
            boolean numbered = isMultiple(at, numbers);
            ticks.append(Canvas.segment(x - 0.8, window.y(at), x - (numbered ? 2.4 : 1.6), window.y(at)));
            if (numbered) {
                canvas.text(x - 2.8, window.y(at) + SIZE_MM * 0.35, SIZE_MM, "end", Drawn.cm(at));
            }
        }
        canvas.path(ticks, 0.25, Canvas.SOLID);
    }

    private void drawAcross(boolean fromRight, double y) {
        StringBuilder ticks = new StringBuilder();
        double step = step(LEAST_TICK_MM);
        double numbers = step(LEAST_NUMBER_MM);
        double widest = sheet.widthCm();
        for (double at = 0; at <= widest + TOUCH_CM; at += step) {
            boolean numbered = isMultiple(at, numbers);
            double x = window.x(fromRight ? widest - at : at);
            ticks.append(Canvas.segment(x, y + 0.4, x, y + (numbered ? 2 : 1.2)));
            if (numbered) {
                String arrow = at > 0 ? "" : fromRight ? "← " : "→ ";
                canvas.text(x, y + 2 + SIZE_MM * 0.9, SIZE_MM, "middle", arrow + Drawn.cm(at));
            }
        }
        canvas.path(ticks, 0.25, Canvas.SOLID);
    }

    /** The least of 10, 20, 50, 100, ... cm that takes as much room on paper as stated. */
    private double step(double leastMm) {
        double step = SMALL_STEP_CM;
        while (true) {
            for (double times : new double[] {1, 2, 5}) {
                if (step * times * window.mmPerCm() >= leastMm) {
                    return step * times;
                }
            }
            step *= 10;
        }
    }

    private static boolean isMultiple(double at, double step) {
        return Math.abs(at / step - Math.rint(at / step)) < TOUCH_CM;
    }
}
