package campcloth.errand;

import campcloth.plan.CuttingPlan;
import campcloth.plan.GarmentWork;
import campcloth.plan.Making;
import java.util.Optional;

/** Plans as they were kept before they told as much. */
final class Old {

    private Old() {}

    static CuttingPlan plan(CuttingPlan plan) {
        Making making = plan.making().orElseThrow();
        return with(
                plan,
                Optional.of(new Making(
                        making.garments().stream().map(Old::work).toList(),
                        making.smallPieces(),
                        making.lengthsAtHand(),
                        making.matched(),
                        making.rule())));
    }

    static CuttingPlan planWithoutMaking(CuttingPlan plan) {
        return with(plan, Optional.empty());
    }

    private static GarmentWork work(GarmentWork work) {
        return new GarmentWork(
                work.garment(),
                work.design(),
                work.count(),
                work.steps(),
                work.notions(),
                work.fitting(),
                work.threadM(),
                work.time(),
                Optional.empty(),
                Optional.empty());
    }

    private static CuttingPlan with(CuttingPlan plan, Optional<Making> making) {
        return new CuttingPlan(
                plan.buyLengthCm(),
                plan.buyLengthHighCm(),
                plan.netLengthCm(),
                plan.lowerBoundCm(),
                plan.usableWidthCm(),
                plan.usedPercent(),
                plan.ruleOfThumbCm(),
                plan.ruleOfThumb(),
                plan.lay(),
                plan.openLengthCm(),
                plan.foldedLengthCm(),
                plan.twoFoldsLengthCm(),
                plan.remnant(),
                plan.placements(),
                plan.seams(),
                plan.hems(),
                plan.seamAllowanceCm(),
                plan.needleNm(),
                plan.stitchLengthMm(),
                plan.threadM(),
                plan.cost(),
                making,
                plan.notes(),
                plan.cautions(),
                making.isPresent() ? plan.cloth() : Optional.empty());
    }
}
