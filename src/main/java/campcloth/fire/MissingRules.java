package campcloth.fire;

import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Authorities without a rule on file, and whom to ask instead. None on file is no permission. */
public final class MissingRules {

    private MissingRules() {}

    /** Those without a rule, in the order of {@link Authority}. */
    public static List<Authority> of(List<SafetyRule> rules) {
        return Arrays.stream(Authority.values())
                .filter(authority -> rules.stream().noneMatch(rule -> rule.authority() == authority))
                .toList();
    }

    /** Whom to ask for the rules of an authority. */
    public static String whomToAsk(Authority authority) {
        return switch (authority) {
            case EVENT -> "the event's organiser or fire marshal";
            case VENUE -> "whoever runs the venue or owns the land";
            case LOCAL_LAW -> "the local authority or the fire service";
        };
    }

    /** What to do about one authority without a rule. */
    public static String sentence(Authority authority) {
        return "None on file, which is no permission: ask " + whomToAsk(authority) + ".";
    }

    /** All of them in a sentence; empty where each has a rule. */
    static Optional<String> sentence(List<SafetyRule> rules) {
        List<Authority> missing = of(rules);
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of("Rules of "
                        + String.join(
                                ", ", missing.stream().map(FireCautions::words).toList())
                        + ": none on file, ask "
                        + String.join(
                                "; ",
                                missing.stream().map(MissingRules::whomToAsk).toList()) + ".");
    }
}
