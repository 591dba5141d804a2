package campcloth.fire;

import java.util.List;
import java.util.Optional;

/**
 * What fire and rules say of a cloth at an event.
 *
 * @param gate what it comes to; no merit elsewhere opens it
 * @param worst the spell with the greatest hazard; empty where no spell has a fire
 * @param spells every spell with a fire
 * @param meltWarning the strongest melt warning of all spells
 * @param rules what each rule says, in the order of the event
 * @param warnings what to tell the wearer, most urgent first
 * @param cautions the fixed sentences that apply
 * @param parts what is sewn into the garment, judged each by itself; what it comes to is in all the above
 */
public record FireJudgement(
        Gate gate,
        Optional<SpellHazard> worst,
        List<SpellHazard> spells,
        MeltWarning meltWarning,
        List<RuleOutcome> rules,
        List<FireWarning> warnings,
        List<String> cautions,
        List<PartJudgement> parts) {

    /** A cloth by itself. */
    FireJudgement(
            Gate gate,
            Optional<SpellHazard> worst,
            List<SpellHazard> spells,
            MeltWarning meltWarning,
            List<RuleOutcome> rules,
            List<FireWarning> warnings,
            List<String> cautions) {
        this(gate, worst, spells, meltWarning, rules, warnings, cautions, List.of());
    }

    public FireJudgement {
        spells = List.copyOf(spells);
        rules = List.copyOf(rules);
        warnings = List.copyOf(warnings);
        cautions = List.copyOf(cautions);
        parts = List.copyOf(parts);
    }

    /** The greatest hazard, 0 where there is no fire. */
    public double hazard() {
        return worst.map(w -> w.hazard().hazard()).orElse(0.0);
    }

    /** The part that is worse than the garment's own cloth and every other; empty where none is. */
    public Optional<PartJudgement> worstPart() {
        return parts.stream()
                .filter(part -> worst.isPresent()
                        && part.judgement().worst().equals(worst)
                        && spells.stream().allMatch(own -> own.hazard().hazard() < hazard()))
                .findFirst();
    }

    /** Whether a cloth may be advised at all. */
    public enum Gate {
        CLEAR,
        CAUTION,
        RULED_OUT
    }
}
