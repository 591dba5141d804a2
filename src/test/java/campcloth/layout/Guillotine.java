package campcloth.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Rectangles cut from a full strip by random cuts through and through, so that the shortest length is known. */
final class Guillotine {

    static final double WIDTH = 140;
    static final double LENGTH = 200;

    private record Box(double width, double height) {

        double area() {
            return width * height;
        }
    }

    private Guillotine() {}

    /** So many pieces in random order, none turnable; the largest is cut first, at whole centimetres. */
    static List<Piece> pieces(int count, long seed) {
        Random random = new Random(1000 * seed + count);
        List<Box> boxes = new ArrayList<>(List.of(new Box(WIDTH, LENGTH)));
        while (boxes.size() < count) {
            boxes.sort((a, b) -> Double.compare(b.area(), a.area()));
            Box box = boxes.remove(0);
            double part = 0.25 + 0.5 * random.nextDouble();
            if (random.nextInt(2) == 0) {
                double at = Math.rint(part * box.width);
                boxes.add(new Box(at, box.height));
                boxes.add(new Box(box.width - at, box.height));
            } else {
                double at = Math.rint(part * box.height);
                boxes.add(new Box(box.width, at));
                boxes.add(new Box(box.width, box.height - at));
            }
        }
        Collections.shuffle(boxes, random);
        List<Piece> pieces = new ArrayList<>();
        for (Box box : boxes) {
            Outline outline = Outline.rectangle(box.width, box.height);
            pieces.add(new Piece("piece " + pieces.size(), outline, 1, false, false, false));
        }
        return pieces;
    }
}
