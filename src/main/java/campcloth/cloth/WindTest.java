package campcloth.cloth;

import campcloth.figure.Figure;
import campcloth.figure.Range;
import campcloth.figure.Refused;
import java.util.List;

/**
 * The same bag of air, pressed empty by the same weight once through a cloth of known air permeability and once through this one.
 *
 * @param referenceName what the known cloth is called
 * @param reference its air permeability, mm/s at 100 Pa
 * @param referenceSeconds how long the bag took through it, 1 to 12 times, 1 to 3600 s
 * @param seconds how long it took through this cloth
 * @param massG mass of the weight, 10 to 20000 g
 * @param areaCm2 area on which it presses the bag, 10 to 10000 cm2
 */
public record WindTest(
        String referenceName,
        Figure reference,
        List<Double> referenceSeconds,
        List<Double> seconds,
        double massG,
        double areaCm2) {

    public static final int MOST_TIMES = 12;

    private static final double PA_PER_KPA = 1000;
    private static final Range MASS = new Range("massG", 10, 20_000, "g");
    private static final Range AREA = new Range("areaCm2", 10, 10_000, "cm2");

    public WindTest {
        referenceSeconds = List.copyOf(referenceSeconds);
        seconds = List.copyOf(seconds);
        MASS.check(massG);
        AREA.check(areaCm2);
        checkTimes("referenceSeconds", referenceSeconds, 1, 3600, MOST_TIMES);
        checkTimes("seconds", seconds, 1, 3600, MOST_TIMES);
        if (reference.low() <= 0) {
            throw Refused.of(
                    "reference",
                    "may let no air through at all",
                    "compare with a cloth whose air permeability is above 0 for certain");
        }
    }

    static void checkTimes(String field, List<Double> times, double least, double most, int count) {
        if (times.isEmpty() || times.size() > count) {
            throw Refused.of(field, "has " + times.size() + " times", "give 1 to " + count + " times in seconds");
        }
        for (int i = 0; i < times.size(); i++) {
            new Range(field + "[" + i + "]", least, most, "s").check(times.get(i));
        }
    }

    /** Pressure of the air in the bag. */
    public double pressurePa() {
        return LayerStack.pressureKPa(massG, areaCm2) * PA_PER_KPA;
    }
}
