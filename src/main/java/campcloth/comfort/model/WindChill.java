package campcloth.comfort.model;

import campcloth.comfort.Reading;
import campcloth.comfort.Reading.OutOfRange;
import campcloth.figure.Range;
import java.util.Optional;

/**
 * Wind chill temperature (JAG/TI 2001, adopted by ISO 11079:2007), degrees Celsius, from the wind at 10 m height:
 * 13.12 + 0.6215 t_a - 11.37 V^0.16 + 0.3965 t_a V^0.16 with V in km/h. For air up to 10 degrees Celsius and wind from 1.3 m/s
 * (4.7 km/h; in less wind it would promise warmth). It is about the bare face of a walking adult, not about clothing.
 */
public final class WindChill {

    private static final String MODEL = "wind chill, JAG/TI 2001";
    private static final Range AIR = new Range("air temperature", -60, 10, "degrees Celsius");
    private static final Range WIND = new Range("wind at 10 m height", 1.3, 40, "m/s");

    private WindChill() {}

    public static Reading temperatureC(double airC, double windMs) {
        Optional<OutOfRange> outside = Limit.firstPassed(MODEL, new Limit(AIR, airC), new Limit(WIND, windMs));
        if (outside.isPresent()) {
            return outside.get();
        }
        double v = Math.pow(windMs * 3.6, 0.16);
        return Reading.exact(13.12 + 0.6215 * airC - 11.37 * v + 0.3965 * airC * v);
    }
}
