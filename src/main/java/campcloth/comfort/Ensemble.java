package campcloth.comfort;

import campcloth.cloth.Wear;
import campcloth.comfort.model.Motion;
import campcloth.comfort.model.ResultantInsulation;
import campcloth.comfort.model.VapourResistance;
import campcloth.comfort.model.Worn;

/**
 * The whole clothing with a garment of a certain cloth in it.
 *
 * <p>Garments: {@link GarmentRegression} and {@link GarmentList}. Clothing: I_cl = 0.161 + 0.835 sum of I_clu clo (ISO 9920:2007,
 * read second-hand), the plain sum up to 0.2 clo. Wind: {@link Outermost}. Vapour: {@link VapourResistance}. Not for belted or
 * sat-on clothing. The clothing area factors of the standards are good to about 1.5 clo of ordinary clothing and too great above 2
 * clo and for wide, loose robes (Kuklane and Toma 2021, abstract).
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

    static Ensemble of(Sheets cloth, Wear wear, Wardrobe wardrobe, End end) {
        Sheet sheet = end.of(wardrobe.sewnIn().stream().reduce(cloth, Sheets::with));
        double basicClo = whole(GarmentRegression.clo(wear.coveredPercent(), sheet.thicknessMm()) + wardrobe.clo(end));
        double beyondOrdinary = beyondOrdinary(sheet, wear.coveredPercent())
                + wardrobe.garments().stream()
                        .flatMap(garment -> garment.shell().stream())
                        .mapToDouble(shell -> beyondOrdinary(end.of(shell.cloth()), shell.coveredPercent()))
                        .sum();
        return new Ensemble(
                basicClo,
                VapourResistance.still(basicClo * Worn.M2KW_PER_CLO, beyondOrdinary),
                Outermost.permeabilityMmS(sheet.permeabilityMmS(), wear, wardrobe, end),
                GarmentRegression.isBeyond(sheet.thicknessMm()),
                Outermost.isOutermost(wear, wardrobe)
                        && ResultantInsulation.limited(sheet.permeabilityMmS()) != sheet.permeabilityMmS());
    }

    /** As it is worn in that motion, wind and walking in it. */
    Worn worn(Motion motion) {
        double basic = basicClo * Worn.M2KW_PER_CLO;
        return new Worn(
                ResultantInsulation.m2KW(basic, motion, permeabilityMmS),
                VapourResistance.worn(vapourResistanceM2KpaW, basic, motion, permeabilityMmS));
    }

    private static double beyondOrdinary(Sheet sheet, double coveredPercent) {
        return VapourResistance.beyondOrdinary(
                coveredPercent / 100, GarmentRegression.fitted(sheet.thicknessMm()), sheet.vapourResistanceM2PaW());
    }

    private static double whole(double sumClo) {
        return sumClo <= 0.2 ? sumClo : 0.161 + 0.835 * sumClo;
    }
}
