package campcloth.comfort.model;

/**
 * What surrounds the body.
 *
 * @param airC air temperature, degrees Celsius
 * @param radiantC mean radiant temperature, degrees Celsius
 * @param speedMs speed of the air relative to the body, m/s
 * @param humidityPercent relative humidity of the air
 */
public record Air(double airC, double radiantC, double speedMs, double humidityPercent) {

    /** Partial pressure of water vapour, kPa. */
    public double vapourKpa() {
        return humidityPercent / 100 * Vapour.saturationKpa(airC);
    }
}
