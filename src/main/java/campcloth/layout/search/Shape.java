package campcloth.layout.search;

import java.util.List;

/** A piece as it may lie, the lower left corner of its bounding box at the origin. */
final class Shape {

    /** Number of the shape among the different shapes of one search. */
    final int id;

    final Ring ring;
    final Held held;
    final double width;
    final double height;
    final double area;
    final List<Ring> parts;
    final List<Ring> partsNegated;

    /** A shape that lies as a ring does and takes no part in the packing beyond its cover, which contains the ring. */
    Shape(int id, Ring ring, Ring cover, Held held) {
        this.id = id;
        this.held = held;
        this.ring = ring;
        this.width = ring.right;
        this.height = ring.high;
        this.area = ring.area();
        this.parts = ConvexParts.of(cover);
        this.partsNegated = parts.stream().map(Ring::negated).toList();
    }
}
