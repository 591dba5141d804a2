package campcloth.layout.drawing;

import campcloth.figure.Canvas;
import campcloth.layout.Point;
import java.util.Map;
import java.util.Set;

/** One part in one window: its outline, a cross and measures at its corners, number, name, size and the grain. */
final class PartDrawing {

    private static final double LEAST_VISIBLE_CM = 1e-3;
    private static final double NUMBER_ROOM_MM = 4.6;
    private static final double CUT_MM = 0.5;

    private final Canvas canvas;
    private final Window window;

    PartDrawing(Canvas canvas, Window window) {
        this.canvas = canvas;
        this.window = window;
    }

    static boolean isSeen(Drawn part, Clip clip) {
        return part.shape().topCm() > clip.lowCm() + LEAST_VISIBLE_CM
                && part.shape().lowCm() < clip.topCm() - LEAST_VISIBLE_CM;
    }

    /** Draws it; measures that find room on it are taken from those still to tell. */
    void draw(Drawn part, Set<String> untold) {
        Shape seen = window.onPaper(window.clip().of(part.shape()));
        canvas.open("part-" + part.number(), part.sentence());
        canvas.area(closed(seen), "#fff");
        canvas.path(cutLine(part), CUT_MM, Canvas.SOLID);
        Room room = new Room(seen);
        LabelSpot spot = LabelSpot.widest(seen);
        Box number =
                new Box(spot.x() - NUMBER_ROOM_MM / 2, spot.y() - NUMBER_ROOM_MM / 2, NUMBER_ROOM_MM, NUMBER_ROOM_MM);
        boolean kept = room.take(number);
        drawMeasures(part, room, untold);
        if (kept) {
            room.giveBack(number);
        }
        new NameLabel(canvas, room).draw(part);
        new GrainArrow(canvas, room).draw(part.part().turned());
        canvas.close();
    }

    private void drawMeasures(Drawn part, Room room, Set<String> untold) {
        StringBuilder dots = new StringBuilder();
        for (Map.Entry<String, Point> measure : part.measures().entrySet()) {
            if (window.clip().holds(measure.getValue())) {
                Point at = window.onPaper(measure.getValue());
                dots.append("M").append(pair(at)).append("Z");
                if (new MeasureLabel(canvas, room).draw(at, measure.getKey())) {
                    untold.remove(measure.getKey());
                }
            }
        }
        canvas.dots(dots, 1.2);
        StringBuilder crosses = new StringBuilder();
        for (Arc arc : part.marks().arcs()) {
            if (window.clip().holds(arc.centre())) {
                Point at = window.onPaper(arc.centre());
                crosses.append(Canvas.segment(at.xCm() - 1, at.yCm(), at.xCm() + 1, at.yCm()))
                        .append(Canvas.segment(at.xCm(), at.yCm() - 1, at.xCm(), at.yCm() + 1));
            }
        }
        canvas.path(crosses, 0.25, Canvas.SOLID);
    }

    static String closed(Shape onPaper) {
        StringBuilder path = new StringBuilder();
        for (Point point : onPaper.points()) {
            path.append(path.isEmpty() ? 'M' : 'L').append(pair(point));
        }
        return path.append('Z').toString();
    }

    private static String pair(Point point) {
        return Canvas.n(point.xCm()) + " " + Canvas.n(point.yCm());
    }

    /** Where the shears go: not along a fold, not along the end of a page. */
    private String cutLine(Drawn part) {
        StringBuilder path = new StringBuilder();
        String pen = "";
        for (int i = 0; i < part.shape().points().size(); i++) {
            Point a = part.shape().at(i);
            Point b = part.shape().at(i + 1);
            if (part.liesOnFold(a, b)) {
                continue;
            }
            for (var piece : window.clip().of(a, b).stream().toList()) {
                String from = pair(window.onPaper(piece.get(0)));
                String to = pair(window.onPaper(piece.get(1)));
                path.append(from.equals(pen) ? "" : "M" + from).append('L').append(to);
                pen = to;
            }
        }
        return path.toString();
    }
}
