package campcloth.fire;

import campcloth.cloth.Finish;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Words;
import campcloth.fire.model.Spread;
import java.util.ArrayList;
import java.util.List;

/**
 * What some fibres, blends and films do in a flame that their shares alone do not tell. Sentences only: the grade counts each of
 * these by mass, share and surface.
 *
 * <p>Read: light blends of plant fibre and polyester, viscose faster than cotton (Needles and Walker). Second-hand: acrylic and
 * its blends with wool (comparative burning of 44 garments by a consumer organisation). From memory: acetate, elastane,
 * films of polyvinyl chloride and polyurethane. Modacrylic: see the table of fibres.
 */
final class Behaviours {

    /** A share under this is not what a cloth behaves like: project choice. */
    static final double LEAST_PERCENT = 10;

    private static final double ROUNDING_PERCENT = 1e-9;

    private Behaviours() {}

    /**
     * One thing that it does.
     *
     * @param strength how much it counts among the causes
     * @param sentence what it is
     */
    record Behaviour(double strength, String sentence) {}

    static List<Behaviour> of(WornCloth cloth) {
        List<Behaviour> said = new ArrayList<>();
        ofBlends(cloth, said);
        ofFibres(cloth, said);
        if (cloth.finish() == Finish.COATED) {
            said.add(new Behaviour(
                    1.02,
                    "Of what its film is made is not told: polyurethane melts and burns; polyvinyl chloride shrinks from about"
                            + " 65 to 100 degrees Celsius and gives off acid gas (from memory)."));
        }
        return said;
    }

    private static void ofBlends(WornCloth cloth, List<Behaviour> said) {
        if (isLightAndHoldsMelt(cloth)) {
            said.add(
                    new Behaviour(
                            2.25,
                            "Plant fibre and fibre that melts in so light a cloth, under "
                                    + Words.number(Spread.LIGHT_GSM)
                                    + " g/m2, is a blend that textile research advises against: it can burn faster than either."));
        }
        if (has(cloth, "viscose") && has(cloth, "polyester")) {
            said.add(new Behaviour(1.04, "Viscose with polyester burns faster than cotton with polyester."));
        }
        if (has(cloth, "acrylic")) {
            boolean hair = cloth.blend().percentOf(FibreFamily.PROTEIN) >= LEAST_PERCENT;
            said.add(new Behaviour(
                    1.2,
                    (hair ? "Wool or hair does not tame acrylic: such cloth" : "Acrylic")
                            + " burns strongly and lets hot drops fall at the same time (comparative burning of garments,"
                            + " second-hand)."));
        }
    }

    private static void ofFibres(WornCloth cloth, List<Behaviour> said) {
        if (has(cloth, "acetate") || has(cloth, "triacetate")) {
            said.add(new Behaviour(1.15, "Acetate does both: it burns fast and it melts (from memory)."));
        }
        if (has(cloth, "modacrylic")) {
            said.add(new Behaviour(
                    0.9,
                    "Modacrylic shrinks, chars and goes out by itself, but hot softened fibre can stick to skin."));
        }
        double elastane = cloth.blend().percentOf("elastane");
        if (elastane > 0 && elastane == cloth.blend().meltablePercent()) {
            said.add(
                    new Behaviour(
                            0.85,
                            "Elastane is the part that melts: little of it, but it holds the cloth close to the skin (from memory)."));
        }
        if (has(cloth, "chlorofibre")) {
            said.add(new Behaviour(
                    1.03,
                    "Chlorofibre shrinks from about 65 to 100 degrees Celsius and gives off acid gas in a flame (from"
                            + " memory)."));
        }
    }

    /** Whether it is one of those light blends of plant fibre and fibre that melts. */
    static boolean isLightAndHoldsMelt(WornCloth cloth) {
        return cloth.weightGsm() < Spread.LIGHT_GSM
                && cloth.blend().percentOf(FibreFamily.CELLULOSIC) >= LEAST_PERCENT
                && cloth.blend().percentOf(FibreFamily.MELTABLE) >= LEAST_PERCENT;
    }

    /** Whether all that melts in it only shrinks, softens and goes out: modacrylic and chlorofibre. */
    static boolean goesOutByItself(WornCloth cloth) {
        double melting = cloth.blend().meltablePercent();
        return melting > 0
                && !cloth.hasFilm()
                && cloth.blend().percentOf("modacrylic") + cloth.blend().percentOf("chlorofibre")
                        >= melting - ROUNDING_PERCENT;
    }

    private static boolean has(WornCloth cloth, String fibre) {
        return cloth.blend().percentOf(fibre) >= LEAST_PERCENT;
    }
}
