package campcloth.garment.design;

/**
 * Share of the body's surface that a garment covers (project choice after the rule of nines, from memory): trunk 36 %, arms
 * without hands 14 % at a full sleeve of 53 cm, legs 36 % evenly from 65 cm below the shoulder to 137 cm.
 */
final class Cover {

    static final double TRUNK_PERCENT = 36;

    private static final double ARMS_PERCENT = 14;
    private static final double LEGS_PERCENT = 36;
    private static final double FULL_SLEEVE_CM = 53;
    private static final double CROTCH_BELOW_SHOULDER_CM = 65;
    private static final double LEG_CM = 72;

    private Cover() {}

    static double armsPercent(double sleeveLengthCm) {
        return ARMS_PERCENT * Math.min(1, sleeveLengthCm / FULL_SLEEVE_CM);
    }

    /** Of a garment that hangs from the shoulder. */
    static double legsPercent(double lengthCm) {
        return LEGS_PERCENT * Math.min(1, Math.max(0, (lengthCm - CROTCH_BELOW_SHOULDER_CM) / LEG_CM));
    }

    /** Of a garment that hangs from the waist: of the trunk, which reaches 65 cm down, the part below, and the legs. */
    static double fromTheWaistPercent(double waistBelowShoulderCm, double lengthCm) {
        double trunkCm = Math.min(lengthCm, CROTCH_BELOW_SHOULDER_CM - waistBelowShoulderCm);
        return TRUNK_PERCENT * trunkCm / CROTCH_BELOW_SHOULDER_CM + legsPercent(waistBelowShoulderCm + lengthCm);
    }
}
