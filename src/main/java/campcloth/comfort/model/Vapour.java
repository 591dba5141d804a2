package campcloth.comfort.model;

/**
 * Water vapour as the standards on the thermal environment use it: p_s(t) = 0.1333 exp(18.6686 - 4030.183 / (t + 235)) kPa
 * (Antoine equation of ISO 11079:2007 and of Gagge, Fobelets and Berglund 1986, read second-hand). For -50..60 degrees Celsius.
 */
final class Vapour {

    /** One kPa in mmHg, to the digits of the equation. */
    static final double MMHG_PER_KPA = 1 / 0.1333;

    private Vapour() {}

    static double saturationKpa(double tempC) {
        return 0.1333 * Math.exp(18.6686 - 4030.183 / (tempC + 235));
    }

    /** The temperature at which air of that vapour pressure is saturated. */
    static double dewPointC(double vapourKpa) {
        return 4030.183 / (18.6686 - Math.log(vapourKpa / 0.1333)) - 235;
    }
}
