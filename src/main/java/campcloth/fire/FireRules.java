package campcloth.fire;

import campcloth.event.EventDates;
import campcloth.event.OpenFire;
import campcloth.event.RuleConditions;
import campcloth.event.RuleReach;
import campcloth.event.SafetyRule;
import campcloth.fibre.Fibres;
import campcloth.figure.Words;
import campcloth.fire.RuleOutcome.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Checks a worn cloth against rules. A rule only forbids or asks; where data are missing it never passes for that. All that
 * stands in a rule must be kept to, so its strictest part stands. What the rule asks of the cloth ends where its distance ends;
 * what only a person can judge is asked at any distance.
 */
public final class FireRules {

    private static final Finding NOTHING_TO_CHECK =
            Finding.ask("Nothing in this rule can be checked on a cloth: ask whose rule it is.");

    private final Fibres fibres;
    private final List<ClothCheck> clothChecks;

    /** @param fibres the fibres known: a rule that names another one asks instead of passing */
    public FireRules(Fibres fibres) {
        this.fibres = fibres;
        this.clothChecks = List.of(
                new MeltableShareCheck(),
                new ForbiddenFibresCheck(fibres),
                new AllowedFibresCheck(fibres),
                new LeastWeightCheck(),
                new SurfaceAndFitCheck());
    }

    Fibres fibres() {
        return fibres;
    }

    /** What a rule says of a cloth at an event without a date. */
    public RuleOutcome check(SafetyRule rule, WornCloth cloth, List<OpenFire> fires) {
        return check(rule, cloth, fires, Optional.empty());
    }

    /**
     * What a rule says of a cloth.
     *
     * @param fires the fires of the event that the wearer has a place at
     * @param dates the days of the event
     */
    public RuleOutcome check(SafetyRule rule, WornCloth cloth, List<OpenFire> fires, Optional<EventDates> dates) {
        List<OpenFire> concerned = fires.stream()
                .filter(fire -> rule.reach().concerns(fire.role()))
                .toList();
        Finding finding = rule.reach().roles().isEmpty() || !concerned.isEmpty()
                ? concerning(rule, cloth, concerned)
                : forOthers(rule, cloth);
        Finding dated = RuleTerm.question(rule.provenance(), dates)
                .map(question -> finding.atLeast(Outcome.ASK, question))
                .orElse(finding);
        return new RuleOutcome(rule.authority(), dated.outcome(), rule.statement(), dated.because(), rule.provenance());
    }

    /** What it comes to for a wearer whom it concerns. */
    private Finding concerning(SafetyRule rule, WornCloth cloth, List<OpenFire> fires) {
        RuleConditions asked = rule.conditions();
        List<Finding> findings = new ArrayList<>();
        List<Finding> ofCloth = ofCloth(asked, cloth);
        if (!ofCloth.isEmpty()) {
            Finding strictest = Finding.strictest(ofCloth);
            findings.add(outOfReach(rule.reach(), fires)
                    .map(far -> notInReach(far, "Inside that distance", strictest))
                    .orElse(strictest));
        }
        asked.keepAtLeastM().ifPresent(leastM -> findings.add(KeepAwayCheck.finding(leastM, fires)));
        findings.addAll(PersonCheck.findings(asked));
        return findings.isEmpty() ? NOTHING_TO_CHECK : Finding.strictest(findings);
    }

    /** What it would come to for those whom it concerns. */
    private Finding forOthers(SafetyRule rule, WornCloth cloth) {
        List<Finding> findings = new ArrayList<>(ofCloth(rule.conditions(), cloth));
        rule.conditions().keepAtLeastM().ifPresent(leastM -> findings.add(KeepAwayCheck.finding(leastM, List.of())));
        findings.addAll(PersonCheck.findings(rule.conditions()));
        Finding strictest = findings.isEmpty() ? NOTHING_TO_CHECK : Finding.strictest(findings);
        String holdsFor =
                "The rule holds for " + RuleWords.roles(rule.reach().roles()) + "; nobody said that the wearer does.";
        return notInReach(holdsFor, "There", strictest);
    }

    private List<Finding> ofCloth(RuleConditions asked, WornCloth cloth) {
        return clothChecks.stream()
                .flatMap(check -> check.findings(asked, cloth).stream())
                .toList();
    }

    private static Finding notInReach(String why, String inside, Finding strictest) {
        String comesTo = switch (strictest.outcome()) {
            case FORBIDDEN -> " this cloth would be forbidden: ";
            case ASK -> ", ask: ";
            case PASSED, NOT_IN_REACH -> ": ";
        };
        return new Finding(Outcome.NOT_IN_REACH, why + " " + inside + comesTo + strictest.because());
    }

    /** Why the rule does not reach the wearer; empty where it does or may. */
    private static Optional<String> outOfReach(RuleReach reach, List<OpenFire> fires) {
        return reach.withinM()
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
