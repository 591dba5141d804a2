package campcloth.advice;

import campcloth.fire.RuleOutcome;
import java.util.List;

/**
 * A cloth as judged.
 *
 * @param candidate the cloth
 * @param verdict the gate: comes before any score
 * @param suitsDesign whether the garment can be made of it at all; what does not suit stands behind what does
 * @param score 0 to 100, the criteria by their weights at this event
 * @param scoreLow the same at the unfavourable ends of all figures
 * @param scoreHigh the same at the favourable ends
 * @param criteria what each criterion says, always all of them
 * @param warnings what to heed, most urgent first
 * @param rules what each rule says
 * @param wet what wet clothes cost, for each spell in which somebody said that they are wet
 */
public record Judged(
        Candidate candidate,
        Verdict verdict,
        boolean suitsDesign,
        double score,
        double scoreLow,
        double scoreHigh,
        List<Assessment> criteria,
        List<Warning> warnings,
        List<RuleOutcome> rules,
        List<WetSpell> wet) {

    public Judged {
        criteria = List.copyOf(criteria);
        warnings = List.copyOf(warnings);
        rules = List.copyOf(rules);
        wet = List.copyOf(wet);
    }
}
