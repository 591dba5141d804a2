package campcloth.fire;

import campcloth.cloth.Cloth;
import campcloth.cloth.Wear;
import campcloth.event.Event;
import campcloth.event.OpenFire;
import campcloth.event.Spell;
import campcloth.fibre.Fibres;
import campcloth.fire.FireJudgement.Gate;
import campcloth.fire.FireWarning.Code;
import campcloth.fire.FireWarning.Severity;
import campcloth.fire.RuleOutcome.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Judges a worn cloth at an event: the worst of its spells, and every rule. The strictest stands: forbidden, severe or a melt stop
 * rules it out; high, a melt warning or a rule that only a person can judge asks for caution. How long a spell lasts makes no
 * difference: a sleeve catches in a second.
 */
public final class FireAdvice {

    private final FireRules rules;

    public FireAdvice(FireRules rules) {
        this.rules = rules;
    }

    /** The fibres known. */
    Fibres fibres() {
        return rules.fibres();
    }

    /** Judges a completed cloth as a garment wears it. */
    public FireJudgement judge(Cloth completed, Wear wear, Event event) {
        return judge(WornCloth.of(completed, wear), event);
    }

    public FireJudgement judge(WornCloth cloth, Event event) {
        List<SpellHazard> spells = spells(cloth, event);
        List<OpenFire> fires =
                event.spells().stream().flatMap(s -> s.fireInUse().stream()).toList();
        List<RuleOutcome> outcomes = event.rules().stream()
                .map(r -> rules.check(r, cloth, fires, event.dates()))
                .toList();
        ExposureClass reach = spells.stream()
                .map(s -> s.hazard().reach())
                .max(Comparator.naturalOrder())
                .orElse(ExposureClass.NONE);
        return new FireJudgement(
                gate(spells, outcomes),
                spells.stream().max(Comparator.comparingDouble(s -> s.hazard().hazard())),
                spells,
                spells.stream()
                        .map(s -> s.hazard().meltWarning())
                        .max(Comparator.naturalOrder())
                        .orElse(MeltWarning.NONE),
                outcomes,
                warnings(cloth, spells, outcomes),
                FireCautions.forReach(reach, event.rules()));
    }

    /**
     * Whether the judgement comes to that gate or to a milder one. Judges by the same functions, but without the sentences, each
     * fire once, and ends with the first thing that is stricter.
     */
    public boolean reaches(WornCloth cloth, Event event, Gate target) {
        List<OpenFire> fires = event.spells().stream()
                .flatMap(s -> s.fireInUse().stream())
                .distinct()
                .toList();
        return fires.stream()
                        .map(fire -> ofHazard(FireGrading.grade(cloth, Exposure.of(fire))))
                        .allMatch(gate -> gate.compareTo(target) <= 0)
                && event.rules().stream()
                        .map(rule -> ofRule(
                                rules.check(rule, cloth, fires, event.dates()).outcome()))
                        .allMatch(gate -> gate.compareTo(target) <= 0);
    }

    private static List<SpellHazard> spells(WornCloth cloth, Event event) {
        List<SpellHazard> spells = new ArrayList<>();
        for (Spell spell : event.spells()) {
            spell.fireInUse()
                    .map(Exposure::of)
                    .ifPresent(exposure ->
                            spells.add(new SpellHazard(spell.name(), exposure, FireGrading.grade(cloth, exposure))));
        }
        return spells;
    }

    private static Gate gate(List<SpellHazard> spells, List<RuleOutcome> outcomes) {
        Gate gate = Gate.CLEAR;
        for (RuleOutcome rule : outcomes) {
            gate = stricter(gate, ofRule(rule.outcome()));
        }
        for (SpellHazard spell : spells) {
            gate = stricter(gate, ofHazard(spell.hazard()));
        }
        return gate;
    }

    private static Gate ofRule(Outcome outcome) {
        return switch (outcome) {
            case PASSED, NOT_IN_REACH -> Gate.CLEAR;
            case ASK -> Gate.CAUTION;
            case FORBIDDEN -> Gate.RULED_OUT;
        };
    }

    private static Gate ofHazard(FireHazard hazard) {
        if (hazard.grade() == FireGrade.SEVERE || hazard.meltWarning() == MeltWarning.STOP) {
            return Gate.RULED_OUT;
        }
        boolean care = hazard.grade() == FireGrade.HIGH || hazard.meltWarning() == MeltWarning.WARN;
        return care ? Gate.CAUTION : Gate.CLEAR;
    }

    static Gate stricter(Gate one, Gate other) {
        return one.compareTo(other) >= 0 ? one : other;
    }

    /** Of each kind about the fire the most urgent, then the rules; most urgent first. */
    private static List<FireWarning> warnings(WornCloth cloth, List<SpellHazard> spells, List<RuleOutcome> outcomes) {
        Map<Code, FireWarning> byCode = new LinkedHashMap<>();
        spells.stream()
                .sorted(Comparator.comparingDouble((SpellHazard s) -> s.hazard().hazard())
                        .reversed())
                .forEach(s -> FireWarnings.of(cloth, s.exposure(), s.hazard())
                        .forEach(w ->
                                byCode.merge(w.code(), w, (a, b) -> b.severity().compareTo(a.severity()) > 0 ? b : a)));
        List<FireWarning> warnings = new ArrayList<>(byCode.values());
        outcomes.forEach(outcome -> ofRule(outcome, warnings));
        warnings.sort(Comparator.comparing(FireWarning::severity).reversed());
        return warnings;
    }

    static void ofRule(RuleOutcome outcome, List<FireWarning> warnings) {
        String text = outcome.quoted() + " " + outcome.because();
        switch (outcome.outcome()) {
            case PASSED -> {}
            case NOT_IN_REACH -> warnings.add(new FireWarning(Code.RULE, Severity.NOTE, text));
            case ASK -> warnings.add(new FireWarning(Code.RULE, Severity.CAUTION, text));
            case FORBIDDEN -> warnings.add(new FireWarning(Code.RULE, Severity.STOP, text));
        }
    }
}
