package campcloth.fire;

import java.util.List;
import java.util.Optional;

/**
 * How a cloth stands in one exposure. Both axes belong to the cloth as it is worn; the hazard joins them with the exposure and is
 * never below what one axis alone would give. The numbers order cloths; they are no physical measure.
 *
 * @param spread how readily it catches and spreads flame there, 0 least to 100 worst; depends on the exposure only for treated cloth
 * @param melt how much it can melt onto its wearer, 0 nothing melts to 100 worst
 * @param hazard both with the exposure, 0 to 100; 0 without a fire
 * @param spreadHazard what the spread alone would give
 * @param meltHazard what the melt alone would give
 * @param grade quarter of the hazard
 * @param meltWarning how strongly to warn of melting
 * @param reach what of the fire reaches the wearer
 * @param meltablePercent share that melts or must be presumed to, film or wax included
 * @param fluxKwM2 radiant flux, kW/m2; empty in the near field, without a distance, without a fire
 * @param standBackM distance to keep from the fire's centre, m: an estimate for a steady fire, see {@link FireGrading}
 * @param reasons why
 */
public record FireHazard(
        double spread,
        double melt,
        double hazard,
        double spreadHazard,
        double meltHazard,
        FireGrade grade,
        MeltWarning meltWarning,
        ExposureClass reach,
        double meltablePercent,
        Optional<Double> fluxKwM2,
        double standBackM,
        List<FireReason> reasons) {

    public FireHazard {
        reasons = List.copyOf(reasons);
    }
}
