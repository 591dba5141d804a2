package campcloth.errand;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.UsableWidth;
import campcloth.garment.SewnBy;
import campcloth.garment.SewnCloth;
import campcloth.plan.ClothToCut;
import campcloth.plan.CutCloth;
import campcloth.plan.CuttingPlan;
import campcloth.plan.GarmentWork;
import campcloth.plan.Making;
import java.util.List;

/**
 * An errand with its plan and its cloth as it is cut.
 *
 * @param errand the errand
 * @param plan its plan
 * @param cloth its cloth, completed by estimates
 * @param toCut the same as it is cut
 */
record CutErrand(Errand errand, CuttingPlan plan, Cloth cloth, ClothToCut toCut) {

    /** The cloth is cut as the plan remembers it; as usual where the plan is too old to. */
    static CutErrand of(Errand errand, CuttingPlan plan) {
        Cloth cloth = Estimates.complete(errand.cloth().cloth());
        double selvedgeCm = plan.cloth().map(CutCloth::selvedgeCm).orElse(UsableWidth.USUAL_SELVEDGE_CM);
        boolean prewash = plan.cloth()
                .map(CutCloth::washing)
                .filter(CutCloth.Washing.NOT_YET::equals)
                .isEmpty();
        return new CutErrand(errand, plan, cloth, ClothToCut.of(cloth, selvedgeCm, prewash));
    }

    SewnCloth sewn() {
        return toCut.sewn();
    }

    List<GarmentWork> works() {
        return plan.making().map(Making::garments).orElse(List.of());
    }

    boolean byHand() {
        return works().stream().anyMatch(work -> work.time().by() == SewnBy.HAND);
    }

    /** Whether the event has a fire that the wearer comes near. */
    boolean atAFire() {
        return errand.event().event().spells().stream()
                .anyMatch(spell -> spell.fireInUse().isPresent());
    }

    /** Whether part of the cloth melts under an iron, or must be presumed to. */
    boolean melts() {
        return cloth.blend().meltablePercent() > 0;
    }

    /** Waxed and coated cloth: neither washed nor ironed. */
    boolean isClosed() {
        return cloth.finish().closesPores();
    }
}
