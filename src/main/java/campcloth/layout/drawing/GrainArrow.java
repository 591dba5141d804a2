package campcloth.layout.drawing;

import campcloth.figure.Canvas;

/** An arrow along the grain whose head points to the top of the pattern; left out where there is no room for it. */
final class GrainArrow {

    private static final double[] LENGTHS_MM = {24, 16, 10, 6};
    private static final double[] ACROSS = {0.22, 0.78, 0.35, 0.65, 0.12, 0.88, 0.5};
    private static final double WIDTH_MM = 2.2;

    private final Canvas canvas;
    private final Room room;

    GrainArrow(Canvas canvas, Room room) {
        this.canvas = canvas;
        this.room = room;
    }

    void draw(boolean topDown) {
        for (double length : LENGTHS_MM) {
            for (LabelSpot spot : LabelSpot.all(room.shape())) {
                for (double part : ACROSS) {
                    double x = spot.x() + (part - 0.5) * spot.width();
                    if (room.take(new Box(x - WIDTH_MM / 2, spot.y() - length / 2, WIDTH_MM, length))) {
                        arrow(canvas, x, spot.y(), length, topDown);
                        return;
                    }
                }
            }
        }
    }

    static void arrow(Canvas canvas, double x, double middle, double length, boolean topDown) {
        int down = topDown ? 1 : -1;
        double tip = middle + down * length / 2;
        double barb = tip - down * 1.8;
        canvas.path(
                Canvas.segment(x, middle - down * length / 2, x, tip)
                        + "M" + Canvas.n(x - 0.9) + " " + Canvas.n(barb) + "L" + Canvas.n(x) + " " + Canvas.n(tip)
                        + "L" + Canvas.n(x + 0.9) + " " + Canvas.n(barb),
                0.3,
                Canvas.SOLID);
    }
}
