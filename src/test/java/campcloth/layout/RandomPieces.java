package campcloth.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Pieces as patterns have them, of random size: body halves, sleeves with a cap, gores, facings, hoods, and stars. */
final class RandomPieces {

    private final SplittableRandom random;

    RandomPieces(long seed) {
        random = new SplittableRandom(seed);
    }

    SplittableRandom random() {
        return random;
    }

    double between(double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    List<Piece> some(int kinds, double widest) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < kinds; i++) {
            pieces.add(new Piece(
                    "piece " + i,
                    outline(widest),
                    1 + random.nextInt(4),
                    random.nextBoolean(),
                    random.nextInt(4) == 0,
                    random.nextInt(3) == 0));
        }
        return pieces;
    }

    Outline outline(double widest) {
        double width = between(0.1, 1) * widest;
        double height = between(5, 100);
        return switch (random.nextInt(6)) {
            case 0 -> Outline.rectangle(width, height);
            case 1 -> trapezoid(width, width * between(0.2, 0.95), height);
            case 2 -> sleeve(width, height);
            case 3 -> front(width, height);
            case 4 -> hood(width, height);
            default -> star(width / 2, 5 + random.nextInt(12));
        };
    }

    static Outline trapezoid(double low, double high, double height) {
        double inset = (low - high) / 2;
        return outline(0, 0, low, 0, low - inset, height, inset, height);
    }

    /** A sleeve that widens to a round cap with hollows on both sides. */
    private Outline sleeve(double width, double height) {
        double cap = height * between(0.1, 0.4);
        List<Point> points = new ArrayList<>(List.of(new Point(width * 0.15, 0), new Point(width * 0.8, 0)));
        for (int i = 0; i <= 16; i++) {
            double x = width * (1 - i / 16.0);
            points.add(new Point(x, height - cap * (0.5 + 0.5 * Math.cos(2 * Math.PI * i / 16.0))));
        }
        return Outline.of(points);
    }

    /** A body half with a round neck cut out of its upper edge. */
    private Outline front(double width, double height) {
        double neck = width * between(0.1, 0.3);
        List<Point> points =
                new ArrayList<>(List.of(new Point(0, 0), new Point(width, 0), new Point(width * 0.9, height)));
        for (int i = 0; i <= 8; i++) {
            double angle = Math.PI * i / 8;
            points.add(new Point(
                    width / 2 + neck * Math.cos(angle), height - Math.min(neck, height / 2) * Math.sin(angle)));
        }
        points.add(new Point(width * 0.1, height));
        return Outline.of(points);
    }

    private Outline hood(double width, double height) {
        double step = between(0.2, 0.8);
        return outline(
                0, 0, width, 0, width, height * step, width * step, height * step, width * step, height, 0, height);
    }

    Outline star(double radius, int points) {
        List<Point> corners = new ArrayList<>();
        double start = random.nextDouble();
        for (int i = 0; i < points; i++) {
            double angle = 2 * Math.PI * (i + start) / points;
            double reach = radius * between(0.3, 1);
            corners.add(new Point(reach * Math.cos(angle), reach * Math.sin(angle)));
        }
        return Outline.of(corners);
    }

    static Outline outline(double... coordinates) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < coordinates.length; i += 2) {
            points.add(new Point(coordinates[i], coordinates[i + 1]));
        }
        return Outline.of(points);
    }
}
