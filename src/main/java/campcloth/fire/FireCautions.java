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

    /** Dried creams shortened the time to ignition of cotton from 71.5 to 14.4 s (De Montfort University study of emollients). */
    public static final String FUEL_ON_CLOTH =
            "Creams, oil, grease, hair spray, wax and lamp fuel on cloth make it burn faster. Change such clothing before you"
                    + " go near flame.";

    /** Labels leave out thread and trims; common practice. */
    public static final String THREAD_AND_TRIMS =
            "Sewing thread, elastic, buttons, interlining and trims can melt where the cloth itself does not. Sew what comes"
                    + " to the flame with cotton or linen thread.";

    /** After ANZCOR guideline 9.1.3, First Aid for Burns; stuck cloth after an Australian children's burns centre. */
    public static final String FIRST_AID =
            "If clothes catch fire: stop, drop, cover and roll, or smother the flames with a blanket or water. Cool"
                    + " the burn with cool running water for at least 20 minutes, as soon as possible. Take off jewellery and"
                    + " loose clothing, but never pull off anything melted or stuck. Cover with a clean cloth or film. Call the"
                    + " emergency number. (After ANZCOR guideline 9.1.3; follow your local first-aid authority.)";

    /** Regulation (EU) No 1007/2011 lets labels leave out trims and small shares; the 3 % is from memory. */
    public static final String LABEL_TOLERANCE =
            "So small a share is near what a label may be wrong by: labels may miss by about 3 % and leave out thread and"
                    + " trims. It still counts.";

    public static final String OUTSIDE =
            "Fire performance, stage pyrotechnics and children's wear are outside what we advise on: licensed practice only.";

    private FireCautions() {}

    /**
     * The sentences for an exposure, in the order to show them.
     *
     * @param rules the rules on file; an authority without one is named, for no rule on file is no permission
     */
    public static List<String> forReach(ExposureClass reach, List<SafetyRule> rules) {
        List<String> cautions = new ArrayList<>(List.of(RULES_WIN));
        MissingRules.sentence(rules).ifPresent(cautions::add);
        cautions.addAll(List.of(FIRE_BAN, NO_TEST));
        if (reach != ExposureClass.NONE) {
            cautions.add(AT_THE_FIRE);
        }
        if (reach.atLeast(ExposureClass.CONTACT)) {
            cautions.add(THREAD_AND_TRIMS);
        }
        if (reach.atLeast(ExposureClass.RADIANT)) {
            cautions.add(FUEL_ON_CLOTH);
            cautions.add(FIRST_AID);
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
