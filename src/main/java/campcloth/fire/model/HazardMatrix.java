package campcloth.fire.model;

import java.util.List;

/**
 * Joins the two axes with the exposure. The class of the cloth is the worse of its two classes, with two more beyond the
 * top; the matrix turns it with the class of the exposure into a level 0 to 3. Where hands or sleeves reach the flame,
 * anything that melts gives at least level 2.
 *
 * <p>The hazard lies in the quarter of 0 to 100 that belongs to the level. Its place in the quarter is how far the cloth has come
 * through the classes that share this level in this exposure (six parts in ten) and how strong the exposure is (four in ten; half
 * as much for the mildest of those cloths). So a cloth near the next level stands near the end of its quarter, the hazard never
 * falls where an axis or the exposure rises, and it never contradicts the level.
 *
 * <p>The matrix and the weights are project choices, anchored to the sources named at {@link Spread} and {@link Melt}; no
 * standard.
 */
public final class HazardMatrix {

    /**
     * Rows: exposure none, sparks, radiant heat, contact, unbearable heat. Columns: class 0 to 4 of the cloth; 5, where it melts
     * with class 4 or spreads beyond what makes class 4; 6, where both axes stand at class 4. So plain linen or cotton of
     * ordinary weight in a loose garment is one level better than light or raised cloth.
     */
    private static final List<List<Integer>> LEVELS = List.of(
            List.of(0, 0, 0, 0, 0, 0, 0),
            List.of(0, 0, 1, 1, 1, 1, 2),
            List.of(0, 0, 1, 1, 1, 2, 3),
            List.of(1, 1, 1, 2, 2, 3, 3),
            List.of(3, 3, 3, 3, 3, 3, 3));

    private static final int CONTACT = 3;
    private static final int TOP_CLASS = 4;
    private static final double CLASS_WIDTH = 20;
    private static final double LEVEL_WIDTH = 25;

    /** Keeps the top of one level or class apart from the foot of the next. */
    private static final double INSIDE = 0.999;

    private static final double PART_OF_EXPOSURE = 0.4;

    /** How much of its place the milder axis fills up of what the worse leaves. */
    private static final double PART_OF_MILDER = 0.5;

    private HazardMatrix() {}

    /** Level 0 (least) to 3 of an exposure class 0 to 4 and a cloth's two axes. */
    public static int level(int exposureClass, double spread, double melt) {
        return level(exposureClass, (int) clothMeasure(spread, melt), melt > 0);
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
        double measure = clothMeasure(spread, melt);
        int level = level(exposureClass, (int) measure, melt > 0);
        double cloth = placeInLevel(exposureClass, level, measure, melt > 0);
        double exposure = intensity * (1 + cloth) / 2;
        return LEVEL_WIDTH * (level + INSIDE * ((1 - PART_OF_EXPOSURE) * cloth + PART_OF_EXPOSURE * exposure));
    }

    /** Class 0 to 4 of one axis. */
    public static int axisClass(double axis) {
        return Math.min(TOP_CLASS, (int) Math.floor(axis / CLASS_WIDTH));
    }

    private static int level(int exposureClass, int clothClass, boolean melts) {
        int level = LEVELS.get(exposureClass).get(clothClass);
        return melts && exposureClass >= CONTACT ? Math.max(level, 2) : level;
    }

    /** How far a cloth has come through the classes that share its level, 0 to 1. */
    private static double placeInLevel(int exposureClass, int level, double measure, boolean melts) {
        int first = (int) measure;
        while (first > 0 && level(exposureClass, first - 1, melts) == level) {
            first--;
        }
        int end = (int) measure + 1;
        while (end < LEVELS.get(exposureClass).size() && level(exposureClass, end, melts) == level) {
            end++;
        }
        return (measure - first) / (end - first);
    }

    /** The class of the cloth, 0 to 6, and behind the point its place in it. */
    private static double clothMeasure(double spread, double melt) {
        double s = spreadMeasure(spread);
        double m = meltMeasure(melt);
        if (s >= TOP_CLASS && m >= TOP_CLASS) {
            return TOP_CLASS + 2 + within((s - TOP_CLASS) / 2, m - TOP_CLASS - 1);
        }
        int clothClass = (int) Math.max(s, m);
        return clothClass + within(Math.max(s, m) - clothClass, Math.min(s, m) / TOP_CLASS);
    }

    /** 0 to below 6: class 0 to 4, and 5 where it spreads beyond what makes class 4. */
    private static double spreadMeasure(double spread) {
        double top = TOP_CLASS * CLASS_WIDTH;
        if (spread < top) {
            return spread / CLASS_WIDTH;
        }
        return spread < Spread.BEYOND_TOP
                ? TOP_CLASS + INSIDE * (spread - top) / (Spread.BEYOND_TOP - top)
                : TOP_CLASS + 1 + INSIDE * (spread - Spread.BEYOND_TOP) / (100 - Spread.BEYOND_TOP);
    }

    /** 0 to below 4, or 5 to below 6: cloth that melts with class 4 is worse than cloth that spreads flame with class 4. */
    private static double meltMeasure(double melt) {
        double top = TOP_CLASS * CLASS_WIDTH;
        return melt < top ? melt / CLASS_WIDTH : TOP_CLASS + 1 + INSIDE * (melt - top) / (100 - top);
    }

    private static double within(double worse, double milder) {
        return INSIDE * (1 - (1 - worse) * (1 - PART_OF_MILDER * milder));
    }
}
