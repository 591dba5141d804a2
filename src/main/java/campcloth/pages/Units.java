package campcloth.pages;

import static campcloth.figure.Words.fixed;

import java.util.Locale;

/**
 * Units as a reader wants them. The core keeps SI units; here they are turned into others to be shown and typed. Inch, foot and
 * yard by the international yard of 0.9144 m (1959), ounce by the avoirdupois pound of 0.45359237 kg (the same agreement).
 */
public enum Units {
    METRIC,
    IMPERIAL;

    private static final double CM_PER_INCH = 2.54;
    private static final double CM_PER_YARD = 91.44;
    private static final double M_PER_FOOT = 0.3048;
    private static final double GSM_PER_OUNCE_PER_SQUARE_YARD = 28.349523125 / 0.83612736;
    private static final double G_PER_OUNCE = 28.349523125;
    private static final int EIGHTHS = 8;

    /** What a typed number measures, and so how it is turned into the unit that the core takes. */
    public enum Measure {
        /** Length on cloth and body, in cm or inch. */
        LENGTH_CM(CM_PER_INCH, "cm", "in"),
        /** Length of cloth as a shop cuts it, in cm or yard. */
        CLOTH_LENGTH_CM(CM_PER_YARD, "cm", "yd"),
        /** Mass of cloth by its area, in g/m2 or oz/yd2. */
        WEIGHT_GSM(GSM_PER_OUNCE_PER_SQUARE_YARD, "g/m²", "oz/yd²"),
        /** Distance on the ground, in m or foot. */
        DISTANCE_M(M_PER_FOOT, "m", "ft"),
        /** Price by the length of cloth, by the metre or the yard. */
        PRICE_PER_METRE(100 / CM_PER_YARD, "per m", "per yd");

        private final double metricPerImperial;
        private final String metric;
        private final String imperial;

        Measure(double metricPerImperial, String metric, String imperial) {
            this.metricPerImperial = metricPerImperial;
            this.metric = metric;
            this.imperial = imperial;
        }

        /** The value that the core takes, of a number typed in these units. */
        double toCore(double typed, Units units) {
            return units == METRIC ? typed : typed * metricPerImperial;
        }

        public double fromCore(double core, Units units) {
            return units == METRIC ? core : core / metricPerImperial;
        }

        String sign(Units units) {
            return units == METRIC ? metric : imperial;
        }
    }

    /** The sign behind a number, such as {@code cm}. */
    public String sign(Measure measure) {
        return measure.sign(this);
    }

    /** The same by the measure's name, for templates. */
    public String sign(String measure) {
        return sign(Measure.valueOf(measure));
    }

    /** A length on cloth or body: {@code 98 cm}, {@code 38 5/8 in}. */
    public String length(double cm) {
        return this == METRIC ? shortest(cm, 1) + " cm" : eighths(cm / CM_PER_INCH, false) + " in";
    }

    /** A length to buy, never rounded down: {@code 220 cm}, {@code 2 1/2 yd}. */
    public String clothLength(double cm) {
        return this == METRIC ? shortest(cm, 1) + " cm" : eighths(cm / CM_PER_YARD, true) + " yd";
    }

    public String distance(double m) {
        return this == METRIC ? fixed(m, 1) + " m" : fixed(m / M_PER_FOOT, 1) + " ft";
    }

    /** How far to keep from a fire at least: never written nearer than it is. */
    public String keepAway(double m) {
        return distance(
                Math.ceil((this == METRIC ? m : m / M_PER_FOOT) * 10 - 1e-9) / 10 * (this == METRIC ? 1 : M_PER_FOOT));
    }

    /** A mass by area: {@code 190 g/m²}, {@code 5.6 oz/yd²}. */
    public String weight(double gsm) {
        return this == METRIC ? shortest(gsm, 0) + " g/m²" : fixed(gsm / GSM_PER_OUNCE_PER_SQUARE_YARD, 1) + " oz/yd²";
    }

    /** What a garment weighs. */
    public String mass(double kg) {
        return this == METRIC ? fixed(kg, 2) + " kg" : fixed(kg * 1000 / G_PER_OUNCE, 0) + " oz";
    }

    /** An amount by the length of cloth: {@code 14.50 EUR per m}. */
    public String price(double perMetre, String currency) {
        Measure measure = Measure.PRICE_PER_METRE;
        return fixed(measure.fromCore(perMetre, this), 2) + " " + currency + " " + measure.sign(this);
    }

    /** As it stands in an address or a cookie. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    private static String shortest(double value, int decimals) {
        String written = fixed(value, decimals);
        return decimals > 0 && written.endsWith(".0") ? written.substring(0, written.length() - 2) : written;
    }

    private static String eighths(double value, boolean up) {
        double parts = value * EIGHTHS;
        long count = up ? (long) Math.ceil(parts - 1e-9) : Math.round(parts);
        long whole = count / EIGHTHS;
        long rest = count % EIGHTHS;
        if (rest == 0) {
            return Long.toString(whole);
        }
        long halves = Long.lowestOneBit(rest);
        String fraction = rest / halves + "/" + EIGHTHS / halves;
        return whole == 0 ? fraction : whole + " " + fraction;
    }
}
