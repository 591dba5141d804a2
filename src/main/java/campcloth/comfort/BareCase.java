package campcloth.comfort;

import campcloth.figure.Range;
import java.util.Optional;

/**
 * One surrounding and one clothing, straight into the models. The ranges here are what can be at all; each model has narrower
 * ones of its own.
 *
 * @param airC air temperature, degrees Celsius
 * @param radiantC mean radiant temperature, degrees Celsius
 * @param windMs speed of the air relative to the wearer; for the wind chill it stands for the wind at 10 m height
 * @param humidityPercent relative humidity
 * @param met metabolic rate
 * @param clo insulation: for ISO 11079 the basic one, standing still in calm air; for PMV and the two-node model as worn
 * @param walkingMs walking speed; empty for what ISO 11079 takes from the metabolic rate, which is also its least
 * @param airPermeability of the outermost cloth, l/(m2 s)
 * @param pmvAirSpeedMs relative air speed that PMV takes
 */
public record BareCase(
        double airC,
        double radiantC,
        double windMs,
        double humidityPercent,
        double met,
        double clo,
        Optional<Double> walkingMs,
        double airPermeability,
        double pmvAirSpeedMs) {

    private static final Range AIR = new Range("airC", -60, 60, "degrees Celsius");
    private static final Range RADIANT = new Range("radiantC", -60, 100, "degrees Celsius");
    private static final Range WIND = new Range("windMs", 0, 40, "m/s");
    private static final Range HUMIDITY = new Range("humidityPercent", 0, 100, "%");
    private static final Range MET = new Range("met", 0.5, 15, "met");
    private static final Range CLO = new Range("clo", 0, 10, "clo");
    private static final Range WALKING = new Range("walkingMs", 0, 10, "m/s");
    private static final Range PERMEABILITY = new Range("airPermeability", 0, 20_000, "l/(m2 s)");
    private static final Range PMV_SPEED = new Range("pmvAirSpeedMs", 0, 40, "m/s");

    public BareCase {
        AIR.check(airC);
        RADIANT.check(radiantC);
        WIND.check(windMs);
        HUMIDITY.check(humidityPercent);
        MET.check(met);
        CLO.check(clo);
        walkingMs.ifPresent(WALKING::check);
        PERMEABILITY.check(airPermeability);
        PMV_SPEED.check(pmvAirSpeedMs);
    }
}
