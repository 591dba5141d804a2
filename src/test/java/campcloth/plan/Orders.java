package campcloth.plan;

import campcloth.garment.Measurements;
import campcloth.garment.Options;
import java.util.Map;
import java.util.Optional;

/** Orders as the tests of this room ask for them, named by what matters. */
final class Orders {

    static final CuttingPlanner PLANNER = new CuttingPlanner(0.05);

    private Orders() {}

    static CuttingOrder.Line tunic(double finishedChestCm) {
        return tunic(finishedChestCm, 95);
    }

    static CuttingOrder.Line tunic(double finishedChestCm, double lengthCm) {
        return new CuttingOrder.Line("tunic", 1, wearer(finishedChestCm, lengthCm), Options.USUAL);
    }

    static Measurements wearer(double finishedChestCm, double lengthCm) {
        return Measurements.of(Map.of(
                "finishedChestCm", finishedChestCm,
                "lengthCm", lengthCm,
                "sleeveLengthCm", 53.0,
                "sleeveTopWidthCm", 40.0,
                "cuffWidthCm", 30.0,
                "neckDiameterCm", 15.0));
    }

    /** Washed before cutting; selvedges of 1 cm. */
    static ClothToCut washed(double widthCm, double warpPercent, double weftPercent) {
        return ClothToCut.plain(widthCm, warpPercent, weftPercent, 200, true);
    }

    static ClothToCut withNap(ClothToCut cloth) {
        return new ClothToCut(
                cloth.name(),
                cloth.widthCm(),
                cloth.selvedgeCm(),
                cloth.shrinkWarpPercent(),
                cloth.shrinkWeftPercent(),
                cloth.weightGsm(),
                cloth.thicknessMm(),
                cloth.surface(),
                cloth.weave(),
                cloth.finish(),
                cloth.mainFibre(),
                true,
                cloth.stretch(),
                cloth.prewash(),
                cloth.price());
    }

    static ClothToCut priced(ClothToCut cloth, double perMetre) {
        return withPrice(cloth, new Money(perMetre, "EUR"));
    }

    static ClothToCut withPrice(ClothToCut cloth, Money perMetre) {
        return new ClothToCut(
                cloth.name(),
                cloth.widthCm(),
                cloth.selvedgeCm(),
                cloth.shrinkWarpPercent(),
                cloth.shrinkWeftPercent(),
                cloth.weightGsm(),
                cloth.thicknessMm(),
                cloth.surface(),
                cloth.weave(),
                cloth.finish(),
                cloth.mainFibre(),
                cloth.nap(),
                cloth.stretch(),
                cloth.prewash(),
                Optional.of(perMetre));
    }

    static CuttingOrder withRemnant(CuttingOrder order, double lengthCm) {
        return new CuttingOrder(
                order.cloth(), order.garments(), Optional.of(lengthCm), order.fold(), order.shopStepCm());
    }

    static CuttingOrder withFold(CuttingOrder order, Fold fold) {
        return new CuttingOrder(order.cloth(), order.garments(), order.remnantLengthCm(), fold, order.shopStepCm());
    }
}
