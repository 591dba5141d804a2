package campcloth.fire;

import campcloth.event.SafetyRule;
import java.util.List;

/**
 * Rules that differ about the same thing. All are applied; where they differ the strictest stands.
 *
 * @param about what they differ about
 * @param rules the rules, the strictest first where one is
 * @param stands what stands
 * @param noClothMeetsAll whether no cloth keeps to all of them
 * @param text all of it in sentences, each rule quoted
 */
public record RuleConflict(String about, List<SafetyRule> rules, String stands, boolean noClothMeetsAll, String text) {

    public RuleConflict {
        rules = List.copyOf(rules);
    }

    /** @param says what a rule says of what they differ about, parallel to the rules */
    static RuleConflict of(
            String about, List<SafetyRule> rules, List<String> says, String stands, boolean noClothMeetsAll) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < rules.size(); i++) {
            text.append(says.get(i))
                    .append(": ")
                    .append(RuleWords.quoted(rules.get(i)))
                    .append(". ");
        }
        return new RuleConflict(about, rules, stands, noClothMeetsAll, text + stands);
    }
}
