package campcloth.layout.drawing;

import campcloth.figure.Canvas;
import campcloth.figure.TextWidth;
import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A measure written beside its corner, inside the part, never upright, since its arrows tell directions; with a
 * thin line to it where it had to be written farther away.
 */
final class MeasureLabel {

    private static final double SIZE_MM = Document.LEAST_TEXT_MM;
    private static final double HEIGHT_MM = SIZE_MM * 0.95;
    private static final double[] AWAY_MM = {0.9, 3.4, 6, 9, 12, 16};
    private static final double NO_LINE_MM = 2.6;
    private static final double IN_TWO_LINES_COSTS_MM = 2;

    private final Canvas canvas;
    private final Room room;

    private record Spot(Box box, boolean twoLines, double awayMm) {}

    MeasureLabel(Canvas canvas, Room room) {
        this.canvas = canvas;
        this.room = room;
    }

    /** Whether there was room. */
    boolean draw(Point corner, String words) {
        for (Spot spot : spots(corner, words)) {
            if (room.take(spot.box)) {
                write(corner, spot, words);
                return true;
            }
        }
        return false;
    }

    private static List<Spot> spots(Point corner, String words) {
        List<Spot> spots = new ArrayList<>();
        int parting = words.lastIndexOf(' ');
        double inTwoMm = Math.max(
                TextWidth.of(words.substring(0, parting), SIZE_MM), TextWidth.of(words.substring(parting), SIZE_MM));
        for (boolean twoLines : new boolean[] {false, true}) {
            double width = twoLines ? inTwoMm : TextWidth.of(words, SIZE_MM);
            double height = twoLines ? 2 * HEIGHT_MM : HEIGHT_MM;
            for (double dx : AWAY_MM) {
                for (double dy : AWAY_MM) {
                    for (double left : new double[] {corner.xCm() + dx, corner.xCm() - dx - width}) {
                        for (double top : new double[] {corner.yCm() + dy, corner.yCm() - dy - height}) {
                            spots.add(new Spot(new Box(left, top, width, height), twoLines, Math.hypot(dx, dy)));
                        }
                    }
                }
            }
            for (double dy : AWAY_MM) {
                double left = corner.xCm() - width / 2;
                spots.add(new Spot(new Box(left, corner.yCm() + dy, width, height), twoLines, dy + 1));
                spots.add(new Spot(new Box(left, corner.yCm() - dy - height, width, height), twoLines, dy + 1));
            }
        }
        spots.sort(Comparator.comparingDouble(s -> s.awayMm + (s.twoLines ? IN_TWO_LINES_COSTS_MM : 0)));
        return spots;
    }

    private void write(Point corner, Spot spot, String words) {
        Box box = spot.box;
        double x = Math.max(box.left(), Math.min(corner.xCm(), box.right()));
        double y = Math.max(box.top(), Math.min(corner.yCm(), box.bottom()));
        if (Math.hypot(x - corner.xCm(), y - corner.yCm()) > NO_LINE_MM) {
            canvas.line(corner.xCm(), corner.yCm(), x, y, 0.15, Canvas.SOLID);
        }
        if (spot.twoLines) {
            int parting = words.lastIndexOf(' ') + 1;
            canvas.twoLines(
                    box.left(),
                    box.top() + SIZE_MM * 0.8,
                    SIZE_MM,
                    words.substring(0, parting),
                    words.substring(parting));
        } else {
            canvas.text(box.left(), box.top() + SIZE_MM * 0.8, SIZE_MM, "start", words);
        }
    }
}
