package campcloth.fire.model;

/**
 * How much a cloth can melt onto its wearer: 0 nothing melts, 100 worst; each 20 is one class, 0 to 4.
 *
 * <p>Class by the share that melts: none 0; up to 5 % one; up to 20 % two; up to 50 % three; above four; one more under an outer
 * layer, at most 4. Any share counts: fibres that melt are barred "alone or in blends" where flame threatens (OSHA
 * 29 CFR 1910.269(l), note). Mass does not enter: light cloth melts sooner, heavy cloth holds more melt. The steps of 5, 20 and
 * 50 % and the place within a class are project choices.
 */
public final class Melt {

    /** At or under this share the tolerance of labels matters more than the share: project choice. */
    public static final double TRACE_PERCENT = 5;

    /** At or under this share little melts: project choice. */
    public static final double LITTLE_PERCENT = 20;

    private static final double HALF_PERCENT = 50;
    private static final int TOP_CLASS = 4;
    private static final int POINTS_ABOVE_TOP = 2;
    private static final double CLASS_WIDTH = 20;

    private Melt() {}

    /**
     * @param meltablePercent share that melts or must be presumed to
     * @param underOuter whether the cloth lies under another layer
     * @param onSkin whether it touches the skin
     */
    public static double of(double meltablePercent, boolean underOuter, boolean onSkin) {
        if (meltablePercent <= 0) {
            return 0;
        }
        int points = points(meltablePercent) + (underOuter || onSkin ? 1 : 0);
        double place = 0.9 * Math.min(meltablePercent, 100) / 100 + (onSkin ? 0.09 : 0);
        return points < TOP_CLASS
                ? CLASS_WIDTH * (points + place)
                : CLASS_WIDTH * (TOP_CLASS + (points - TOP_CLASS + place) / POINTS_ABOVE_TOP);
    }

    private static int points(double meltablePercent) {
        if (Shares.above(meltablePercent, HALF_PERCENT)) {
            return 4;
        }
        if (Shares.above(meltablePercent, LITTLE_PERCENT)) {
            return 3;
        }
        return Shares.above(meltablePercent, TRACE_PERCENT) ? 2 : 1;
    }
}
