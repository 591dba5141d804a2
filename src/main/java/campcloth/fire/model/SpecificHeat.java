package campcloth.fire.model;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import java.util.Map;

/**
 * Specific heat of dry cloth, J/(g K): the mean of its fibres by mass. Source: Morton and Hearle, Physical Properties of Textile
 * Fibres, table 6.1, fibres at room temperature; of an interval the low end, which warms sooner.
 *
 * <p>Fibres that the table leaves out: plant fibre as cotton, regenerated cellulose as viscose, hair as wool; all others as
 * polyester, the textile fibre that warms soonest (project choice). Film and wax count as the cloth they lie on.
 */
public final class SpecificHeat {

    private static final double COTTON = 1.22;
    private static final double VISCOSE = 1.35;
    private static final double WOOL = 1.36;
    private static final double POLYESTER = 1.03;
    private static final double GLASS = 0.80;

    private static final Map<String, Double> BY_FIBRE = Map.of(
            "viscose", VISCOSE,
            "modal", VISCOSE,
            "lyocell", VISCOSE,
            "cupro", VISCOSE,
            "silk", 1.38,
            "polyamide", 1.43);

    private SpecificHeat() {}

    public static double jGK(Blend blend) {
        return blend.shares().stream()
                        .mapToDouble(share -> share.percent() * jGK(share.fibre()))
                        .sum()
                / blend.shares().stream().mapToDouble(Blend.Share::percent).sum();
    }

    private static double jGK(Fibre fibre) {
        double likeItsFamily = switch (fibre.family()) {
            case CELLULOSIC -> COTTON;
            case PROTEIN -> WOOL;
            case MINERAL -> GLASS;
            case MELTABLE, FLAME_RESISTANT, UNNAMED -> POLYESTER;
        };
        return BY_FIBRE.getOrDefault(fibre.key(), likeItsFamily);
    }
}
