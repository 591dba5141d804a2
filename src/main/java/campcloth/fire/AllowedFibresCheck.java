package campcloth.fire;

import campcloth.cloth.Finish;
import campcloth.event.RuleConditions;
import campcloth.fibre.Blend;
import campcloth.fibre.FibreFamily;
import campcloth.fibre.Fibres;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;

/** The only fibres that may be in the cloth; what is not named may be another, even where a rule lists it. */
final class AllowedFibresCheck implements ClothCheck {

    private final Fibres fibres;

    /** @param fibres the fibres known: a rule that names another one asks instead of passing */
    AllowedFibresCheck(Fibres fibres) {
        this.fibres = fibres;
    }

    @Override
    public List<Finding> findings(RuleConditions asked, WornCloth cloth) {
        if (asked.allowedFibres().isEmpty()) {
            return List.of();
        }
        List<String> keys = RuleFibres.keys(asked.allowedFibres());
        String only = "only " + FibreWords.joined(keys, "and") + " may be in it.";
        List<Finding> findings = new ArrayList<>();
        for (Blend.Share share : cloth.blend().shares()) {
            boolean unnamed = share.fibre().family() == FibreFamily.UNNAMED;
            if (unnamed || !keys.contains(share.fibre().key())) {
                findings.add(Finding.forbidden(Words.number(share.percent()) + " % of it is "
                        + (unnamed
                                ? "not named and may be another fibre, "
                                : share.fibre().key() + ", ") + only));
            }
        }
        findings.addAll(RuleFibres.notKnown(asked.allowedFibres(), fibres));
        if (cloth.finish() == Finish.COATED) {
            findings.add(Finding.ask("What its coating is made of is not known: ask whether it counts, for " + only));
        }
        return findings.isEmpty() ? List.of(Finding.passed("Every fibre in it is on the list: " + only)) : findings;
    }
}
