package campcloth.fire;

import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import java.util.ArrayList;
import java.util.List;

/** The sentences about fire that hold for every cloth, in one place: every answer that speaks of fire carries those that apply. */
public final class FireCautions {

    public static final String RULES_WIN =
            "The rules of the event organiser, the venue and local law win over this advice and can only be stricter. Ask the"
                    + " fire marshal before you go near the fire.";

    public static final String FIRE_BAN = "A fire ban, or a no from the fire marshal, ends the question.";

    public static final String NO_TEST =
            "This is general information from fibre data, not a flammability test and not a finding of law. Any clothing can"
                    + " burn.";

    /** Practice of youth organisations and fire services; common practice. */
    public static final String AT_THE_FIRE =
            "Keep water or a fire blanket at hand and a second person at the fire. Tie back hair, roll or tie sleeves, tie up"
                    + " hems. No synthetic wigs, veils or capes at the fire. Step back before you adjust clothing.";

    /** That melted fibre sticks and burns on: common practice of fire services and burns centres. */
    public static final String MELTING =
            "Polyester, nylon, acrylic, polypropylene and elastane melt: what melts sticks to skin and burns on. A blend with"
                    + " wool or cotton still melts.";

    /** That flame can run over raised fibre: what 16 CFR 1610 tests raised cloth for. On what hangs loose: common practice. */
    public static final String RAISED_AND_LOOSE =
            "Fleece, fake fur and brushed cotton can flash: flame runs over their face (United States rule 16 CFR 1610 tests"
                    + " cloth for that). Wide sleeves, cloaks and hems reach the flame before the hand does (common practice).";

    /** Dried creams shortened the time to ignition of cotton from 71.5 to 14.4 s (De Montfort University study of emollients). */
    public static final String FUEL_ON_CLOTH =
            "Creams, oil, grease, hair spray, wax and lamp fuel on cloth make it burn faster. Change such clothing before you"
                    + " go near flame.";

    /** Labels leave out thread and trims; common practice. */
    public static final String THREAD_AND_TRIMS =
            "Sewing thread, elastic, buttons, interlining and trims can melt where the cloth itself does not. Sew what comes"
                    + " to the flame with cotton or linen thread.";

    /**
     * Stop, drop, cover and roll, 20 minutes, up to 3 hours: ANZCOR guideline 9.1.3. Water or a blanket, warmth, jewellery, what is
     * stuck, loose film: British Burn Association (2015), an Australian centre for children's burns, North Bristol NHS Trust, which
     * agree. On the minutes they do not: 20 (ANZCOR, British Burn Association, the burns centre), 10 to 30 (the NHS trust), at least
     * 10 (a fire service), 5 to 20 (American Heart Association, as quoted); the longer is told, for it does no harm to a warm person.
     */
    public static final String FIRST_AID =
            "If clothes catch fire: stop, drop, cover and roll, or smother the flames with a blanket or water. Cool the burn"
                    + " with cool running water for at least 20 minutes, as soon as possible; it still helps up to 3 hours later."
                    + " Keep the rest of the body warm. Take off jewellery and loose clothing near the burn, but never pull off"
                    + " anything melted or stuck. No ice, no creams. Cover loosely with clean film or a clean cloth. (After ANZCOR"
                    + " guideline 9.1.3 and burns services; some bodies name fewer minutes. Follow your local first-aid"
                    + " authority.)";

    /** ANZCOR (ambulance); every child, 3 cm, face, hands, groin, white: the burns centre; feet, deep: a fire service. */
    public static final String MEDICAL_HELP =
            "Call the emergency number for a large or deep burn. Every burn of a child needs medical help, and every burn that"
                    + " is wider than 3 cm, white or charred, or on the face, hands, feet or groin. In doubt, call.";

    /** Regulation (EU) No 1007/2011 lets labels leave out trims and small shares; the 3 % is from memory. */
    public static final String LABEL_TOLERANCE =
            "So small a share is near what a label may be wrong by: labels may miss by about 3 % and leave out thread and"
                    + " trims. It still counts.";

    public static final String OUTSIDE =
            "Fire performance, stage pyrotechnics, children's costumes and protective clothing are outside what we advise on:"
                    + " ask those trained or licensed for them.";

    /** What is told where no verdict is given. */
    public static final List<String> WITHOUT_A_VERDICT =
            List.of(RULES_WIN, FIRE_BAN, "Any clothing can burn.", AT_THE_FIRE, FIRST_AID, MEDICAL_HELP);

    private FireCautions() {}

    /**
     * The sentences for an exposure, in the order to show them; all of them wherever a fire reaches the wearer, for a spark is
     * enough.
     *
     * @param rules the rules on file; an authority without one is named, for no rule on file is no permission
     */
    public static List<String> forReach(ExposureClass reach, List<SafetyRule> rules) {
        List<String> cautions = new ArrayList<>(List.of(RULES_WIN));
        MissingRules.sentence(rules).ifPresent(cautions::add);
        cautions.addAll(List.of(FIRE_BAN, NO_TEST));
        if (reach != ExposureClass.NONE) {
            cautions.addAll(List.of(AT_THE_FIRE, THREAD_AND_TRIMS, FUEL_ON_CLOTH, FIRST_AID, MEDICAL_HELP));
        }
        cautions.add(OUTSIDE);
        return List.copyOf(cautions);
    }

    static String words(Authority authority) {
        return switch (authority) {
            case EVENT -> "event";
            case VENUE -> "venue";
            case LOCAL_LAW -> "local law";
        };
    }
}
