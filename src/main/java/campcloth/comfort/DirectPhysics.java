package campcloth.comfort;

import campcloth.comfort.model.HeatHabit;
import campcloth.comfort.model.Pmv;
import campcloth.comfort.model.TwoNode;
import campcloth.comfort.model.WetClothing;
import campcloth.comfort.model.WetClothing.Wetting;
import campcloth.comfort.model.Worn;

/**
 * The models themselves.
 *
 * @param habit how far the wearer is used to heat
 */
record DirectPhysics(SpellNeeds needs, HeatHabit habit) implements Physics {

    /** Of the published body. */
    DirectPhysics(SpellNeeds needs) {
        this(needs, HeatHabit.NONE);
    }

    @Override
    public Hour hour(Worn worn) {
        return Hour.after(body(worn));
    }

    @Override
    public TwoNode body(Worn worn) {
        Surroundings around = needs.surroundings();
        return new TwoNode(around.air(), around.highMet(), worn, around.seated(), habit);
    }

    @Override
    public WetClothing wet(double dryM2KW, Wetting wetting) {
        Surroundings around = needs.surroundings();
        return WetClothing.inComfort(
                dryM2KW,
                around.air(),
                SpellNeeds.motion(around, around.lowMet()),
                around.lowMet() * SpellNeeds.WM2_PER_MET,
                wetting);
    }

    @Override
    public Reading vote(double clo) {
        Surroundings around = needs.surroundings();
        return Pmv.vote(around.air(), around.meanMet(), clo);
    }
}
