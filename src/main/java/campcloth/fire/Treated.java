package campcloth.fire;

import campcloth.cloth.FlameTreatment;
import campcloth.fibre.FibreFamily;
import campcloth.fire.model.Melt;
import java.util.Optional;

/**
 * What a treatment against flame counts for. Nothing, unless its maker declares that it lasts through washing; then one point of
 * spread, where flame does not touch the cloth, on cloth that is more than half plant fibre and melts at most in traces. Never
 * on the axis of melt, never against a rule: rules do not ask for it.
 *
 * <p>Rests on: finishes for cotton that are sold as durable lost much of their effect after 5 to 20 washes with soap (J. Am. Oil
 * Chem. Soc. 48 (1971) 330, abstract); labels must warn of what spoils them (16 CFR 1616.6); bleach and hard water (North Dakota
 * Farm Research 33 (1976) no. 6, abstract). That salts leave in the first wash or rain is from memory. The size of the credit is a
 * project choice, no standard.
 */
final class Treated {

    private static final double HALF_PERCENT = 50;

    private Treated() {}

    /** Points of spread taken off, 0 or 1. */
    static int credit(WornCloth cloth, ExposureClass reach) {
        return cloth.treatment() == FlameTreatment.DECLARED_DURABLE
                        && isPlantFibre(cloth)
                        && !reach.atLeast(ExposureClass.CONTACT)
                ? 1
                : 0;
    }

    /** What to say of it; empty where there is no treatment. */
    static Optional<String> sentence(WornCloth cloth, ExposureClass reach) {
        return switch (cloth.treatment()) {
            case NONE -> Optional.empty();
            case UNKNOWN ->
                Optional.of("Nobody could say whether it was treated against flame: it counts as not treated.");
            case DECLARED ->
                Optional.of(
                        "It is said to be treated against flame, but not that this lasts: the first wash, rain or sweat"
                                + " can take such a treatment out, so it counts as not treated.");
            case DECLARED_DURABLE -> Optional.of(durable(cloth, reach) + PAPERS);
        };
    }

    private static final String PAPERS =
            " Soap, hard water and bleach can take such a treatment out: wash as its maker says. The fire marshal may want to"
                    + " see the maker's papers.";

    private static String durable(WornCloth cloth, ExposureClass reach) {
        if (!isPlantFibre(cloth)) {
            return "Its treatment against flame is declared durable, but counts for nothing here: it counts only on cloth that is"
                    + " more than half plant fibre and does not melt.";
        }
        return reach.atLeast(ExposureClass.CONTACT)
                ? "Its treatment against flame is declared durable, but counts for nothing where flame can touch the cloth."
                : "Its treatment against flame is declared durable: counted as one step less in how it spreads flame.";
    }

    private static boolean isPlantFibre(WornCloth cloth) {
        return cloth.blend().percentOf(FibreFamily.CELLULOSIC) > HALF_PERCENT
                && cloth.meltablePercent() <= Melt.TRACE_PERCENT;
    }
}
