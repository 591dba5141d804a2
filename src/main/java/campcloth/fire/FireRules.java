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
import java.util.stream.Collectors;

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

    Fibres fibres() {
        return fibres;
    }

    /**
     * What a rule says of a cloth.
     *
     * @param fires the fires of the event that the wearer has a place at
     */
    public RuleOutcome check(SafetyRule rule, WornCloth cloth, List<OpenFire> fires) {
        Finding strictest = strictest(findings(rule, cloth));
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

    /** The strictest outcome, with all that is said for it. */
    private static Finding strictest(List<Finding> findings) {
        Outcome outcome = findings.stream()
                .map(Finding::outcome)
                .max(Comparator.naturalOrder())
                .orElse(Outcome.ASK);
        String because = findings.stream()
                .filter(finding -> finding.outcome == outcome)
                .map(Finding::because)
                .collect(Collectors.joining(" "));
        return new Finding(
                outcome,
                findings.isEmpty() ? "Nothing in this rule can be checked on a cloth: ask whose rule it is." : because);
    }

    private List<Finding> findings(SafetyRule rule, WornCloth cloth) {
        List<Finding> findings = new ArrayList<>();
        rule.maxMeltablePercent().ifPresent(most -> findings.add(meltable(most, cloth)));
        if (!rule.forbiddenFibres().isEmpty()) {
            findings.addAll(forbidden(rule.forbiddenFibres().stream().sorted().toList(), cloth));
        }
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

    /** What is found; that none of them is in it only where nothing is. */
    private List<Finding> forbidden(List<String> written, WornCloth cloth) {
        List<Finding> findings = new ArrayList<>();
        for (String name : written) {
            double percent = cloth.blend().percentOf(key(name));
            if (percent > 0) {
                findings.add(new Finding(
                        Outcome.FORBIDDEN,
                        Words.number(percent) + " % of it is " + key(name) + ", which is forbidden."));
            } else if (fibres.named(key(name)).isEmpty()) {
                findings.add(
                        new Finding(Outcome.ASK, "'" + name + "' is not a fibre name known here: ask what it means."));
            }
        }
        String any = FibreWords.joined(written.stream().map(FireRules::key).toList(), "or");
        double unnamed = cloth.blend().percentOf(FibreFamily.UNNAMED);
        if (unnamed > 0) {
            findings.add(new Finding(
                    Outcome.FORBIDDEN,
                    Words.number(unnamed) + " % of it is not named and may be " + any + ", which is forbidden."));
        }
        if (cloth.finish() == Finish.COATED) {
            findings.add(new Finding(
                    Outcome.ASK, "What its coating is made of is not known: ask whether it counts as " + any + "."));
        }
        return findings.isEmpty()
                ? List.of(new Finding(
                        Outcome.PASSED,
                        written.size() == 1
                                ? "It has no " + any + " in it."
                                : "None of the forbidden fibres is in it."))
                : findings;
    }

    private static String key(String written) {
        return written.strip().toLowerCase(Locale.ROOT);
    }

    private static Finding weight(double leastGsm, WornCloth cloth) {
        double given = cloth.weight().givenGsm();
        double low = cloth.weight().lowGsm();
        String asked = " At least " + Words.number(leastGsm) + " g/m2 is asked for.";
        if (given < leastGsm) {
            return new Finding(Outcome.FORBIDDEN, "It is given as " + Words.number(given) + " g/m2." + asked);
        }
        if (low < leastGsm) {
            return new Finding(
                    Outcome.ASK,
                    "It is given as " + Words.number(given) + " g/m2; a piece may weigh " + Words.number(low)
                            + ": weigh it." + asked);
        }
        return new Finding(Outcome.PASSED, "It weighs " + Words.number(low) + " g/m2 or more." + asked);
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
