package campcloth.fire;

import campcloth.cloth.Surface;
import campcloth.figure.Range;

/**
 * Class of a cloth by the burning time of the 45 degree test of 16 CFR 1610.4, for who has a test report: for information only, it
 * grades nothing here. What the class does not tell: melting, burning upwards, a whole garment.
 */
public enum BurnTestClass {
    /** Normal flammability. */
    CLASS_1,
    /** Intermediate flammability; raised surfaces only. */
    CLASS_2,
    /** Rapid and intense burning: not for clothing. */
    CLASS_3;

    private static final double PLAIN_S = 3.5;
    private static final double RAISED_RAPID_S = 4;
    private static final double RAISED_NORMAL_S = 7;
    private static final Range TIME = new Range("burnTimeS", 0, 600, "s");

    /**
     * @param surface plain or raised
     * @param burnTimeS mean time that the flame takes to the stop thread, s
     * @param baseBurns whether the base below a raised face ignites or fuses; of no account for a plain surface
     */
    public static BurnTestClass of(Surface surface, double burnTimeS, boolean baseBurns) {
        TIME.check(burnTimeS);
        if (surface == Surface.PLAIN) {
            return burnTimeS >= PLAIN_S ? CLASS_1 : CLASS_3;
        }
        if (burnTimeS > RAISED_NORMAL_S || !baseBurns) {
            return CLASS_1;
        }
        return burnTimeS >= RAISED_RAPID_S ? CLASS_2 : CLASS_3;
    }
}
