package campcloth.comfort;

import campcloth.cloth.OutfitPart.Kind;
import campcloth.comfort.WornGarment.Standing;
import java.util.Optional;

/**
 * Garments that are presumed, with their insulation from the garment lists of ISO 9920 and ASHRAE 55 (read second-hand) or, for
 * clothing that is not in them, by {@link GarmentRegression}. Which of them stands for which historical garment is a choice of
 * the project.
 */
final class GarmentList {

    static final WornGarment DRAWERS = new WornGarment(
            "short drawers",
            Optional.empty(),
            Reading.exact(0.04),
            "briefs, ASHRAE 55 list",
            Standing.PRESUMED,
            Optional.empty());
    static final WornGarment THICK_HOSE = listed("thick hose", Kind.HOSE, 0.24, "thick trousers, ASHRAE 55 list");
    static final WornGarment THICK_SOCKS =
            listed("knee socks", Kind.FOOTWEAR, 0.06, "thick knee socks, ASHRAE 55 list");
    static final WornGarment BOOTS = listed("boots", Kind.FOOTWEAR, 0.10, "boots, ASHRAE 55 list");
    static final WornGarment THIN_HOSE = listed("thin hose", Kind.HOSE, 0.15, "thin trousers, ASHRAE 55 list");
    static final WornGarment SOCKS = listed("calf socks", Kind.FOOTWEAR, 0.03, "calf-length socks, ASHRAE 55 list");
    static final WornGarment SHOES = listed("shoes", Kind.FOOTWEAR, 0.02, "shoes, ASHRAE 55 list");
    static final WornGarment SHIRT =
            listed("long-sleeved shirt", Kind.SHIRT, 0.25, "long-sleeved dress shirt, ASHRAE 55 list");
    static final WornGarment WARM_TOP =
            listed("warm undershirt", Kind.WARM_UNDERWEAR, 0.20, "long underwear top, ASHRAE 55 list");
    static final WornGarment WARM_BOTTOMS =
            listed("warm under-hose", Kind.WARM_UNDERWEAR, 0.15, "long underwear bottoms, ASHRAE 55 list");
    static final WornGarment TUNIC = listed(
            "ordinary knee tunic",
            Kind.UNDER_TUNIC,
            0.33,
            "65 % of the body in 0.5 mm cloth by the regression on cover and thickness");
    static final WornGarment HOOD = listed(
            "hood with a shoulder cape",
            Kind.HOOD,
            0.10,
            "15 % of the body in 1.5 mm cloth by the regression on cover and thickness");
    static final WornGarment MITTENS = listed("mittens", Kind.MITTENS, 0.05, "gloves, ISO 9920 list");
    static final WornGarment UNDER_TUNIC =
            listed("woollen under-tunic", Kind.UNDER_TUNIC, 0.36, "thick long-sleeved sweater, ASHRAE 55 list");
    static final WornGarment OVERGARMENT = listed(
            "light overgarment",
            Kind.OVERGARMENT,
            0.28,
            "51 % of the body in 0.8 mm cloth by the regression on cover and thickness");
    static final WornGarment CLOAK = listed(
            "cloak to the calf",
            Kind.CLOAK,
            0.46,
            "65 % of the body in 2 mm cloth by the regression on cover and thickness");

    private GarmentList() {}

    private static WornGarment listed(String name, Kind kind, double clo, String because) {
        return new WornGarment(
                name, Optional.of(kind), Reading.exact(clo), because, Standing.PRESUMED, Optional.empty());
    }

    /**
     * Share of the body's surface that such a garment covers, percent; sums over the segments of the body by the adult chart of
     * Lund and Browder (from memory). Shirt and trousers meet the lists of ISO 9920 (51 and 45). A cloak hangs between open (55)
     * and drawn together (75). What is sewn in covers nothing more than its garment.
     */
    static double coveredPercent(Kind kind) {
        return switch (kind) {
            case SHIRT, OVERGARMENT -> 51;
            case WARM_UNDERWEAR -> 90;
            case HOSE -> 45;
            case UNDER_TUNIC, CLOAK -> 65;
            case HOOD -> 15;
            case MITTENS -> 5;
            case FOOTWEAR -> 11;
            case LINING, WADDING, INTERLINING, TRIM, THREAD -> 0;
        };
    }
}
