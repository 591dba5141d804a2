package campcloth.comfort.model;

/**
 * The sun's radiation under a sky of known cloud.
 *
 * <p>Clear sky on level ground: G = 1098 sin beta exp(-0.059 / sin beta) W/m2 (Haurwitz 1945, as a national laboratory's library
 * gives it; 0.057 is printed elsewhere). Clouds over the share N of the sky leave 1 - 0.75 N^3.4 of it (Kasten and Czeplak 1980,
 * second-hand). Of what is left the share 0.3 + 0.7 N^2 is diffuse (same paper, from memory). Made for hours and temperate
 * places near sea level; haze, thin cloud and mountains are not in it.
 *
 * @param directWm2 beam, on a surface that faces the sun
 * @param diffuseWm2 light of the sky on level ground
 */
public record Daylight(double directWm2, double diffuseWm2) {

    private static final Daylight NIGHT = new Daylight(0, 0);

    public static Daylight under(double cloudShare, double altitudeDegrees) {
        double sine = Math.sin(Math.toRadians(altitudeDegrees));
        if (sine <= 0) {
            return NIGHT;
        }
        double global = clearWm2(sine) * (1 - 0.75 * Math.pow(cloudShare, 3.4));
        double diffuse = global * (0.3 + 0.7 * cloudShare * cloudShare);
        return new Daylight((global - diffuse) / sine, diffuse);
    }

    static double clearWm2(double sineOfAltitude) {
        return 1098 * sineOfAltitude * Math.exp(-0.059 / sineOfAltitude);
    }
}
