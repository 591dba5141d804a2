package campcloth.comfort;

import campcloth.comfort.Reading.Value;
import java.util.Optional;

/**
 * What a cloth does for its wearer in one spell; intervals follow from the intervals of the cloth's figures. Clothing for cold
 * is judged with the lower metabolic rate of the activity, for heat with the higher one.
 *
 * @param needs what the spell asks for, whatever the cloth
 * @param warmth how it keeps warm
 * @param heat how it lets heat and moisture go
 * @param vote predicted mean vote at the mean of the two metabolic rates, in wind and radiation as they are: mostly out of range
 *     outdoors, for the standard is made for rooms
 */
public record SpellComfort(SpellNeeds needs, Warmth warmth, Heat heat, Reading vote) {

    /**
     * Warmth.
     *
     * @param resultantClo insulation that wind, walking and the cloth's permeability leave
     * @param marginClo that insulation less the needed one; negative where it is too little
     * @param minimalMarginClo that insulation less the minimal one; there only where ISO 11079 holds
     * @param hoursUntilCooling hours until the wearer has cooled by 40 Wh/m2 (ISO 11079, minimal criterion); 8 where it is 8
     *     hours or more or no cooling at all
     * @param wet what being wet costs, already off the others; empty where nobody said that the clothes are wet
     */
    public record Warmth(
            Reading resultantClo,
            Reading marginClo,
            Reading minimalMarginClo,
            Reading hoursUntilCooling,
            Optional<WetLoss> wet) {}

    /**
     * What being wet costs.
     *
     * @param lostClo insulation as worn, less that of dry clothing in which the wearer would lose as much heat
     * @param dryingWm2 how much of the heat loss is drying alone
     */
    public record WetLoss(Value lostClo, Value dryingWm2) {}

    /**
     * Heat: the two-node body after an hour of the spell.
     *
     * @param wettedness share of the skin that is wet
     * @param wettednessAsked wettedness that the sweating asks for; above {@code wettednessLimit} the body cannot get rid of its
     *     heat, and this tells how far it is from that
     * @param wettednessCeiling wettedness up to which people stay comfortable, 0.0012 M + 0.15 with M in W/m2 (ASHRAE Handbook
     *     Fundamentals, from memory)
     * @param wettednessLimit wettedness at which sweat drips off and cools no more
     * @param skinC skin temperature
     * @param coreC core temperature
     * @param standardEffectiveC SET
     * @param vapourResistanceM2PaW vapour resistance of the clothing as worn, m2 Pa/W
     */
    public record Heat(
            Reading wettedness,
            Reading wettednessAsked,
            double wettednessCeiling,
            Reading wettednessLimit,
            Reading skinC,
            Reading coreC,
            Reading standardEffectiveC,
            Value vapourResistanceM2PaW) {}
}
