package campcloth.fire.model;

import campcloth.cloth.MassPerArea;

/**
 * How readily a cloth catches and spreads flame: 0 least, 100 worst; each 20 is one class, 0 to 4.
 *
 * <p>Points: fuel share over 20 % one, over 50 % two; mass under 373 g/m2 one, under 136 g/m2 two, under 88 g/m2 three, whatever
 * the fibre; 10 % or more that melts one (charred plant fibre, or a cotton thread, lining or layer below, holds the melt in the
 * flame; so no credit for shrinking away); a raised or open surface one; a loose fit one, under 88 g/m2 two, for it flutters. The
 * class is the sum, at most 4. The place within a class slides with the mass from one of these masses to the next, straight
 * between them and as the square of 373 g/m2 over the mass above; fuel and melt fill up part of what the mass leaves. So where
 * a mass adds one point the sum hardly leaps. A blend is never a mean of its fibres.
 *
 * <p>Rests on: mass the greatest single factor, blends of cellulose and polyester up to a quarter faster than either alone, none
 * under 4 oz/yd2 advised (Needles and Walker); 11 oz/yd2 cotton as accepted at work (OSHA letters, 1994); plain cloth from
 * 2.6 oz/yd2 on exempt from the test whatever the fibre (16 CFR 1610.1(d); it also exempts wool and some fibres that melt at any
 * mass, which counts for nothing here); surface flash (16 CFR 1610.4); air gap (Mehta, Wong and Padia, 1972). The points and the
 * places are project choices, no standard.
 */
public final class Spread {

    /** 11 oz/yd2: OSHA letters of 24 May and 1 December 1994 on 29 CFR 1910.269(l). */
    public static final double HEAVY_GSM = Math.rint(MassPerArea.gsmOfOuncesPerSquareYard(11));

    /** 4 oz/yd2: Needles and Walker. */
    public static final double LIGHT_GSM = Math.rint(MassPerArea.gsmOfOuncesPerSquareYard(4));

    /** 2.6 oz/yd2: 16 CFR 1610.1(d). */
    public static final double GAUZE_GSM = Math.rint(MassPerArea.gsmOfOuncesPerSquareYard(2.6));

    /** From this share on what melts is taken to be held in the flame: project choice. */
    public static final double SCAFFOLD_PERCENT = 10;

    private static final double LITTLE_FUEL_PERCENT = 20;
    private static final double HALF_FUEL_PERCENT = 50;
    private static final int TOP_CLASS = 4;
    private static final int POINTS_ABOVE_TOP = 6;
    private static final double CLASS_WIDTH = 20;

    /** From here on there are more points than the top class needs. */
    static final double BEYOND_TOP = CLASS_WIDTH * (TOP_CLASS + 1.0 / POINTS_ABOVE_TOP);

    /** Keeps the top of one class apart from the foot of the next. */
    private static final double INSIDE = 0.999;

    private Spread() {}

    /**
     * @param fuelPercent share that burns readily: all but wool, hair, silk and what resists flame
     * @param meltablePercent share that melts or must be presumed to
     * @param weightGsm mass, g/m2
     * @param raisedOrOpen whether fibre ends stand out or air passes freely
     * @param loose whether the garment hangs loosely
     */
    public static double of(
            double fuelPercent, double meltablePercent, double weightGsm, boolean raisedOrOpen, boolean loose) {
        return of(fuelPercent, meltablePercent, weightGsm, raisedOrOpen, loose, 0);
    }

    /**
     * The same for cloth whose treatment slows flame.
     *
     * @param credit points that the treatment takes off; at most as many as the fuel brings
     */
    public static double of(
            double fuelPercent,
            double meltablePercent,
            double weightGsm,
            boolean raisedOrOpen,
            boolean loose,
            int credit) {
        int points = fuelPoints(fuelPercent)
                + weightPoints(weightGsm)
                + (Shares.atLeast(meltablePercent, SCAFFOLD_PERCENT) ? 1 : 0)
                + (raisedOrOpen ? 1 : 0)
                + (loose ? loosePoints(weightGsm) : 0)
                - Math.min(credit, fuelPoints(fuelPercent));
        double place = place(fuelPercent, meltablePercent, weightGsm);
        return points < TOP_CLASS
                ? CLASS_WIDTH * (points + place)
                : CLASS_WIDTH * (TOP_CLASS + (points - TOP_CLASS + place) / POINTS_ABOVE_TOP);
    }

    /** 0 to 2. */
    public static int fuelPoints(double fuelPercent) {
        if (!Shares.above(fuelPercent, LITTLE_FUEL_PERCENT)) {
            return 0;
        }
        return Shares.above(fuelPercent, HALF_FUEL_PERCENT) ? 2 : 1;
    }

    /** 0 to 3. */
    public static int weightPoints(double weightGsm) {
        if (Shares.atLeast(weightGsm, HEAVY_GSM)) {
            return 0;
        }
        if (Shares.atLeast(weightGsm, LIGHT_GSM)) {
            return 1;
        }
        return Shares.atLeast(weightGsm, GAUZE_GSM) ? 2 : 3;
    }

    /** 1 or 2. */
    public static int loosePoints(double weightGsm) {
        return Shares.atLeast(weightGsm, GAUZE_GSM) ? 1 : 2;
    }

    /** Whether fuel is too little to count: at such a share dense, milled wool is not taken for fluffy. */
    public static boolean isLittleFuel(double fuelPercent) {
        return !Shares.atLeast(fuelPercent, LITTLE_FUEL_PERCENT);
    }

    /** Place within the class, 0 to below 1: project choice. */
    private static double place(double fuelPercent, double meltablePercent, double weightGsm) {
        double held = Math.min(meltablePercent / SCAFFOLD_PERCENT, 1);
        double burns = 0.1 * Math.min(fuelPercent, 100) / 100 + 0.1 * held;
        return INSIDE * (1 - (1 - lightness(weightGsm)) * (1 - burns));
    }

    /** From 0 just under one of the masses that points are given by, to 1 at the next lower one. */
    private static double lightness(double weightGsm) {
        return switch (weightPoints(weightGsm)) {
            case 0 -> Math.min(1, HEAVY_GSM * HEAVY_GSM / (weightGsm * weightGsm));
            case 1 -> between(LIGHT_GSM, HEAVY_GSM, weightGsm);
            case 2 -> between(GAUZE_GSM, LIGHT_GSM, weightGsm);
            default -> between(0, GAUZE_GSM, weightGsm);
        };
    }

    private static double between(double lightGsm, double heavyGsm, double weightGsm) {
        return Math.max(0, Math.min(1, (heavyGsm - weightGsm) / (heavyGsm - lightGsm)));
    }
}
