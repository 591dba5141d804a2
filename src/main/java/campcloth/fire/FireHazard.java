package campcloth.fire;

import java.util.List;
import java.util.Optional;

/**
 * How a cloth stands in one exposure. Both axes belong to the cloth as it is worn; the hazard joins them with the exposure and is
 * never below what one axis alone would give. The numbers order cloths; they are no physical measure. What explains them is
 * computed when it is asked for.
 *
 * @param cloth the cloth as it is worn
 * @param exposure its exposure
 * @param spread how readily it catches and spreads flame, 0 least to 100 worst
 * @param melt how much it can melt onto its wearer, 0 nothing melts to 100 worst
 * @param hazard both with the exposure, 0 to 100; 0 without a fire
 * @param spreadHazard what the spread alone would give
 * @param meltHazard what the melt alone would give
 * @param grade quarter of the hazard
 * @param meltWarning how strongly to warn of melting
 */
public record FireHazard(
        WornCloth cloth,
        Exposure exposure,
        double spread,
        double melt,
        double hazard,
        double spreadHazard,
        double meltHazard,
        FireGrade grade,
        MeltWarning meltWarning) {

    /** What of the fire reaches the wearer. */
    public ExposureClass reach() {
        return exposure.reach();
    }

    /** Share that melts or must be presumed to, film or wax included, percent. */
    public double meltablePercent() {
        return cloth.meltablePercent();
    }

    /** Radiant flux, kW/m2; empty in the near field, without a distance, without a fire. */
    public Optional<Double> fluxKwM2() {
        return exposure.fluxKwM2();
    }

    /** Distance to keep, and what sets it: an estimate for a steady fire. */
    public StandBack standBack() {
        return StandBack.of(cloth, exposure.fireKwOrPresumed());
    }

    /** Distance to keep from the fire's centre, m. */
    public double standBackM() {
        return standBack().metres();
    }

    /** What steady radiant heat does there. */
    public HeatOnCloth heat() {
        return HeatOnCloth.of(cloth, exposure);
    }

    /** Each way in which the fire threatens the cloth there; none without a fire. */
    public List<FireThreat> threats() {
        return FireThreats.of(cloth, exposure, heat());
    }

    /** Why. */
    public List<FireReason> reasons() {
        return FireReasons.of(cloth, exposure, melt);
    }
}
