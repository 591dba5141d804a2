package campcloth.fire;

import campcloth.fire.model.HeatBalance;
import campcloth.fire.model.HeatedCloth;
import campcloth.fire.model.SkinTimes;
import campcloth.fire.model.SpecificHeat;
import java.util.Optional;

/**
 * What one steady radiant flux does to a cloth and to bare skin beside it; the cloth loses heat from its lit side only, the worst
 * case ({@link HeatedCloth}).
 *
 * @param fluxKwM2 radiant flux, kW/m2
 * @param after1MinC temperature of the cloth after one minute, degrees Celsius
 * @param after5MinC after five minutes
 * @param steadyC where it settles
 * @param softensAfterS time until its first part softens, s; empty where it never does at that flux
 * @param skinHurtsAfterS time until bare skin hurts, s; empty outside 1 to 12 kW/m2
 * @param skinBurnsAfterS time until bare skin has a second-degree burn, s; empty outside 1 to 12 kW/m2
 */
public record RadiantWarming(
        double fluxKwM2,
        double after1MinC,
        double after5MinC,
        double steadyC,
        Optional<Double> softensAfterS,
        Optional<Double> skinHurtsAfterS,
        Optional<Double> skinBurnsAfterS) {

    private static final double MINUTE_S = 60;

    static RadiantWarming of(WornCloth cloth, double fluxKwM2) {
        HeatedCloth heated = new HeatedCloth(HeatBalance.ONE_SIDE, cloth.weightGsm(), SpecificHeat.jGK(cloth.blend()));
        return new RadiantWarming(
                fluxKwM2,
                heated.temperatureC(fluxKwM2, MINUTE_S),
                heated.temperatureC(fluxKwM2, 5 * MINUTE_S),
                HeatBalance.ONE_SIDE.steadyC(fluxKwM2),
                Softening.of(cloth).flatMap(softening -> heated.secondsTo(softening.clothC(), fluxKwM2)),
                SkinTimes.painS(fluxKwM2),
                SkinTimes.soonestSecondDegreeS(fluxKwM2));
    }
}
