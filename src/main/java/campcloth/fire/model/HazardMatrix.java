package campcloth.fire.model;

import java.util.List;

/**
 * Joins the two axes with the exposure. The class of the cloth is the worse of its two classes, and a fifth where both stand at
 * the top; the matrix turns it with the class of the exposure into a level 0 to 3. Where hands or sleeves reach the flame,
 * anything that melts gives at least level 2. The hazard lies in the quarter of 0 to 100 that belongs to the level, the higher
 * the more of each axis and of the exposure there is: so it never falls where one of them rises, and never contradicts the level.
 *
 * <p>The matrix and the weights are project choices, anchored to the sources named at {@link Spread} and {@link Melt}; no
 * standard.
 */
public final class HazardMatrix {

    /** Rows: exposure none, sparks, radiant heat, contact, unbearable heat. Columns: class 0 to 5 of the cloth. */
    private static final List<List<Integer>> LEVELS = List.of(
            List.of(0, 0, 0, 0, 0, 0),
            List.of(0, 0, 1, 1, 1, 2),
            List.of(0, 0, 1, 1, 2, 3),
            List.of(1, 1, 1, 2, 3, 3),
            List.of(3, 3, 3, 3, 3, 3));

    private static final int CONTACT = 3;
    private static final int TOP_CLASS = 4;
    private static final double CLASS_WIDTH = 20;
    private static final double LEVEL_WIDTH = 25;

    /** Keeps the top of one level apart from the foot of the next. */
    private static final double INSIDE = 0.999;

    private HazardMatrix() {}

    /** Level 0 (least) to 3 of an exposure class 0 to 4 and a cloth's two axes. */
    public static int level(int exposureClass, double spread, double melt) {
        int level = LEVELS.get(exposureClass).get(clothClass(spread, melt));
        return melt > 0 && exposureClass >= CONTACT ? Math.max(level, 2) : level;
    }

    /**
     * Hazard 0 to 100; 0 where there is no exposure.
     *
     * @param intensity how strong the exposure is, 0 to 1
     */
    public static double hazard(int exposureClass, double intensity, double spread, double melt) {
        if (exposureClass == 0) {
            return 0;
        }
        double worse = Math.max(spread, melt) / 100;
        double better = Math.min(spread, melt) / 100;
        double place = INSIDE * (0.5 * worse + 0.2 * better + 0.3 * intensity);
        return LEVEL_WIDTH * (level(exposureClass, spread, melt) + place);
    }

    /** Class 0 to 4 of one axis. */
    public static int axisClass(double axis) {
        return Math.min(TOP_CLASS, (int) Math.floor(axis / CLASS_WIDTH));
    }

    private static int clothClass(double spread, double melt) {
        int worse = Math.max(axisClass(spread), axisClass(melt));
        return Math.min(axisClass(spread), axisClass(melt)) >= TOP_CLASS ? TOP_CLASS + 1 : worse;
    }
}
