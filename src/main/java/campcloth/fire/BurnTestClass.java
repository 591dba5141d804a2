package campcloth.fire;

import campcloth.cloth.Surface;
import campcloth.figure.Range;

/**
 * Class of a clothing textile by its burn time in the test of 16 CFR Part 1610: how long a flame takes 127 mm up a strip held
 * at 45 degrees (1610.3). The limits are those of 16 CFR 1610.4, as amended in 2023 (88 FR 73221).
 *
 * <p>Of one measured time. The part tests several strips before and after cleaning and takes the worse class (1610.7): that is
 * left to the laboratory. Says nothing of melting, nor of what stands upright at an open fire.
 */
public enum BurnTestClass {
    /** Class 1, normal flammability. */
    NORMAL,
    /** Class 2, intermediate; raised surfaces only. */
    INTERMEDIATE,
    /** Class 3, rapid and intense burning: not to be used for clothing. */
    RAPID;

    /** 1610.4(a)(1). */
    private static final double PLAIN_S = 3.5;

    /** 1610.4(b)(2). */
    private static final double RAISED_RAPID_S = 4.0;

    /** 1610.4(a)(2). */
    private static final double RAISED_NORMAL_S = 7.0;

    private static final Range BURN_TIME = new Range("burnTimeS", 0, 600, "s");

    /**
     * @param surface plain or raised
     * @param burnTimeS measured burn time, s
     * @param baseBurns whether the ground cloth of a raised surface starts burning elsewhere than where the flame was held to;
     *     makes no difference for a plain one
     */
    public static BurnTestClass of(Surface surface, double burnTimeS, boolean baseBurns) {
        BURN_TIME.check(burnTimeS);
        if (surface == Surface.PLAIN) {
            return burnTimeS >= PLAIN_S ? NORMAL : RAPID;
        }
        if (!baseBurns || burnTimeS > RAISED_NORMAL_S) {
            return NORMAL;
        }
        return burnTimeS >= RAISED_RAPID_S ? INTERMEDIATE : RAPID;
    }
}
