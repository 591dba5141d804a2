package campcloth.fire;

import campcloth.cloth.Finish;
import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import campcloth.fibre.FibreFamily;
import campcloth.fibre.Fibres;
import campcloth.figure.Words;
import campcloth.fire.RuleOutcome.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Checks a worn cloth against rules. A rule only forbids or asks; where data are missing it never passes for that. What the
 * label leaves unnamed may be the fibre that a rule forbids, and melts; film and wax melt too.
 */
public final class FireRules {

    /** Shares under this come from rounding, percent. */
    private static final double ROUNDING_PERCENT = 1e-9;

    private final Fibres fibres;

    /** @param fibres the fibres known: a rule that names another one asks instead of passing */
    public FireRules(Fibres fibres) {
        this.fibres = fibres;
    }

    /**
     * What a rule says of a cloth.
     *
     * @param fires the fires of the event that the wearer has a place at
     */
    public RuleOutcome check(SafetyRule rule, WornCloth cloth, List<OpenFire> fires) {
        Finding strictest = findings(rule, cloth).stream()
                .max(Comparator.comparing(Finding::outcome))
                .orElse(new Finding(
                        Outcome.ASK, "Nothing in this rule can be checked on a cloth: ask whose rule it is."));
        Optional<String> outOfReach = outOfReach(rule, fires);
        if (outOfReach.isEmpty() || !rule.canBeChecked()) {
            return outcome(rule, strictest);
        }
        String inside = switch (strictest.outcome) {
            case FORBIDDEN -> " Inside that distance this cloth would be forbidden: ";
            case ASK -> " Inside that distance, ask: ";
            case PASSED, NOT_IN_REACH -> " Inside that distance: ";
        };
        return outcome(rule, new Finding(Outcome.NOT_IN_REACH, outOfReach.get() + inside + strictest.because));
    }

    /** One part of a rule, checked. */
    private record Finding(Outcome outcome, String because) {}

    private static RuleOutcome outcome(SafetyRule rule, Finding finding) {
        return new RuleOutcome(rule.authority(), finding.outcome, rule.statement(), finding.because);
    }

    private List<Finding> findings(SafetyRule rule, WornCloth cloth) {
        List<Finding> findings = new ArrayList<>();
        rule.maxMeltablePercent().ifPresent(most -> findings.add(meltable(most, cloth)));
        rule.forbiddenFibres().stream().sorted().forEach(key -> findings.add(forbidden(key, cloth)));
        rule.minWeightGsm().ifPresent(least -> findings.add(weight(least, cloth)));
        if (rule.plainSurfaceOnly()) {
            findings.add(
                    cloth.isRaised()
                            ? new Finding(Outcome.FORBIDDEN, "Its surface is raised; only plain surfaces are allowed.")
                            : new Finding(Outcome.PASSED, "Its surface is plain."));
        }
        return findings;
    }

    private static Finding meltable(double mostPercent, WornCloth cloth) {
        String share = Words.number(cloth.meltablePercent()) + " % of it melts or may melt, at most "
                + Words.number(mostPercent) + " % is allowed.";
        if (cloth.meltablePercent() > mostPercent + ROUNDING_PERCENT) {
            return new Finding(Outcome.FORBIDDEN, share);
        }
        if (cloth.mostMeltablePercent() > mostPercent + ROUNDING_PERCENT) {
            return new Finding(
                    Outcome.ASK,
                    "Its film or wax may be heavier than presumed: up to " + Words.number(cloth.mostMeltablePercent())
                            + " % of it may melt, at most " + Words.number(mostPercent) + " % is allowed.");
        }
        return new Finding(Outcome.PASSED, share);
    }

    private Finding forbidden(String written, WornCloth cloth) {
        String key = written.strip().toLowerCase(Locale.ROOT);
        double percent = cloth.blend().percentOf(key);
        if (percent > 0) {
            return new Finding(
                    Outcome.FORBIDDEN, Words.number(percent) + " % of it is " + key + ", which is forbidden.");
        }
        double unnamed = cloth.blend().percentOf(FibreFamily.UNNAMED);
        if (unnamed > 0) {
            return new Finding(
                    Outcome.FORBIDDEN,
                    Words.number(unnamed) + " % of it is not named and may be " + key + ", which is forbidden.");
        }
        if (fibres.named(key).isEmpty()) {
            return new Finding(Outcome.ASK, "'" + written + "' is not a fibre name known here: ask what it means.");
        }
        return cloth.finish() == Finish.COATED
                ? new Finding(
                        Outcome.ASK, "What its coating is made of is not known: ask whether it counts as " + key + ".")
                : new Finding(Outcome.PASSED, "It has no " + key + " in it.");
    }

    private static Finding weight(double leastGsm, WornCloth cloth) {
        String weight = "It weighs " + Words.number(cloth.weightGsm()) + " g/m2 at the low end, at least "
                + Words.number(leastGsm) + " g/m2 is asked for.";
        return new Finding(cloth.weightGsm() < leastGsm ? Outcome.FORBIDDEN : Outcome.PASSED, weight);
    }

    /** Why the rule does not reach the wearer; empty where it does or may. */
    private static Optional<String> outOfReach(SafetyRule rule, List<OpenFire> fires) {
        return rule.withinM()
                .filter(within -> fires.stream().noneMatch(fire -> reaches(fire, within)))
                .map(within -> {
                    String rulesReach = "The rule holds within " + Words.number(within) + " m of a fire. ";
                    return rulesReach
                            + (fires.isEmpty()
                                    ? "No open fire was stated."
                                    : "The wearer stays " + Words.number(nearestM(fires)) + " m away.");
                });
    }

    private static boolean reaches(OpenFire fire, double withinM) {
        return Exposure.handsAtTheFire(fire.role())
                || fire.distanceM().map(m -> m <= withinM).orElse(true);
    }

    private static double nearestM(List<OpenFire> fires) {
        return fires.stream()
                .flatMap(fire -> fire.distanceM().stream())
                .mapToDouble(Double::doubleValue)
                .min()
                .orElseThrow();
    }
}
