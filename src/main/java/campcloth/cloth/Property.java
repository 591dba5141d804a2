package campcloth.cloth;

import campcloth.figure.Range;

/** The figures that describe a cloth, each with its unit and the range that is plausible at all. */
public enum Property {
    /** Mass per area. */
    WEIGHT_GSM("weightGsm", 10, 2000, "g/m2"),
    /** From selvedge to selvedge, selvedges included. */
    WIDTH_CM("widthCm", 10, 400, "cm"),
    /** At about 0.5 to 1 kPa (ISO 5084). */
    THICKNESS_MM("thicknessMm", 0.03, 60, "mm"),
    /** ISO 9237 at 100 Pa; 1 mm/s is 1 l/(m2 s). */
    AIR_PERMEABILITY_MM_S("airPermeabilityMmS", 0, 10_000, "mm/s at 100 Pa"),
    /** ISO 11092, Ret. */
    VAPOUR_RESISTANCE_M2PA_W("vapourResistanceM2PaW", 0.1, 1000, "m2 Pa/W"),
    /**
     * Along the cloth; positive where it becomes shorter. Measured: the total after the last wash measured, for so much cloth must
     * be bought. Else: the first wash.
     */
    SHRINK_WARP_PERCENT("shrinkWarpPercent", -5, 40, "%"),
    /** The same across the cloth; positive where it becomes narrower. */
    SHRINK_WEFT_PERCENT("shrinkWeftPercent", -5, 40, "%"),
    /** Mean diameter of the fibres whose ends can prickle. */
    FIBRE_DIAMETER_UM("fibreDiameterUm", 1, 150, "um"),
    /** Standard deviation over mean of the fibre diameter. */
    FIBRE_DIAMETER_CV_PERCENT("fibreDiameterCvPercent", 0, 80, "%"),
    PRICE_PER_METRE("pricePerMetre", 0, 10_000, "EUR/m");

    private final Range range;

    Property(String field, double least, double most, String unit) {
        this.range = new Range(field, least, most, unit);
    }

    /** Name of the figure in files and answers. */
    public String field() {
        return range.field();
    }

    public String unit() {
        return range.unit();
    }

    public Range range() {
        return range;
    }
}
