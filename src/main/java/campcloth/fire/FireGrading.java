package campcloth.fire;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.fire.model.HazardMatrix;
import campcloth.fire.model.Melt;
import campcloth.fire.model.Spread;

/**
 * Grades a worn cloth in an exposure: spread and melt apart, then both with the exposure. The formulas and their sources are in
 * {@link Spread}, {@link Melt}, {@link HazardMatrix}; the exposure in {@link Exposure}, the distance to keep in {@link StandBack}.
 *
 * <p>Not a flammability test, no finding of law; nothing here says that a garment will not burn.
 */
public final class FireGrading {

    private FireGrading() {}

    public static FireHazard grade(WornCloth cloth, Exposure exposure) {
        double spread = spread(cloth);
        double melt = melt(cloth);
        int reach = exposure.reach().ordinal();
        double intensity = exposure.intensity();
        return new FireHazard(
                cloth,
                exposure,
                spread,
                melt,
                HazardMatrix.hazard(reach, intensity, spread, melt),
                HazardMatrix.hazard(reach, intensity, spread, 0),
                HazardMatrix.hazard(reach, intensity, 0, melt),
                FireGrade.ofLevel(HazardMatrix.level(reach, spread, melt)),
                meltWarning(exposure.reach(), melt));
    }

    private static double spread(WornCloth cloth) {
        return Spread.of(
                cloth.fuelPercent(),
                cloth.meltablePercent(),
                cloth.weightGsm(),
                cloth.canFlash() || cloth.isOpen(),
                cloth.fit() == Fit.LOOSE);
    }

    private static double melt(WornCloth cloth) {
        return Melt.of(cloth.meltablePercent(), cloth.layer() != Layer.OUTER, cloth.layer() == Layer.SKIN);
    }

    private static MeltWarning meltWarning(ExposureClass reach, double melt) {
        int meltClass = HazardMatrix.axisClass(melt);
        if (meltClass == 0 || reach == ExposureClass.NONE) {
            return MeltWarning.NONE;
        }
        if (reach == ExposureClass.UNBEARABLE || (reach == ExposureClass.CONTACT && meltClass >= 3)) {
            return MeltWarning.STOP;
        }
        boolean reachesIt = reach == ExposureClass.CONTACT || (reach == ExposureClass.RADIANT && meltClass >= 2);
        return reachesIt ? MeltWarning.WARN : MeltWarning.NOTE;
    }
}
