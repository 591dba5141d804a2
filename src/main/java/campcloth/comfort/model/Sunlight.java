package campcloth.comfort.model;

import campcloth.figure.Range;

/**
 * The sun's radiation on level ground.
 *
 * @param globalWm2 all of it, W/m2
 * @param directShare share of it that comes straight from the sun
 * @param altitudeDegrees height of the sun above the horizon; below half a degree there is no sun
 */
public record Sunlight(double globalWm2, double directShare, double altitudeDegrees) {

    private static final Range GLOBAL = new Range("sunlight on level ground", 0, 1400, "W/m2");
    private static final Range SHARE = new Range("direct share of sunlight", 0, 1, "");
    private static final Range ALTITUDE = new Range("height of the sun", -90, 90, "degrees");
    private static final double LOWEST_DEGREES = 0.5;

    public static final Sunlight NONE = new Sunlight(0, 0, 0);

    public Sunlight {
        GLOBAL.check(globalWm2);
        SHARE.check(directShare);
        ALTITUDE.check(altitudeDegrees);
    }

    /** Of a beam and the light of the sky. */
    public static Sunlight of(Daylight light, double altitudeDegrees) {
        double direct = light.directWm2() * Math.sin(Math.toRadians(altitudeDegrees));
        double global = direct + light.diffuseWm2();
        return global > 0 ? new Sunlight(global, direct / global, altitudeDegrees) : NONE;
    }

    boolean shines() {
        return globalWm2 > 0 && altitudeDegrees > LOWEST_DEGREES;
    }

    double sineOfAltitude() {
        return Math.sin(Math.toRadians(altitudeDegrees));
    }
}
