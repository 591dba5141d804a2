package campcloth.rest;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers cut to the decimals that are worth telling. */
final class Rounded {

    private Rounded() {}

    static double to(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .doubleValue();
    }
}
