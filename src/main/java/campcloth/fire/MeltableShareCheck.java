package campcloth.fire;

import campcloth.event.RuleConditions;
import campcloth.figure.Words;
import java.util.List;

/** The greatest share that melts; what is not named, film and wax count as melting. */
final class MeltableShareCheck implements ClothCheck {

    /** Shares under this come from rounding, percent. */
    private static final double ROUNDING_PERCENT = 1e-9;

    @Override
    public List<Finding> findings(RuleConditions asked, WornCloth cloth) {
        return asked.maxMeltablePercent().map(most -> finding(most, cloth)).stream()
                .toList();
    }

    private static Finding finding(double mostPercent, WornCloth cloth) {
        String allowed = "at most " + Words.number(mostPercent) + " % is allowed.";
        String share = Words.number(cloth.meltablePercent()) + " % of it melts or may melt, " + allowed;
        if (cloth.meltablePercent() > mostPercent + ROUNDING_PERCENT) {
            return Finding.forbidden(share);
        }
        if (cloth.mostMeltablePercent() > mostPercent + ROUNDING_PERCENT) {
            return Finding.ask("Its film or wax may be heavier than presumed: up to "
                    + Words.number(cloth.mostMeltablePercent()) + " % of it may melt, " + allowed);
        }
        return Finding.passed(share);
    }
}
