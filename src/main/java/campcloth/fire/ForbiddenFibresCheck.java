package campcloth.fire;

import campcloth.cloth.Finish;
import campcloth.event.RuleConditions;
import campcloth.fibre.FibreFamily;
import campcloth.fibre.Fibres;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;

/** Fibres that may not be in the cloth; what is not named may be one of them. */
final class ForbiddenFibresCheck implements ClothCheck {

    private final Fibres fibres;

    /** @param fibres the fibres known: a rule that names another one asks instead of passing */
    ForbiddenFibresCheck(Fibres fibres) {
        this.fibres = fibres;
    }

    @Override
    public List<Finding> findings(RuleConditions asked, WornCloth cloth) {
        if (asked.forbiddenFibres().isEmpty()) {
            return List.of();
        }
        List<String> keys = RuleFibres.keys(asked.forbiddenFibres());
        List<Finding> findings = new ArrayList<>();
        for (String key : keys) {
            double percent = cloth.blend().percentOf(key);
            if (percent > 0) {
                findings.add(Finding.forbidden(Words.number(percent) + " % of it is " + key + ", which is forbidden."));
            }
        }
        findings.addAll(RuleFibres.notKnown(asked.forbiddenFibres(), fibres));
        String any = FibreWords.joined(keys, "or");
        double unnamed = cloth.blend().percentOf(FibreFamily.UNNAMED);
        if (unnamed > 0) {
            findings.add(Finding.forbidden(
                    Words.number(unnamed) + " % of it is not named and may be " + any + ", which is forbidden."));
        }
        if (cloth.finish() == Finish.COATED) {
            findings.add(
                    Finding.ask("What its coating is made of is not known: ask whether it counts as " + any + "."));
        }
        return findings.isEmpty() ? List.of(Finding.passed(noneOf(keys))) : findings;
    }

    private static String noneOf(List<String> keys) {
        return keys.size() == 1 ? "It has no " + keys.get(0) + " in it." : "None of the forbidden fibres is in it.";
    }
}
