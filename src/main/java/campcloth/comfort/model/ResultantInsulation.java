package campcloth.comfort.model;

/**
 * What clothing really insulates in wind and motion (ISO 11079:2007, read second-hand): the static insulation of clothing and
 * air times f(v, w, p) = 0.54 exp(-0.15 v - 0.22 w) p^0.075 - 0.06 ln p + 0.5, less the boundary layer that is left:
 * I_cl,r = (I_cl + 0.085 / f_cl) f - I_a,r / f_cl with f_cl = 1 + 1.197 I_cl,r. The relation is quadratic in I_cl,r and solved
 * in closed form. p is the air permeability of the outer cloth, l/(m2 s) (equal to mm/s at 100 Pa), taken to 1..1000: below 1
 * the logarithm means nothing, above 1000 nothing was measured. In still air the fitted f turns up again for very open cloth
 * (from about 420 at 0.4 m/s); there it is held at its least value, so that more open cloth is never warmer (project choice).
 */
public final class ResultantInsulation {

    /** Static insulation of the air layer, m2 K/W. */
    private static final double STILL_AIR_M2KW = 0.085;

    private static final double TIGHTEST = 1;
    private static final double MOST_OPEN = 1000;

    private ResultantInsulation() {}

    /** f(v, w, p): share of the total insulation that wind and motion leave. */
    public static double factor(Motion motion, double permeabilityMmS) {
        double stillness = motion.stillness();
        double p = Math.min(limited(permeabilityMmS), leastFactorAt(stillness));
        return 0.54 * stillness * Math.pow(p, 0.075) - 0.06 * Math.log(p) + 0.5;
    }

    /** The permeability that the formula is used with. */
    public static double limited(double permeabilityMmS) {
        return Math.max(TIGHTEST, Math.min(MOST_OPEN, permeabilityMmS));
    }

    /** I_cl,r, m2 K/W; never below 0. */
    public static double m2KW(double basicM2KW, Motion motion, double permeabilityMmS) {
        double f = factor(motion, permeabilityMmS);
        double a = basicM2KW * f;
        double b = STILL_AIR_M2KW * f - motion.boundaryM2KW();
        if (a + b <= 0) {
            return 0;
        }
        double half = 1 - 1.197 * a;
        return (Math.sqrt(half * half + 4 * 1.197 * (a + b)) - half) / (2 * 1.197);
    }

    /** Static insulation that gives the resultant one: (I_r + I_a,r / f_cl) / f - 0.085 / f_cl, m2 K/W. */
    public static double basicFor(double resultantM2KW, Motion motion, double permeabilityMmS) {
        double fcl = ColdBalance.areaFactor(resultantM2KW);
        return (resultantM2KW + motion.boundaryM2KW() / fcl) / factor(motion, permeabilityMmS) - STILL_AIR_M2KW / fcl;
    }

    /** Where df/dp = 0: p^0.075 = 0.06 / (0.54 * 0.075 exp(-0.15 v - 0.22 w)). */
    private static double leastFactorAt(double stillness) {
        return Math.pow(0.06 / (0.54 * 0.075 * stillness), 1 / 0.075);
    }
}
