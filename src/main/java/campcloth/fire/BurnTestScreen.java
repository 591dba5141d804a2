package campcloth.fire;

import campcloth.cloth.Surface;
import campcloth.fibre.Blend;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Whether cloth sold for clothing in the United States would have to be burnt in the test of 16 CFR Part 1610 before its maker
 * may vouch for it. Information only: no grade, verdict or warning rests on it.
 *
 * <p>16 CFR 1610.1(d) frees from the test (1) plain cloth of 2.6 oz/yd2 or more of any fibre and (2) cloth of any weight and
 * surface that is all acrylic, modacrylic, nylon, olefin, polyester or wool, or a mixture of these (seen as quoted by others).
 * Nylon is polyamide, olefin is polypropylene and polyethylene. Only sheep's wool counts as wool here, no other hair; nor
 * do elastic variants count as polyester or olefin: where the part might mean more, the test is said to be needed (project
 * choice).
 *
 * <p>Not a test, no finding of law. The test looks at how fast flame spreads, not at melting.
 *
 * @param outcome what it comes to
 * @param because why
 */
public record BurnTestScreen(Outcome outcome, String because) {

    public static final String SOURCE =
            "16 CFR 1610.1(d), Standard for the Flammability of Clothing Textiles, as amended by 88 FR 73221 (2023)";

    public static final String INFORMATION =
            "This concerns cloth as sold for clothing in the United States and how fast flame spreads over it, not melting and"
                    + " not an open fire at a camp. Exempt is not harmless: polyester is exempt and melts onto skin. It changes"
                    + " no grade and no warning here.";

    /** 2.6 oz/yd2 as the Consumer Product Safety Commission rounds it, g/m2. */
    public static final double EXEMPT_GSM = 88.2;

    private static final Set<String> EXEMPT_FIBRES =
            Set.of("acrylic", "modacrylic", "polyamide", "polypropylene", "polyethylene", "polyester", "wool");

    /** What the part asks of a cloth. */
    public enum Outcome {
        /** Plain and heavy enough. */
        EXEMPT_BY_WEIGHT,
        /** All of the fibres named in the part. */
        EXEMPT_BY_FIBRE,
        /** Neither. */
        TEST_NEEDED,
        /** What is known of the cloth does not decide it. */
        NOT_KNOWN
    }

    /** Whether something holds, does not, or is not known. */
    private enum Finding {
        YES,
        NO,
        OPEN
    }

    /** Of a cloth as it is worn; how it is worn makes no difference. */
    public static BurnTestScreen of(WornCloth cloth) {
        return of(cloth, Optional.of(cloth.isRaised() ? Surface.RAISED : Surface.PLAIN));
    }

    /**
     * The same where it may not be known whether its face is raised.
     *
     * @param surface the face; empty where nobody said
     */
    public static BurnTestScreen of(WornCloth cloth, Optional<Surface> surface) {
        return of(
                cloth.blend(),
                cloth.hasFilm(),
                surface,
                cloth.weight().lowGsm(),
                cloth.weight().givenGsm());
    }

    /**
     * Of what is known of a cloth.
     *
     * @param hasFilm whether film or wax is on it, which is no fibre of the part
     * @param lowGsm least that it may weigh, g/m2
     * @param highGsm most that it may weigh, g/m2
     */
    public static BurnTestScreen of(
            Blend blend, boolean hasFilm, Optional<Surface> surface, double lowGsm, double highGsm) {
        Finding byFibre = byFibre(blend, hasFilm);
        if (byFibre == Finding.YES) {
            return new BurnTestScreen(
                    Outcome.EXEMPT_BY_FIBRE,
                    "All of it is " + FibreWords.named(blend, family -> true)
                            + ", which the part exempts at any weight.");
        }
        Finding byWeight = byWeight(surface, lowGsm, highGsm);
        if (byWeight == Finding.YES) {
            return new BurnTestScreen(
                    Outcome.EXEMPT_BY_WEIGHT,
                    "Its face is plain and it weighs " + Words.number(lowGsm)
                            + " g/m2 or more; the part exempts plain cloth" + " from " + limit()
                            + " on, whatever its fibre.");
        }
        if (byFibre == Finding.NO && byWeight == Finding.NO) {
            return new BurnTestScreen(
                    Outcome.TEST_NEEDED,
                    "It is " + notExempt(blend) + ", and "
                            + (surface.equals(Optional.of(Surface.RAISED))
                                    ? "its face is raised."
                                    : "it weighs less than " + limit() + "."));
        }
        return new BurnTestScreen(Outcome.NOT_KNOWN, String.join(" ", open(byFibre, byWeight, hasFilm, surface)));
    }

    private static Finding byFibre(Blend blend, boolean hasFilm) {
        boolean othersNamed = blend.shares().stream()
                .anyMatch(s -> s.fibre().family() != FibreFamily.UNNAMED
                        && !EXEMPT_FIBRES.contains(s.fibre().key()));
        if (othersNamed) {
            return Finding.NO;
        }
        return hasFilm || blend.percentOf(FibreFamily.UNNAMED) > 0 ? Finding.OPEN : Finding.YES;
    }

    private static Finding byWeight(Optional<Surface> surface, double lowGsm, double highGsm) {
        if (highGsm < EXEMPT_GSM || surface.equals(Optional.of(Surface.RAISED))) {
            return Finding.NO;
        }
        return lowGsm < EXEMPT_GSM || surface.isEmpty() ? Finding.OPEN : Finding.YES;
    }

    private static String notExempt(Blend blend) {
        return "not all of the exempt fibres (it has "
                + FibreWords.joined(
                        blend.shares().stream()
                                .map(Blend.Share::fibre)
                                .filter(f -> !EXEMPT_FIBRES.contains(f.key()))
                                .map(f -> f.family() == FibreFamily.UNNAMED ? "unnamed fibre" : f.name())
                                .distinct()
                                .toList(),
                        "and")
                + "; of hair only sheep's wool is counted)";
    }

    private static List<String> open(Finding byFibre, Finding byWeight, boolean hasFilm, Optional<Surface> surface) {
        List<String> open = new ArrayList<>();
        if (byFibre == Finding.OPEN) {
            open.add(hasFilm ? "What its film or wax counts as is not known." : "Part of its fibre is not named.");
        }
        if (byWeight == Finding.OPEN) {
            open.add(
                    surface.isEmpty()
                            ? "Nobody said whether its face is raised."
                            : "It may weigh less than " + limit() + " or not: weigh it.");
        }
        return open;
    }

    private static String limit() {
        return "2.6 oz/yd2 (" + Words.number(EXEMPT_GSM) + " g/m2)";
    }
}
