package campcloth.fire;

import campcloth.fire.FireJudgement.Gate;
import campcloth.fire.FireWarning.Severity;
import campcloth.fire.RuleOutcome.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What would stand better, and how it would stand then, judged anew as a whole. What other criteria say of it is not looked at.
 *
 * @param changes what to do, one or two things together
 * @param before the case as it is
 * @param from its verdict as it is
 * @param then the judgement after the changes: better, and seldom without anything left
 */
public record Better(List<Change> changes, FireCase before, Gate from, FireJudgement then) {

    public Better {
        changes = List.copyOf(changes);
    }

    /** What fire and rules would say then. */
    public Gate wouldBe() {
        return then.gate();
    }

    /** The grade at the worst fire then; empty where the event has none. */
    public Optional<FireGrade> grade() {
        return gradeOf(then);
    }

    /** The grade at the worst fire; empty where there is none. */
    public static Optional<FireGrade> gradeOf(FireJudgement judgement) {
        return judgement.worst().map(worst -> worst.hazard().grade());
    }

    /** What to do and what it would come to, in sentences. */
    public String text() {
        String todo = changes.stream().map(change -> change.todo(before)).collect(Collectors.joining(" "));
        String both = changes.size() > 1 ? "Both together: " : "";
        return both + todo + " For fire and rules it would then be \"" + words(wouldBe()) + "\" instead of \""
                + words(from) + "\"" + outcome();
    }

    private String outcome() {
        if (wouldBe() == Gate.CLEAR) {
            String steps = from == Gate.RULED_OUT ? ", two steps" : "";
            return steps + ". The cautions hold all the same.";
        }
        return ", no better, because " + String.join("; ", remaining()) + ".";
    }

    private static String words(Gate gate) {
        return switch (gate) {
            case CLEAR -> "nothing found against it";
            case CAUTION -> "with care";
            case RULED_OUT -> "ruled out";
        };
    }

    /** What still speaks against it, as clauses. */
    public List<String> remaining() {
        List<String> remaining = new ArrayList<>();
        for (RuleOutcome rule : then.rules()) {
            if (rule.outcome() == Outcome.ASK || rule.outcome() == Outcome.FORBIDDEN) {
                remaining.add("the rule of the " + FireCautions.words(rule.authority()) + " \"" + rule.statement()
                        + "\" still has to be asked about");
            }
        }
        then.worst()
                .filter(worst -> worst.hazard().grade() == FireGrade.HIGH)
                .ifPresent(worst -> remaining.add("the grade at the fire in \"" + worst.spell() + "\" is still "
                        + worst.hazard().grade().name().toLowerCase(Locale.ROOT)));
        if (then.meltWarning() == MeltWarning.WARN) {
            remaining.add("what melts in it can still be reached by heat or flame");
        }
        return remaining.isEmpty() ? warned() : remaining;
    }

    private List<String> warned() {
        return then.warnings().stream()
                .filter(warning -> warning.severity() != Severity.NOTE)
                .map(warning -> "of this: " + warning.text().replaceAll("\\.$", ""))
                .toList();
    }
}
