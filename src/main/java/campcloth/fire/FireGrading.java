package campcloth.fire;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.fire.model.HazardMatrix;
import campcloth.fire.model.Melt;
import campcloth.fire.model.PointSource;
import campcloth.fire.model.Spread;
import campcloth.fire.model.SteadyCloth;

/**
 * Grades a worn cloth in an exposure: spread and melt apart, then both with the exposure. The formulas and their sources are in
 * {@link Spread}, {@link Melt}, {@link HazardMatrix}; the exposure in {@link Exposure}.
 *
 * <p>The distance to keep is where a steady fire sends no more than 1.6 kW/m2 (about the limit for a long stay) and where steady
 * heat leaves the cloth 20 degrees below where its first part softens ({@link SteadyCloth}); never inside the ring of 1 m nor
 * the near field. An estimate: gusts, flare-ups and embers are worse.
 *
 * <p>Not a flammability test, no finding of law; nothing here says that a garment will not burn.
 */
public final class FireGrading {

    /** Flux that ordinary clothing bears for long, kW/m2: about 1.5 by a 2016 report on heat radiation contours. */
    private static final double LONG_STAY_KW_M2 = 1.6;

    /** Kept below softening: project choice. */
    private static final double MARGIN_K = 20;

    private FireGrading() {}

    public static FireHazard grade(WornCloth cloth, Exposure exposure) {
        double spread = spread(cloth, exposure.reach());
        double melt = melt(cloth);
        int reach = exposure.reach().ordinal();
        double intensity = exposure.intensity();
        return new FireHazard(
                spread,
                melt,
                HazardMatrix.hazard(reach, intensity, spread, melt),
                HazardMatrix.hazard(reach, intensity, spread, 0),
                HazardMatrix.hazard(reach, intensity, 0, melt),
                FireGrade.ofLevel(HazardMatrix.level(reach, spread, melt)),
                meltWarning(exposure.reach(), melt),
                exposure.reach(),
                cloth.meltablePercent(),
                exposure.fluxKwM2(),
                standBackM(cloth, exposure),
                FireReasons.of(cloth, exposure, melt));
    }

    private static double spread(WornCloth cloth, ExposureClass reach) {
        return Spread.of(
                cloth.fuelPercent(),
                cloth.meltablePercent(),
                cloth.weightGsm(),
                cloth.canFlash() || cloth.isOpen(),
                cloth.fit() == Fit.LOOSE,
                Treated.credit(cloth, reach));
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

    private static double standBackM(WornCloth cloth, Exposure exposure) {
        double fireKw = exposure.fireKwOrPresumed();
        double bearableKwM2 = Math.min(LONG_STAY_KW_M2, SteadyCloth.fluxKwM2(cloth.softensC() - MARGIN_K));
        double byHeat = PointSource.distanceM(PointSource.GRADING_FRACTION, fireKw, bearableKwM2);
        return Math.max(byHeat, Math.max(Exposure.RING_M, PointSource.nearFieldM(fireKw)));
    }
}
