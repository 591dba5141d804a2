package campcloth.layout.search;

import org.jspecify.annotations.Nullable;

/** The depths in the no-fit polygons of all pairs of shapes, made when first asked for. */
final class DepthTable {

    private final ForbiddenSpots forbidden;
    private final Work work;
    private final int shapes;
    private final @Nullable Depth[] made;

    DepthTable(int shapes, ForbiddenSpots forbidden, Work work) {
        this.shapes = shapes;
        this.forbidden = forbidden;
        this.work = work;
        this.made = new @Nullable Depth[shapes * shapes];
    }

    Work work() {
        return work;
    }

    Depth of(Shape fixed, Shape moving) {
        int index = fixed.id * shapes + moving.id;
        Depth known = made[index];
        if (known != null) {
            return known;
        }
        Depth fresh = new Depth(forbidden.of(fixed, moving));
        made[index] = fresh;
        return fresh;
    }
}
