package campcloth.comfort;

import campcloth.comfort.model.TwoNode;
import campcloth.comfort.model.WetClothing;
import campcloth.comfort.model.WetClothing.Wetting;
import campcloth.comfort.model.Worn;

/**
 * The models of one spell that take time, as functions of the clothing alone. Of a cloth and an outfit nothing reaches them but
 * the insulation and the vapour resistance as worn.
 */
sealed interface Physics permits DirectPhysics, GridPhysics {

    SpellNeeds needs();

    /** The two-node model of the wearer in that clothing, for heat; {@link ThreeWorn#outside} must be asked first. */
    TwoNode body(Worn worn);

    /** The two-node body at the higher metabolic rate; {@link ThreeWorn#outside} must be asked first. */
    Hour hour(Worn worn);

    /** Clothing of that insulation, were it dry, when it is wet. */
    WetClothing wet(double dryM2KW, Wetting wetting);

    /** Predicted mean vote at the mean of both metabolic rates. */
    Reading vote(double clo);
}
