package campcloth.comfort.model;

/**
 * The two-node body at the end of a minute, with the heat flows of that minute, W/m2.
 *
 * @param skinC mean skin temperature
 * @param coreC core temperature
 * @param skinShare share of the body's mass that counts as skin, alpha
 * @param bloodFlowLM2H skin blood flow, l/(m2 h)
 * @param metabolicWm2 heat made, shivering included
 * @param breathWm2 heat lost by breathing
 * @param dryWm2 heat lost from the skin by convection and radiation
 * @param evaporationWm2 heat lost from the skin by evaporation, as it enters the next minute
 * @param skinStorageWm2 heat that the skin took up
 * @param coreStorageWm2 heat that the core took up
 * @param sweatCallGM2H sweat that the body calls for, g/(m2 h)
 * @param sweatGM2H sweat that evaporates, g/(m2 h); the rest of what is called for drips off
 * @param wettedness share of the skin that is wet
 * @param wettednessAsked the share that the sweating asks for; above the wettest there can be, sweat drips off
 * @param clothingC temperature of the clothing's surface
 * @param radiativeWm2K radiative heat transfer coefficient h_r
 */
public record Body(
        double skinC,
        double coreC,
        double skinShare,
        double bloodFlowLM2H,
        double metabolicWm2,
        double breathWm2,
        double dryWm2,
        double evaporationWm2,
        double skinStorageWm2,
        double coreStorageWm2,
        double sweatCallGM2H,
        double sweatGM2H,
        double wettedness,
        double wettednessAsked,
        double clothingC,
        double radiativeWm2K) {

    /** What goes on into the next minute, or into the next spell. */
    public State state() {
        return new State(skinC, coreC, skinShare, bloodFlowLM2H, sweatCallGM2H);
    }

    /** The same with more evaporation in the next minute, as out of wet clothing. */
    public Body evaporatingMore(double wm2) {
        return new Body(
                skinC,
                coreC,
                skinShare,
                bloodFlowLM2H,
                metabolicWm2,
                breathWm2,
                dryWm2,
                evaporationWm2 + wm2,
                skinStorageWm2,
                coreStorageWm2,
                sweatCallGM2H,
                sweatGM2H,
                wettedness,
                wettednessAsked,
                clothingC,
                radiativeWm2K);
    }
}
