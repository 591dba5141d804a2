package campcloth.plan;

import campcloth.cloth.Finish;
import campcloth.garment.SewnCloth;
import java.util.Set;

/**
 * How to wash cloth before it is cut. Common practice, no source: as hot as the garment will ever be washed; twice where
 * shrinkage comes in steps (about two thirds to three quarters in the first wash: linen and viscose); once, to be sure, what
 * its maker has shrunk already; never hot or in motion where it felts; gently and without an iron where it has a pile; not
 * at all where it is waxed or coated. Steaming alone takes out less than washing does.
 */
final class WashingAdvice {

    private static final Set<String> IN_STEPS = Set.of("flax", "hemp", "ramie", "jute", "viscose", "cupro");
    private static final Set<String> FELTING =
            Set.of("wool", "alpaca", "llama", "camel", "cashmere", "mohair", "angora", "yak");
    private static final Set<String> HEAT_SET =
            Set.of("polyester", "polyamide", "acrylic", "modacrylic", "polypropylene", "polyethylene", "elastane");

    /**
     * A way to wash.
     *
     * @param wash the wash itself
     * @param press what to do afterwards
     */
    private record Way(String wash, String press) {}

    private static final Way USUAL =
            new Way("wash and dry it once just as the garment will be washed, as hot as it ever will be", "press it");
    private static final Way TWICE = new Way(
            "wash it twice, each time as hot as the finished garment ever will be: the first wash takes only about two"
                    + " thirds to three quarters of the shrinkage",
            "press it damp");
    private static final Way FELTS = new Way(
            "steam it or wash it by hand, lukewarm and without rubbing, and dry it flat: in a machine it felts without"
                    + " limit",
            "press it under a cloth with steam");
    private static final Way SILK =
            new Way("wash it by hand, lukewarm, and roll it in a towel", "press it damp from the wrong side");
    private static final Way HARDLY_SHRINKS =
            new Way("a warm wash is enough, it hardly shrinks", "keep the iron cool, it melts");
    private static final Way PILE = new Way(
            "wash it once, gently, as warm as its label allows and no warmer, and dry it without wringing; what may not"
                    + " be washed is only steamed",
            "");
    private static final String STEAM_THE_PILE = "steam it from the back, never press the pile";

    private WashingAdvice() {}

    static String sentence(ClothToCut cloth) {
        if (cloth.isNeverWashed()) {
            return "Do not wash waxed or coated cloth, neither before cutting nor later: wipe it, and follow its maker."
                    + " Nothing is reckoned for shrinkage; lengths and places in the layout are those of the cloth as"
                    + " bought.";
        }
        SewnCloth sewn = cloth.sewn();
        Way way = way(cloth, sewn.hasPile());
        return (cloth.prewash() ? "Before cutting: " : "Better washed before cutting: ")
                + (isShrunkByItsMaker(cloth) ? "its maker has shrunk it already, one wash to be sure: " : "")
                + way.wash() + "; " + (sewn.hasPile() ? STEAM_THE_PILE : way.press()) + "."
                + (sewn.holdsItsCutEdge() ? "" : " Neaten the cut ends first, so that they do not fray in the wash.");
    }

    private static boolean isShrunkByItsMaker(ClothToCut cloth) {
        return cloth.finish()
                .filter(f -> f == Finish.WASHED || f == Finish.PRESHRUNK)
                .isPresent();
    }

    private static Way way(ClothToCut cloth, boolean pile) {
        Way byFibre = cloth.mainFibre().map(WashingAdvice::byFibre).orElse(USUAL);
        boolean robust = byFibre.equals(USUAL) || byFibre.equals(TWICE);
        if (pile && robust) {
            return PILE;
        }
        return robust && isShrunkByItsMaker(cloth) ? USUAL : byFibre;
    }

    private static Way byFibre(String fibre) {
        if (IN_STEPS.contains(fibre)) {
            return TWICE;
        }
        if (FELTING.contains(fibre)) {
            return FELTS;
        }
        if (fibre.equals("silk")) {
            return SILK;
        }
        return HEAT_SET.contains(fibre) ? HARDLY_SHRINKS : USUAL;
    }
}
