package campcloth.plan;

import campcloth.cloth.Finish;
import java.util.Set;

/**
 * How to wash cloth before it is cut. Common practice, no source: as hot as the garment will ever be washed; twice where
 * shrinkage comes in steps (about two thirds to three quarters in the first wash: linen and viscose); never hot or in motion
 * where it felts. Steaming alone takes out less than washing does.
 */
final class WashingAdvice {

    private static final Set<String> IN_STEPS = Set.of("flax", "hemp", "ramie", "jute", "viscose", "cupro");
    private static final Set<String> FELTING =
            Set.of("wool", "alpaca", "llama", "camel", "cashmere", "mohair", "angora", "yak");
    private static final Set<String> HEAT_SET =
            Set.of("polyester", "polyamide", "acrylic", "modacrylic", "polypropylene", "polyethylene", "elastane");

    private WashingAdvice() {}

    static String sentence(ClothToCut cloth) {
        if (cloth.finish().filter(Finish::closesPores).isPresent()) {
            return "Do not wash coated or waxed cloth: wipe it; follow its maker.";
        }
        String how = cloth.mainFibre().map(WashingAdvice::byFibre).orElse(USUAL);
        return (cloth.prewash() ? "Before cutting: " : "Better washed before cutting: ") + how
                + " Neaten the cut ends first, so that they do not fray in the wash.";
    }

    private static final String USUAL =
            "wash and dry it once just as the garment will be washed, as hot as it ever will be, and press it.";

    private static String byFibre(String fibre) {
        if (IN_STEPS.contains(fibre)) {
            return "wash it twice as hot as the garment ever will be: the first wash takes only about two thirds to three"
                    + " quarters of the shrinkage; press it damp.";
        }
        if (FELTING.contains(fibre)) {
            return "steam it or wash it by hand, lukewarm and without rubbing, and dry it flat: in a machine it felts"
                    + " without limit; press it under a cloth with steam.";
        }
        if (fibre.equals("silk")) {
            return "wash it by hand, lukewarm, roll it in a towel and press it damp from the wrong side.";
        }
        if (HEAT_SET.contains(fibre)) {
            return "a warm wash is enough, it hardly shrinks; keep the iron cool, it melts.";
        }
        return USUAL;
    }
}
