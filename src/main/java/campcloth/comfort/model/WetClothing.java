package campcloth.comfort.model;

/**
 * What wet clothing still does: water takes the place of air in the cloth, so that it insulates less, and drying takes heat.
 *
 * <p>Loss of insulation: a share of the insulation as worn, from memory of manikin measurements of wet clothing; not confirmed.
 * That the loss grows with the water, whatever the fit, was measured by a manikin study of 2015 (abstract); that the kind of fibre
 * makes no difference to the heat lost through a wet cloth, only the water in it, by Crow 1996 (abstract, cotton and polyester
 * weaves and knitted underwear). So there is no difference between fibres here.
 *
 * <p>Drying: the outer surface of the clothing gives off vapour as a wet surface does, E = s 16.5 h_c f_cl (p_s(t_cl) - p_a), s
 * the share of it that is wet (project choice), h_c from the boundary layer of ISO 11079, the Lewis relation of 16.5 K/kPa. The
 * surface grows colder by it, and the wearer loses (t_sk - t_cl) / I: only that part of the heat of drying is the wearer's, the
 * air gives the rest. Told as the insulation of dry clothing with which the wearer would lose as much.
 *
 * <p>Not for water that runs down, for immersion, nor for how long it takes to dry: as though it stayed as wet. Skin as in
 * comfort, {@link ColdCriterion#NEUTRAL}.
 *
 * @param equivalentM2KW insulation of dry clothing in which the wearer would lose as much heat, m2 K/W
 * @param dryingWm2 heat that drying takes from the wearer, W/m2
 */
public record WetClothing(double equivalentM2KW, double dryingWm2) {

    private static final double LEWIS_K_KPA = 16.5;
    private static final double COLDEST_SURFACE_C = -60;

    /**
     * How wet.
     *
     * @param insulationLost share of the insulation that is lost
     * @param wetSurface share of the outer surface that is wet
     */
    public record Wetting(double insulationLost, double wetSurface) {}

    /**
     * @param dryM2KW insulation of the clothing as worn, were it dry
     * @param skinC skin temperature
     */
    static WetClothing of(double dryM2KW, Air air, Motion motion, double skinC, Wetting wetting) {
        double left = dryM2KW * (1 - wetting.insulationLost);
        Loss loss = new Loss(air, motion.boundaryM2KW(), skinC);
        double without = loss.wm2(left, 0);
        double with = loss.wm2(left, wetting.wetSurface);
        double equivalent = without <= 0 || with <= without ? left : loss.insulationLosing(with, left);
        return new WetClothing(equivalent, with - without);
    }

    /** The same with the skin as it is in comfort at a metabolic rate, W/m2. */
    public static WetClothing inComfort(double dryM2KW, Air air, Motion motion, double metabolicWm2, Wetting wetting) {
        return of(dryM2KW, air, motion, ColdCriterion.NEUTRAL.skinC(metabolicWm2), wetting);
    }

    /** Heat that a wearer loses through clothing, W/m2. */
    private record Loss(Air air, double boundaryM2KW, double skinC) {

        double wm2(double insulationM2KW, double wetSurface) {
            if (insulationM2KW <= 0) {
                return fromSurface(0, skinC, wetSurface);
            }
            double warmest = Math.max(skinC, Math.max(air.airC(), air.radiantC()));
            double surfaceC = Root.ofRising(
                    c -> fromSurface(insulationM2KW, c, wetSurface) - (skinC - c) / insulationM2KW,
                    COLDEST_SURFACE_C,
                    warmest,
                    1e-7);
            return (skinC - surfaceC) / insulationM2KW;
        }

        /** The dry insulation, at most so much, with which so much is lost. */
        double insulationLosing(double lossWm2, double mostM2KW) {
            if (wm2(0, 0) <= lossWm2) {
                return 0;
            }
            return Root.ofRising(i -> lossWm2 - wm2(i, 0), 0, mostM2KW, 1e-7);
        }

        private double fromSurface(double insulationM2KW, double surfaceC, double wetSurface) {
            double fcl = ColdBalance.areaFactor(insulationM2KW);
            double hr = ColdBalance.radiative(surfaceC, air.radiantC());
            double hc = 1 / boundaryM2KW - hr;
            double evaporation =
                    wetSurface * LEWIS_K_KPA * hc * Math.max(0, Vapour.saturationKpa(surfaceC) - air.vapourKpa());
            return fcl * (hr * (surfaceC - air.radiantC()) + hc * (surfaceC - air.airC()) + evaporation);
        }
    }
}
