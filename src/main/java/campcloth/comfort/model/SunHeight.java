package campcloth.comfort.model;

/**
 * How high the sun stands. Declination after Cooper 1969, 23.45 sin(360 (284 + n) / 365) degrees on day n of the year; sin beta
 * = cos L cos d cos H + sin L sin d with the hour angle H of 15 degrees an hour from solar noon. Good to about half a degree. Not
 * for the clock: solar time only.
 */
public final class SunHeight {

    private static final double DEGREES_AN_HOUR = 15;
    private static final double NOON = 12;

    private SunHeight() {}

    static double declinationDegrees(int dayOfYear) {
        return 23.45 * Math.sin(Math.toRadians(360.0 * (284 + dayOfYear) / 365));
    }

    /** Altitude over the horizon, negative at night, degrees. */
    public static double degrees(double latitudeDegrees, int dayOfYear, double solarHour) {
        double latitude = Math.toRadians(latitudeDegrees);
        double declination = Math.toRadians(declinationDegrees(dayOfYear));
        double hourAngle = Math.toRadians(DEGREES_AN_HOUR * (solarHour - NOON));
        double sine = Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle)
                + Math.sin(latitude) * Math.sin(declination);
        return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, sine))));
    }
}
