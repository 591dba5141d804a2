package campcloth.cloth;

import campcloth.figure.Basis;
import campcloth.figure.Figure;

/**
 * A cloth in the numbers that a first look over a great many needs: best figures, estimated where nothing better is known. The
 * intervals are left out but for the low end of the mass, which fire may grade by.
 *
 * @param make what it is
 * @param weightGsm mass, g/m2
 * @param leastGsm low end of the mass, g/m2
 * @param massIsEstimated whether nobody told the mass
 * @param thicknessMm thickness, mm
 * @param permeabilityMmS air permeability, mm/s at 100 Pa
 * @param vapourResistanceM2PaW R_et, m2 Pa/W
 * @param coarseEndsPercent see {@link Prickle}
 * @param bastRoughness see {@link Prickle}
 * @param thicknessIsKnown whether somebody measured, declared or published the thickness
 * @param permeabilityIsKnown whether somebody measured or declared the air permeability
 */
public record ClothInNumbers(
        ClothMake make,
        double weightGsm,
        double leastGsm,
        boolean massIsEstimated,
        double thicknessMm,
        double permeabilityMmS,
        double vapourResistanceM2PaW,
        double coarseEndsPercent,
        double bastRoughness,
        boolean thicknessIsKnown,
        boolean permeabilityIsKnown) {

    public static ClothInNumbers of(Cloth cloth) {
        Cloth completed = Estimates.complete(cloth);
        Figure weight = completed.required(Property.WEIGHT_GSM);
        Prickle prickle = Prickle.of(completed);
        return new ClothInNumbers(
                ClothMake.of(cloth),
                weight.value(),
                weight.low(),
                weight.basis() == Basis.ESTIMATED,
                completed.required(Property.THICKNESS_MM).value(),
                completed.required(Property.AIR_PERMEABILITY_MM_S).value(),
                completed.required(Property.VAPOUR_RESISTANCE_M2PA_W).value(),
                prickle.coarseEndsPercent().value(),
                prickle.bastRoughness(),
                Trait.THICKNESS.isKnown(cloth),
                cloth.figure(Property.AIR_PERMEABILITY_MM_S)
                        .filter(figure -> figure.basis() == Basis.MEASURED || figure.basis() == Basis.DECLARED)
                        .isPresent());
    }
}
