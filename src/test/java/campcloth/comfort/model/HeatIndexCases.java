package campcloth.comfort.model;

import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Prints generated cases of the heat index as CSV, for the comparison with another program in
 * {@code src/test/scripts/heat-index-agreement}: 1000 where the regression stands alone, 1000 over the whole range.
 */
final class HeatIndexCases {

    private static final int CASES = 1000;

    private HeatIndexCases() {}

    public static void main(String[] unused) {
        SplittableRandom random = new SplittableRandom(1990);
        System.out.println("airC,humidityPercent,indexC,regressionAlone");
        for (int i = 0; i < CASES; i++) {
            print(random.nextDouble(28, 50), random.nextDouble(13, 85));
            print(random.nextDouble(20, 50), random.nextDouble(0, 100));
        }
    }

    private static void print(double airC, double humidity) {
        double t = airC * 1.8 + 32;
        double index =
                HeatIndex.temperatureC(airC, humidity).inRange().orElseThrow().value();
        boolean alone = Math.abs(HeatIndex.fahrenheit(t, humidity) - HeatIndex.regression(t, humidity)) < 1e-12;
        System.out.printf(Locale.ROOT, "%.12f,%.12f,%.12f,%b%n", airC, humidity, index, alone);
    }
}
