package campcloth.cloth;

import campcloth.figure.Figure;

/** The part of a cloth's width that pieces can be cut from. */
public final class UsableWidth {

    /** Width of each selvedge where nobody said, cm (common practice, no source). */
    public static final double USUAL_SELVEDGE_CM = 1;

    private UsableWidth() {}

    /** Between the usual selvedges, washed first where the finish allows; cm, above 0 because no cloth is narrower than 10 cm. */
    static Span washedCm(Cloth completed) {
        Figure width = completed.required(Property.WIDTH_CM);
        Span between = new Span(
                width.low() - 2 * USUAL_SELVEDGE_CM,
                width.value() - 2 * USUAL_SELVEDGE_CM,
                width.high() - 2 * USUAL_SELVEDGE_CM);
        return between.times(left(completed, Property.SHRINK_WEFT_PERCENT));
    }

    /** Length that is left of a length of 1 after washing; 1 for what is waxed or coated, which is never washed. */
    static Span lengthLeft(Cloth completed) {
        return left(completed, Property.SHRINK_WARP_PERCENT);
    }

    private static Span left(Cloth completed, Property shrinkage) {
        if (completed.finish().closesPores()) {
            return Span.exactly(1);
        }
        Figure percent = completed.required(shrinkage);
        return new Span(1 - percent.high() / 100, 1 - percent.value() / 100, 1 - percent.low() / 100);
    }
}
