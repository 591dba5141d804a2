package campcloth.comfort;

import campcloth.cloth.Layer;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.Wear;
import campcloth.comfort.WornGarment.Shell;
import campcloth.comfort.WornGarment.Standing;
import campcloth.comfort.model.ResultantInsulation;

/**
 * How much air gets through what lies outermost, mm/s: ISO 11079 asks for the permeability of the outer cloth. Where a garment
 * covers half of the body or more it decides alone; where it covers less, it is mixed by logarithm with what lies beneath
 * (project choice). Of a told overgarment or cloak and what it lies over, the tighter one stops the wind, so that a layer more
 * never lets in more wind (project choice). Cloth of which nothing is known is ordinary cloth.
 */
final class Outermost {

    /** Where the cloth is hidden, this much air goes through what lies over it, mm/s. */
    private static final double ORDINARY_MM_S = 100;

    /** From this cover on the garment alone decides how much wind comes in, percent of the body. */
    private static final double WHOLE_COVER_PERCENT = 50;

    /**
     * A garment open at hem, cuffs and neck lets in as much air as this however tight its cloth, mm/s: project choice, between the
     * low and the medium class of ISO 11079.
     */
    private static final double TIGHTEST_GARMENT_MM_S = 20;

    private Outermost() {}

    static double permeabilityMmS(double garmentMmS, Wear wear, Wardrobe wardrobe, End end) {
        double outermost = isOutermost(wear, wardrobe)
                ? mixed(limited(garmentMmS), wear.coveredPercent(), ORDINARY_MM_S)
                : ORDINARY_MM_S;
        for (Kind kind : new Kind[] {Kind.OVERGARMENT, Kind.CLOAK}) {
            for (WornGarment over : wardrobe.worn(kind)) {
                if (over.standing() == Standing.TOLD) {
                    outermost = under(over, end, outermost);
                }
            }
        }
        return outermost;
    }

    /** Whether nothing presumed lies over the garment's own cloth. */
    static boolean isOutermost(Wear wear, Wardrobe wardrobe) {
        return wear.layer() == Layer.OUTER
                || wardrobe.worn(Kind.OVERGARMENT).stream().noneMatch(over -> over.standing() == Standing.PRESUMED);
    }

    private static double under(WornGarment over, End end, double beneathMmS) {
        double own = over.shell()
                .map(Shell::cloth)
                .map(cloth -> limited(end.of(cloth).permeabilityMmS()))
                .orElse(ORDINARY_MM_S);
        double covered = over.kind().map(GarmentList::coveredPercent).orElse(0.0);
        return mixed(Math.min(own, beneathMmS), covered, beneathMmS);
    }

    private static double mixed(double ownMmS, double coveredPercent, double beneathMmS) {
        double share = Math.min(1, coveredPercent / WHOLE_COVER_PERCENT);
        return Math.exp(share * Math.log(ownMmS) + (1 - share) * Math.log(beneathMmS));
    }

    private static double limited(double permeabilityMmS) {
        return ResultantInsulation.limited(Math.max(TIGHTEST_GARMENT_MM_S, permeabilityMmS));
    }
}
