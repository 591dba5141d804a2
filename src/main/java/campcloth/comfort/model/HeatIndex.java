package campcloth.comfort.model;

import campcloth.comfort.Reading;
import campcloth.comfort.Reading.OutOfRange;
import campcloth.figure.Range;
import java.util.Optional;

/**
 * Heat index of the US National Weather Service, degrees Celsius: shade, light wind, light clothing, walking. The regression of
 * Rothfusz 1990 with its adjustments for dry and for humid air; where the mean of simple formula and air lies below 80 degrees
 * Fahrenheit, the simple formula (page of the Weather Prediction Center, read). For air from 20 to 50 degrees Celsius (project
 * choice); full sun can add up to 8 degrees Celsius, which is not in it.
 */
public final class HeatIndex {

    private static final String MODEL = "heat index, Rothfusz 1990";
    private static final Range AIR = new Range("air temperature", 20, 50, "degrees Celsius");

    private HeatIndex() {}

    public static Reading temperatureC(double airC, double humidityPercent) {
        Optional<OutOfRange> outside = Limit.firstPassed(MODEL, new Limit(AIR, airC));
        return outside.isPresent()
                ? outside.get()
                : Reading.exact((fahrenheit(airC * 1.8 + 32, humidityPercent) - 32) / 1.8);
    }

    /** T in degrees Fahrenheit, R in percent. */
    static double fahrenheit(double t, double r) {
        double simple = 0.5 * (t + 61.0 + (t - 68.0) * 1.2 + r * 0.094);
        return (simple + t) / 2 < 80 ? simple : regression(t, r) + adjustment(t, r);
    }

    /** Rothfusz 1990 by itself, whether or not it holds there. */
    static double regression(double t, double r) {
        return -42.379
                + 2.04901523 * t
                + 10.14333127 * r
                - 0.22475541 * t * r
                - 6.83783e-3 * t * t
                - 5.481717e-2 * r * r
                + 1.22874e-3 * t * t * r
                + 8.5282e-4 * t * r * r
                - 1.99e-6 * t * t * r * r;
    }

    static double adjustment(double t, double r) {
        if (r < 13 && t >= 80 && t <= 112) {
            return -(13 - r) / 4 * Math.sqrt((17 - Math.abs(t - 95)) / 17);
        }
        if (r > 85 && t >= 80 && t <= 87) {
            return (r - 85) / 10 * (87 - t) / 5;
        }
        return 0;
    }
}
