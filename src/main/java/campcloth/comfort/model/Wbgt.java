package campcloth.comfort.model;

import static campcloth.comfort.model.Instrument.KELVIN;
import static campcloth.comfort.model.Instrument.PRESSURE_HPA;
import static campcloth.comfort.model.Instrument.STEFAN_BOLTZMANN;

import campcloth.comfort.Reading;
import campcloth.comfort.Reading.OutOfRange;
import campcloth.figure.Range;
import java.util.Optional;

/**
 * Wet bulb globe temperature of ISO 7243:2017 (second-hand), degrees Celsius: 0.7 t_nwb + 0.2 t_g + 0.1 t_a in the sun, 0.7 t_nwb
 * + 0.3 t_g without. What its two thermometers would show is estimated from their own heat balances, Liljegren et al. 2008: a
 * wick of 7 mm and a globe of 50.8 mm, at sea level, over ground that reflects 0.45 of the sun. The authors found them within 1 K
 * of measurements (abstract). For air of 10..50 degrees, wind up to 20 m/s (below 0.13 calculated with 0.13) and surroundings of
 * -10..100 degrees (project choice). Not a measurement at the place: trees, tents and crowds change it.
 *
 * <p>Reference: 56.7 - 11.5 log10 M for people used to heat and work, 59.9 - 14.1 log10 M for others, M in watts of a body of
 * 1.8 m2 (US NIOSH 2016-106, chapter 8, second-hand; the rows of ISO 7243 agree). Below 115 W, rest, it is calculated with 115;
 * up to 600 W (project choice). For healthy adults in one layer of work clothes.
 */
public final class Wbgt {

    static final double BODY_M2 = 1.8;
    static final double REST_W = 115;

    private static final String MODEL = "WBGT, ISO 7243:2017, thermometers after Liljegren et al. 2008";
    private static final String REFERENCE = "WBGT reference, ISO 7243:2017";
    private static final Range AIR = new Range("air temperature", 10, 50, "degrees Celsius");
    private static final Range SPEED = new Range("air speed", 0, 20, "m/s");
    private static final Range SURROUNDINGS = new Range("mean radiant temperature", -10, 100, "degrees Celsius");
    private static final Range WORK = new Range("metabolic rate", 0, 600, "W");

    private static final double EMITTANCE = 0.95;
    private static final double GLOBE_M = 0.0508;
    private static final double GLOBE_ABSORPTANCE = 0.95;
    private static final double WICK_M = 0.007;
    private static final double WICK_LENGTH_M = 0.0254;
    private static final double WICK_ABSORPTANCE = 0.6;
    private static final double GROUND_REFLECTANCE = 0.45;

    private Wbgt() {}

    /**
     * The estimate.
     *
     * @param air the radiant temperature is that of the surroundings without the sun
     */
    public static Reading temperatureC(Air air, Sunlight sun) {
        Optional<OutOfRange> outside = Limit.firstPassed(
                MODEL,
                new Limit(AIR, air.airC()),
                new Limit(SPEED, air.speedMs()),
                new Limit(SURROUNDINGS, air.radiantC()));
        if (outside.isPresent()) {
            return outside.get();
        }
        double wick = naturalWetBulbC(air, sun);
        double globe = globeC(air, sun);
        return Reading.exact(sun.shines() ? inSun(wick, globe, air.airC()) : inShade(wick, globe));
    }

    static double inSun(double naturalWetBulbC, double globeC, double airC) {
        return 0.7 * naturalWetBulbC + 0.2 * globeC + 0.1 * airC;
    }

    static double inShade(double naturalWetBulbC, double globeC) {
        return 0.7 * naturalWetBulbC + 0.3 * globeC;
    }

    /** Highest WBGT for an hour of that work, degrees Celsius. */
    public static Reading referenceC(double met, boolean acclimatised) {
        double watts = watts(met);
        return Limit.firstPassed(REFERENCE, new Limit(WORK, watts))
                .<Reading>map(passed -> passed)
                .orElseGet(() -> {
                    double log = Math.log10(Math.max(REST_W, watts));
                    return Reading.exact(acclimatised ? 56.7 - 11.5 * log : 59.9 - 14.1 * log);
                });
    }

    /**
     * Share of an hour for which somebody who is not used to heat may do that work and rest for what is left, so that the mean of
     * the hour keeps to the reference: 0 where rest itself passes it, 1 where there is no need for rest.
     */
    public static double workShare(double met, double wbgtC) {
        double mean = Math.pow(10, (59.9 - wbgtC) / 14.1);
        double work = watts(met);
        if (mean >= work) {
            return 1;
        }
        return work <= REST_W ? 0 : Math.max(0, (mean - REST_W) / (work - REST_W));
    }

    private static double watts(double met) {
        return met * TwoNode.WM2_PER_MET * BODY_M2;
    }

    /** Black globe, t_g. */
    static double globeC(Air air, Sunlight sun) {
        double airK = air.airC() + KELVIN;
        double arriving =
                EMITTANCE * STEFAN_BOLTZMANN * fourth(air.radiantC() + KELVIN) + GLOBE_ABSORPTANCE * sunOnGlobe(sun);
        return Root.ofRising(
                        t -> EMITTANCE * STEFAN_BOLTZMANN * fourth(t)
                                + Instrument.atSphere(GLOBE_M, (t + airK) / 2, air.speedMs()) * (t - airK)
                                - arriving,
                        200,
                        500,
                        1e-6)
                - KELVIN;
    }

    private static double sunOnGlobe(Sunlight sun) {
        if (!sun.shines()) {
            return 0;
        }
        double beam = sun.directShare() * (1 / (2 * sun.sineOfAltitude()) - 1);
        return sun.globalWm2() / 2 * (beam + 1 + GROUND_REFLECTANCE);
    }

    /** Wet wick in the open wind, t_nwb. */
    static double naturalWetBulbC(Air air, Sunlight sun) {
        double airK = air.airC() + KELVIN;
        double vapour = air.humidityPercent() / 100 * Instrument.saturationHpa(airK);
        double arriving =
                EMITTANCE * STEFAN_BOLTZMANN * fourth(air.radiantC() + KELVIN) + WICK_ABSORPTANCE * sunOnWick(sun);
        double boilingK = 372;
        return Root.ofRising(
                        t -> {
                            double filmK = (t + airK) / 2;
                            double wick = Instrument.saturationHpa(t);
                            double radiation = arriving - EMITTANCE * STEFAN_BOLTZMANN * fourth(t);
                            return t
                                    - airK
                                    + Instrument.evaporativeK(filmK, Math.min(wick, PRESSURE_HPA - 1)) * (wick - vapour)
                                    - radiation / Instrument.atCylinder(WICK_M, filmK, air.speedMs());
                        },
                        200,
                        boilingK,
                        1e-6)
                - KELVIN;
    }

    private static double sunOnWick(Sunlight sun) {
        if (!sun.shines()) {
            return 0;
        }
        double end = 0.25 * WICK_M / WICK_LENGTH_M;
        double cotangent = Math.sqrt(1 - sun.sineOfAltitude() * sun.sineOfAltitude()) / sun.sineOfAltitude();
        double direct = sun.directShare();
        return sun.globalWm2() * ((1 - direct) * (1 + end) + direct * (cotangent / Math.PI + end) + GROUND_REFLECTANCE);
    }

    /** Surroundings in the open, half of them ground at the temperature of the air, half a clear sky: degrees Celsius. */
    public static double openSurroundingsC(double airC, double humidityPercent) {
        double airK = airC + KELVIN;
        double vapour = humidityPercent / 100 * Instrument.saturationHpa(airK);
        double sky = 0.575 * Math.pow(vapour, 0.143);
        return airK * Math.pow((sky + 0.999) / 2, 0.25) - KELVIN;
    }

    private static double fourth(double kelvin) {
        return kelvin * kelvin * kelvin * kelvin;
    }
}
