package campcloth.comfort;

import campcloth.cloth.Layer;
import campcloth.cloth.Wear;
import campcloth.comfort.model.Motion;
import campcloth.comfort.model.ResultantInsulation;
import campcloth.comfort.model.VapourResistance;
import campcloth.comfort.model.Worn;

/**
 * The whole clothing with a garment of a certain cloth in it.
 *
 * <p>Garment: I_clu = 0.0043 A + 0.0014 H A clo, A percent of the body covered, H thickness of the cloth in mm (McCullough, Jones
 * and Huck 1985, from memory; it meets the garment lists to about 0.03 clo). Fitted up to 3 mm: thicker cloth is credited with
 * 3 mm, and {@link #thickerThanFitted} says so. Clothing: I_cl = 0.161 + 0.835 sum of I_clu clo (ISO 9920:2007, read
 * second-hand), the plain sum up to 0.2 clo. Vapour: {@link VapourResistance}. Not for wet,
 * belted or sat-on clothing.
 *
 * @param basicClo basic insulation I_cl, standing still in calm air
 * @param vapourResistanceM2KpaW vapour resistance R_e,cl, standing still in calm air
 * @param permeabilityMmS air permeability of what lies outermost, taken to 1..1000 mm/s
 * @param thickerThanFitted whether the cloth is thicker than the regression reaches
 * @param permeabilityLimited whether the permeability was taken to the end of its range
 */
public record Ensemble(
        double basicClo,
        double vapourResistanceM2KpaW,
        double permeabilityMmS,
        boolean thickerThanFitted,
        boolean permeabilityLimited) {

    private static final double THICKEST_FITTED_MM = 3;

    /** From this cover on the garment alone decides how much wind comes in, percent of the body. */
    private static final double WHOLE_COVER_PERCENT = 50;

    /**
     * A garment open at hem, cuffs and neck lets in as much air as this however tight its cloth, mm/s: project choice, between the
     * low and the medium class of ISO 11079.
     */
    private static final double TIGHTEST_GARMENT_MM_S = 20;

    /**
     * Cloth in figures, one end of their intervals or the middle.
     *
     * @param thicknessMm thickness
     * @param permeabilityMmS air permeability, mm/s at 100 Pa
     * @param vapourResistanceM2PaW R_et, m2 Pa/W
     */
    public record Sheet(double thicknessMm, double permeabilityMmS, double vapourResistanceM2PaW) {}

    public static Ensemble of(Sheet sheet, Wear wear, Wardrobe wardrobe) {
        double thickness = Math.min(THICKEST_FITTED_MM, sheet.thicknessMm);
        double garment = wear.coveredPercent() * (0.0043 + 0.0014 * thickness);
        double basicClo = whole(garment + wardrobe.clo());
        double outermost = outermost(sheet.permeabilityMmS, wear);
        return new Ensemble(
                basicClo,
                VapourResistance.still(
                        basicClo * Worn.M2KW_PER_CLO,
                        wear.coveredPercent() / 100,
                        thickness,
                        sheet.vapourResistanceM2PaW),
                outermost,
                sheet.thicknessMm > THICKEST_FITTED_MM,
                wear.layer() == Layer.OUTER
                        && ResultantInsulation.limited(sheet.permeabilityMmS) != sheet.permeabilityMmS);
    }

    /** As it is worn in that motion, wind and walking in it. */
    Worn worn(Motion motion) {
        double basic = basicClo * Worn.M2KW_PER_CLO;
        return new Worn(
                ResultantInsulation.m2KW(basic, motion, permeabilityMmS),
                VapourResistance.worn(vapourResistanceM2KpaW, basic, motion, permeabilityMmS));
    }

    private static double whole(double sumClo) {
        return sumClo <= 0.2 ? sumClo : 0.161 + 0.835 * sumClo;
    }

    /** The cloth's own where it lies outermost, mixed by logarithm with ordinary cloth where it covers little (project choice). */
    private static double outermost(double permeabilityMmS, Wear wear) {
        double ordinary = Math.log(Wardrobe.ORDINARY_PERMEABILITY_MM_S);
        if (wear.layer() != Layer.OUTER) {
            return Wardrobe.ORDINARY_PERMEABILITY_MM_S;
        }
        double share = Math.min(1, wear.coveredPercent() / WHOLE_COVER_PERCENT);
        double own = Math.log(ResultantInsulation.limited(Math.max(TIGHTEST_GARMENT_MM_S, permeabilityMmS)));
        return Math.exp(share * own + (1 - share) * ordinary);
    }
}
