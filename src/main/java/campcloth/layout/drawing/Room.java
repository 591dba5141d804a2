package campcloth.layout.drawing;

import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;

/** The inside of one shape on paper, in mm, and what is written there already. */
final class Room {

    private static final double FROM_EDGE_MM = 0.3;

    private final Shape shape;
    private final List<Box> taken = new ArrayList<>();

    /** Room inside a shape whose points are in mm from the upper left. */
    Room(Shape onPaper) {
        this.shape = onPaper;
    }

    Shape shape() {
        return shape;
    }

    /** Takes a box where it lies inside and meets nothing. */
    boolean take(Box box) {
        boolean free = taken.stream().noneMatch(box::meets) && isInside(box);
        if (free) {
            taken.add(box);
        }
        return free;
    }

    void giveBack(Box box) {
        taken.remove(box);
    }

    private boolean isInside(Box box) {
        if (!shape.holds(box.middleX(), box.middleY())) {
            return false;
        }
        Clip clip = new Clip(
                box.left() - FROM_EDGE_MM,
                box.top() - FROM_EDGE_MM,
                box.right() + FROM_EDGE_MM,
                box.bottom() + FROM_EDGE_MM);
        for (int i = 0; i < shape.points().size(); i++) {
            Point a = shape.at(i);
            Point b = shape.at(i + 1);
            if (clip.of(a, b).isPresent()) {
                return false;
            }
        }
        return true;
    }
}
