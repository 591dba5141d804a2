package campcloth.layout.search;

import org.jspecify.annotations.Nullable;

/** The no-fit polygons of all pairs of shapes, made when first asked for; all forgotten when they would fill the memory. */
final class ForbiddenSpots {

    private static final long MOST_NUMBERS = 12_000_000;

    private final double gap;
    private final Work work;
    private final int shapes;
    private @Nullable Forbidden[] made;
    private long numbers;

    ForbiddenSpots(int shapes, double gap, Work work) {
        this.shapes = shapes;
        this.gap = gap;
        this.work = work;
        this.made = new @Nullable Forbidden[shapes * shapes];
    }

    Forbidden of(Shape fixed, Shape moving) {
        int index = fixed.id * shapes + moving.id;
        Forbidden known = made[index];
        if (known != null) {
            return known;
        }
        Forbidden fresh = Forbidden.of(fixed, moving, gap);
        work.spend(50L * fresh.parts.length * (1 + fresh.parts.length));
        numbers += fresh.weight();
        if (numbers > MOST_NUMBERS) {
            made = new @Nullable Forbidden[shapes * shapes];
            numbers = fresh.weight();
        }
        made[index] = fresh;
        return fresh;
    }
}
