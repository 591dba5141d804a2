package campcloth.garment.design;

import campcloth.figure.Words;

/**
 * Whether a body is wide enough below to walk in. The width wanted grows with the length, on a wearer of about 170 cm: about
 * {@value #KNEE_SWEEP_CM} cm round at the knee, {@value #KNEE_CM} cm below the shoulder, and {@value #ANKLE_SWEEP_CM} at the
 * ankle, {@value #ANKLE_CM} cm below it; on the straight line through both above the ankle, no more below it. Common practice
 * gives about 98 at the knee and 160 to 180 at the ankle, no source; the line between is a project choice.
 *
 * <p>It is not a rule for running, riding or stairs.
 *
 * @param roundCm finished circumference above the flare
 * @param flareFromCm how far below the shoulder the flare begins
 * @param lengthCm shoulder to hem
 * @param flareCm how much wider each half is at the hem on each side
 * @param splitCm length of each side split, 0 without
 * @param gores triangles set in
 */
record Stride(double roundCm, double flareFromCm, double lengthCm, double flareCm, double splitCm, Gores gores) {

    private static final double KNEE_CM = 97;
    private static final double KNEE_SWEEP_CM = 98;
    private static final double ANKLE_CM = 137;
    private static final double ANKLE_SWEEP_CM = 170;
    private static final double WIDTH_PER_LENGTH = (ANKLE_SWEEP_CM - KNEE_SWEEP_CM) / (ANKLE_CM - KNEE_CM);
    private static final double SHORTEST_SPLIT_CM = 5;
    private static final double TOUCH_CM = 1e-9;

    Stride(double roundCm, double flareFromCm, double lengthCm, double flareCm, double splitCm) {
        this(roundCm, flareFromCm, lengthCm, flareCm, splitCm, Gores.NONE);
    }

    /** Width round wanted at so much below the shoulder. */
    static double wantedCm(double belowShoulderCm) {
        double onTheLine = KNEE_SWEEP_CM + (belowShoulderCm - KNEE_CM) * WIDTH_PER_LENGTH;
        return Math.max(0, Math.min(ANKLE_SWEEP_CM, onTheLine));
    }

    /** Width round of this body there. */
    double sweepCm(double belowShoulderCm) {
        return roundCm
                + 4 * flareCm * shareBelow(flareFromCm, belowShoulderCm)
                + (gores.any() ? gores.sweepCm() * shareBelow(lengthCm - gores.heightCm(), belowShoulderCm) : 0);
    }

    private double shareBelow(double fromCm, double belowShoulderCm) {
        return Math.max(0, (belowShoulderCm - fromCm) / (lengthCm - fromCm));
    }

    /** Shortest side split, in whole cm, above which the body is wide enough all the way; 0 where none is needed. */
    double splitWantedCm() {
        double split = 0;
        while (split < lengthCm && sweepCm(lengthCm - split) < wantedCm(lengthCm - split) - TOUCH_CM) {
            split++;
        }
        return split == 0 ? 0 : Math.max(SHORTEST_SPLIT_CM, split);
    }

    /** Flare of each side, in whole cm, with which no split is needed. */
    double flareWantedCm() {
        return Math.max(0, Math.ceil((wantedCm(lengthCm) - roundCm - gores.sweepCm()) / 4 - TOUCH_CM));
    }

    /** Width of each gore, in whole cm, with which the hem is wide enough. */
    double goreWidthWantedCm() {
        return Math.max(
                gores.widthCm() + 1,
                Math.ceil((wantedCm(lengthCm) - roundCm - 4 * flareCm) / gores.count() - TOUCH_CM));
    }

    String words() {
        double wanted = splitWantedCm();
        if (wanted == 0) {
            return "room enough to stride.";
        }
        String narrow = "narrow for a full stride at this length, where about " + Words.fixed(wantedCm(lengthCm), 0)
                + " cm are usual; ";
        if (splitCm >= wanted) {
            return narrow + "the side splits give the room.";
        }
        if (gores.any()) {
            return narrow + "make the gores " + Words.number(goreWidthWantedCm())
                    + " cm wide (option goreWidthCm) or higher.";
        }
        return narrow + splits(wanted) + "a flare of " + Words.number(flareWantedCm())
                + " cm (option flareCm), or gores.";
    }

    private String splits(double wantedCm) {
        if (wantedCm >= lengthCm - flareFromCm) {
            return "take ";
        }
        return (splitCm > 0 ? "make the side splits " : "take side splits ") + Words.number(wantedCm)
                + " cm long (option splitLengthCm), ";
    }
}
