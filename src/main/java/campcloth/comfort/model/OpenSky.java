package campcloth.comfort.model;

/**
 * The sky as a warm surface: a clear one is colder than the air. Emissivity of the clear sky e0 = 0.711 + 0.56 (d / 100) + 0.73
 * (d / 100)^2 with the dew point d in degrees Celsius (Berdahl and Martin 1984, read second-hand); clouds over the share N close
 * it as e = e0 + 0.784 N (1 - e0), the same work's factor for cloud that begins 2 km up. A body in the open is presumed to see
 * sky with one half and ground with the other (sphere over a plane); the ground is as warm as the air.
 */
public final class OpenSky {

    private static final double CLOUD_AT_2_KM = 0.784;
    private static final double SKY_SHARE = 0.5;
    private static final double DRIEST_KPA = 0.001;

    private OpenSky() {}

    /** Mean radiant temperature of sky and ground together, degrees Celsius. */
    public static double radiantC(double airC, double humidityPercent, double cloudShare) {
        double vapour = new Air(airC, airC, 0, humidityPercent).vapourKpa();
        double emissivity = emissivity(Vapour.dewPointC(Math.max(DRIEST_KPA, vapour)), cloudShare);
        return (airC + 273.15) * Math.pow(SKY_SHARE * emissivity + 1 - SKY_SHARE, 0.25) - 273.15;
    }

    static double emissivity(double dewPointC, double cloudShare) {
        double d = dewPointC / 100;
        double clear = Math.min(1, 0.711 + 0.56 * d + 0.73 * d * d);
        return clear + CLOUD_AT_2_KM * cloudShare * (1 - clear);
    }
}
