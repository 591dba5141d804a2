package campcloth.comfort;

import campcloth.cloth.Layer;
import campcloth.cloth.Wear;
import java.util.ArrayList;
import java.util.List;

/**
 * What is presumed to be worn besides the garment that is to be sewn: the same through all spells of an event, chosen by its
 * coldest spell. Which garments those are is a choice of the project; their insulation comes from the garment lists of ISO 9920
 * and ASHRAE 55, read second-hand.
 *
 * @param garments the garments
 */
public record Wardrobe(List<Garment> garments) {

    /** At this air temperature or below warm underwear, thick hose and boots are presumed: where ISO 11079 begins. */
    public static final double COLD_C = 10;

    /** At this air temperature or below head and hands are presumed covered and another layer worn beneath: project choice. */
    public static final double BITTER_C = 5;

    /** A garment that covers less than this is presumed to be worn with an ordinary tunic, percent of the body. */
    private static final double WHOLE_GARMENT_PERCENT = 40;

    /** Where the cloth is hidden, this much air goes through what lies over it, mm/s. */
    static final double ORDINARY_PERMEABILITY_MM_S = 100;

    /**
     * A garment.
     *
     * @param name in words
     * @param clo its insulation I_clu
     * @param because which entry of which list it stands for
     */
    public record Garment(String name, double clo, String because) {}

    private static final Garment DRAWERS = new Garment("short drawers", 0.04, "briefs, ASHRAE 55 list");
    private static final Garment THICK_HOSE = new Garment("thick hose", 0.24, "thick trousers, ASHRAE 55 list");
    private static final Garment THICK_SOCKS = new Garment("knee socks", 0.06, "thick knee socks, ASHRAE 55 list");
    private static final Garment BOOTS = new Garment("boots", 0.10, "boots, ASHRAE 55 list");
    private static final Garment THIN_HOSE = new Garment("thin hose", 0.15, "thin trousers, ASHRAE 55 list");
    private static final Garment SOCKS = new Garment("calf socks", 0.03, "calf-length socks, ASHRAE 55 list");
    private static final Garment SHOES = new Garment("shoes", 0.02, "shoes, ASHRAE 55 list");
    private static final Garment SHIRT =
            new Garment("long-sleeved shirt", 0.25, "long-sleeved dress shirt, ASHRAE 55 list");
    private static final Garment WARM_TOP = new Garment("warm undershirt", 0.20, "long underwear top, ASHRAE 55 list");
    private static final Garment WARM_BOTTOMS =
            new Garment("warm under-hose", 0.15, "long underwear bottoms, ASHRAE 55 list");
    private static final Garment TUNIC = new Garment(
            "ordinary knee tunic", 0.33, "65 % of the body in 0.5 mm cloth by the regression on cover and thickness");
    private static final Garment HOOD = new Garment(
            "hood with a shoulder cape",
            0.10,
            "15 % of the body in 1.5 mm cloth by the regression on cover and thickness");
    private static final Garment MITTENS = new Garment("mittens", 0.05, "gloves, ISO 9920 list");
    private static final Garment UNDER_TUNIC =
            new Garment("woollen under-tunic", 0.36, "thick long-sleeved sweater, ASHRAE 55 list");
    private static final Garment OVERGARMENT = new Garment(
            "light overgarment", 0.28, "51 % of the body in 0.8 mm cloth by the regression on cover and thickness");

    public Wardrobe {
        garments = List.copyOf(garments);
    }

    /** The wardrobe that goes with a garment worn that way at an event whose coldest air is given. */
    public static Wardrobe with(Wear wear, double coldestAirC) {
        List<Garment> garments = new ArrayList<>(
                coldestAirC <= COLD_C
                        ? List.of(DRAWERS, WARM_BOTTOMS, THICK_HOSE, THICK_SOCKS, BOOTS)
                        : List.of(DRAWERS, THIN_HOSE, SOCKS, SHOES));
        if (coldestAirC <= BITTER_C) {
            garments.addAll(List.of(HOOD, MITTENS));
        }
        if (!wear.nextToSkin()) {
            garments.addAll(beneath(coldestAirC));
        }
        if (wear.coveredPercent() < WHOLE_GARMENT_PERCENT) {
            garments.add(TUNIC);
        }
        if (wear.layer() != Layer.OUTER) {
            garments.add(OVERGARMENT);
        }
        return new Wardrobe(garments);
    }

    private static List<Garment> beneath(double coldestAirC) {
        if (coldestAirC > COLD_C) {
            return List.of(SHIRT);
        }
        return coldestAirC > BITTER_C ? List.of(WARM_TOP, SHIRT) : List.of(WARM_TOP, SHIRT, UNDER_TUNIC);
    }

    /** Sum of the garments' insulation, clo. */
    public double clo() {
        return garments.stream().mapToDouble(Garment::clo).sum();
    }
}
