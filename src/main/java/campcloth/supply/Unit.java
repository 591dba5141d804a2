package campcloth.supply;

import campcloth.cloth.MassPerArea;
import campcloth.cloth.Property;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Units that lists use, each with what one of it is in the unit of its figure. Exact by the definitions of 1959: inch 2.54 cm,
 * yard 0.9144 m, ounce 28.349523125 g. One momme is 3.75 g (a thousandth of a kan of 3.75 kg) of a piece 25 yards by
 * 1.5 inches, 4.3056 g/m2; others count a pound of a piece 100 yards by 45 inches, 4.3399 g/m2, so that the interval spans both
 * (both second hand, source momme-of-lists). An ounce alone, of cloth, is counted for a square yard.
 */
public enum Unit {
    GSM(Property.WEIGHT_GSM, 1, "g/m2", "gsm", "g/sqm", "g/qm", "gr/m2", "gm2", "g/mq", "grm2", "gperm2", "gpersqm"),
    OZ_YD2(
            Property.WEIGHT_GSM,
            MassPerArea.gsmOfOuncesPerSquareYard(1),
            "oz/yd2",
            "oz/sqyd",
            "oz/sqyard",
            "ozperyd2",
            "ozpersqyd",
            "ozpersquareyard",
            "oz/yd^2",
            "osy",
            "oz",
            "ounce",
            "ounces",
            "unzen"),
    MOMME(Property.WEIGHT_GSM, Unit.MOMME_GSM, "momme", "mommes"),
    CM(Property.WIDTH_CM, 1, "cm", "centimetres", "centimeters", "zentimeter"),
    MM_WIDE(Property.WIDTH_CM, 0.1, "mm", "millimetres", "millimeters"),
    METRE_WIDE(Property.WIDTH_CM, 100, "m", "metre", "meter", "metres", "meters"),
    INCH(Property.WIDTH_CM, 2.54, "inch", "in", "inches", "\"", "''", "zoll", "pouces", "pulgadas", "pollici"),
    YARD_WIDE(Property.WIDTH_CM, 91.44, "yd", "yard", "yards"),
    MM_THICK(Property.THICKNESS_MM, 1, "mm", "millimetres", "millimeters"),
    PERCENT(Property.SHRINK_WARP_PERCENT, 1, "%", "percent", "prozent", "pct"),
    PER_METRE(
            Property.PRICE_PER_METRE, 1, "/m", "permetre", "permeter", "/metre", "/meter", "promtr", "/lfm", "aumetre"),
    PER_YARD(Property.PRICE_PER_METRE, 1 / MassPerArea.METRES_PER_YARD, "/yd", "peryard", "/yard", "peryd"),
    MM_S(Property.AIR_PERMEABILITY_MM_S, 1, "mm/s", "l/m2/s"),
    RET(Property.VAPOUR_RESISTANCE_M2PA_W, 1, "m2pa/w"),
    UM(Property.FIBRE_DIAMETER_UM, 1, "um", "micron", "microns");

    private static final double MOMME_GSM = 3.75 / (25 * MassPerArea.METRES_PER_YARD * 1.5 * 0.0254);
    /** Of a piece 100 yards by 45 inches, in pounds. */
    private static final double POUND_MOMME_GSM = 453.59237 / (100 * MassPerArea.METRES_PER_YARD * 45 * 0.0254);

    private final Property property;
    private final double factor;
    private final List<String> spellings;

    Unit(Property property, double factor, String... spellings) {
        this.property = property;
        this.factor = factor;
        this.spellings = List.of(spellings);
    }

    /** The unit that is written so, among those of a figure. */
    static Optional<Unit> of(Property property, String written) {
        String plain = plain(written);
        return Arrays.stream(values())
                .filter(unit -> unit.measures(property) && unit.spellings.contains(plain))
                .findFirst();
    }

    /** Whether figures of that kind come in this unit; one kind of percent serves for all. */
    boolean measures(Property other) {
        return property == other || this == PERCENT && other.unit().equals("%");
    }

    /** How it is written in reports. */
    public String words() {
        return spellings.get(0);
    }

    /** The value in the unit of the figure. */
    public double convert(double value) {
        return value * factor;
    }

    /** Upper end of what the value may mean; the value itself but for the momme. */
    double convertHigh(double value) {
        return this == MOMME ? value * POUND_MOMME_GSM : convert(value);
    }

    static List<String> known(Property property) {
        return Arrays.stream(values())
                .filter(unit -> unit.measures(property))
                .map(Unit::words)
                .toList();
    }

    /** Lower case, without spaces and dots, with plain digits and quotation marks. */
    private static String plain(String written) {
        return Normalizer.normalize(written, Normalizer.Form.NFKC)
                .toLowerCase(Locale.ROOT)
                .replace('\u201d', '"')
                .replace('\u2032', '\'')
                .replace('\u03bc', 'u')
                .replaceAll("[\\s.^]", "");
    }
}
