package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.Prickle;
import campcloth.cloth.Property;
import campcloth.cloth.Wear;
import campcloth.comfort.Ensemble;
import campcloth.comfort.SpellComfort;
import campcloth.figure.Basis;
import campcloth.fire.FireJudgement;
import java.util.List;

/**
 * All that the sciences say of one cloth for one garment at one event.
 *
 * @param cloth the cloth, with estimates where nothing better is known
 * @param wear how the garment is worn
 * @param ensembles the whole clothing of each spell in still air
 * @param spells how it does in each spell
 * @param fire what fire and rules say
 * @param prickle how much of it prickles
 * @param bounds the most that the choice of a cloth can do there
 */
record Facts(
        Cloth cloth,
        Wear wear,
        List<Ensemble> ensembles,
        List<SpellComfort> spells,
        FireJudgement fire,
        Prickle prickle,
        Bounds bounds) {

    /** The weakest basis of the figures named. */
    Basis basis(Property... properties) {
        Basis weakest = Basis.MEASURED;
        for (Property property : properties) {
            Basis basis = cloth.required(property).basis();
            weakest = weakest.beats(basis) ? basis : weakest;
        }
        return weakest;
    }

    double value(Property property) {
        return cloth.required(property).value();
    }
}
