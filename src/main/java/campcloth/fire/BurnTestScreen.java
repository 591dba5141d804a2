package campcloth.fire;

import campcloth.fibre.Blend;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Words;
import java.util.Set;

/**
 * Whether cloth sold for clothing in the United States needs a burning test by 16 CFR 1610.1(d): for information only, it grades
 * nothing here. Exempt are plain surfaces of 2.6 oz/yd2 (88.2 g/m2) or more whatever the fibre, and any surface of any mass made
 * wholly of acrylic, modacrylic, nylon, olefin, polyester, wool or several of these. The test measures how fast flame spreads over
 * a strip at 45 degrees, not what melts.
 *
 * <p>Nylon is read as polyamide, olefin as polypropylene and polyethylene; of the animal fibres only wool itself counts, since the
 * part names no other. Film, wax and a raised face of milled wool count as what they are: cloth with a film is not made wholly of
 * its fibres.
 *
 * @param outcome what the screen comes to
 * @param because why
 */
public record BurnTestScreen(Outcome outcome, String because) {

    /** 2.6 oz/yd2 as it is quoted in g/m2; a hair more than the ounces come to. */
    private static final double LEAST_GSM = 88.2;

    /** Said with every outcome. */
    public static final String INFORMATION =
            "Information about a rule for cloth sold for clothing in the United States (16 CFR 1610), no finding about this"
                    + " garment. Exempt from that test does not mean harmless at a campfire: it measures how fast flame spreads at"
                    + " 45 degrees, not melting; polyester is exempt and melts, and thin cotton that is exempt burns fast when it"
                    + " hangs.";

    /** Id of the source in the catalogue. */
    public static final String SOURCE = "cfr-16-1610-1-d";

    private static final Set<String> EXEMPT_FIBRES =
            Set.of("acrylic", "modacrylic", "polyamide", "polypropylene", "polyethylene", "polyester", "wool");

    private static final double ROUNDING_PERCENT = 1e-9;

    /** What the screen comes to. */
    public enum Outcome {
        EXEMPT_BY_FIBRE,
        EXEMPT_BY_WEIGHT,
        TEST_NEEDED,
        /** What is known of the cloth does not tell. */
        NOT_KNOWN
    }

    public static BurnTestScreen of(WornCloth cloth) {
        boolean raised = cloth.isRaised();
        ClothWeight weight = cloth.weight();
        boolean heavy = weight.lowGsm() >= LEAST_GSM;
        if (!cloth.hasFilm() && exemptPercent(cloth.blend()) >= 100 - ROUNDING_PERCENT) {
            return new BurnTestScreen(
                    Outcome.EXEMPT_BY_FIBRE,
                    "It is made wholly of " + FibreWords.named(cloth.blend(), family -> true)
                            + ": exempt at any mass, plain or raised.");
        }
        if (!raised && heavy) {
            return new BurnTestScreen(
                    Outcome.EXEMPT_BY_WEIGHT,
                    "Its face is plain and it weighs " + grams(weight.lowGsm())
                            + " or more: exempt from 2.6 oz/yd2 (88.2 g/m2) on, whatever the fibre.");
        }
        if (!raised && weight.givenGsm() >= LEAST_GSM) {
            return new BurnTestScreen(
                    Outcome.NOT_KNOWN,
                    "Its face is plain; it is given as " + grams(weight.givenGsm()) + ", but a piece may weigh "
                            + grams(weight.lowGsm()) + ", under 88.2 g/m2: weigh it.");
        }
        if (mayBeExempt(cloth)) {
            return new BurnTestScreen(
                    Outcome.NOT_KNOWN,
                    "What is not named of its fibre decides: it may or may not be one of those that are exempt.");
        }
        String fibres = cloth.hasFilm()
                ? "it has a film or wax on it"
                : "it is not made wholly of acrylic, modacrylic, nylon, olefin, polyester or wool";
        return new BurnTestScreen(
                Outcome.TEST_NEEDED,
                (raised ? "Its face is raised" : "It is lighter than 88.2 g/m2") + " and " + fibres
                        + ": cloth sold for clothing is tested then.");
    }

    /** Whether all that is named is exempt and the rest is not named. */
    private static boolean mayBeExempt(WornCloth cloth) {
        double unnamed = cloth.blend().percentOf(FibreFamily.UNNAMED);
        return !cloth.hasFilm() && unnamed > 0 && exemptPercent(cloth.blend()) + unnamed >= 100 - ROUNDING_PERCENT;
    }

    private static double exemptPercent(Blend blend) {
        return EXEMPT_FIBRES.stream().mapToDouble(blend::percentOf).sum();
    }

    private static String grams(double gsm) {
        return Words.number(gsm) + " g/m2";
    }
}
