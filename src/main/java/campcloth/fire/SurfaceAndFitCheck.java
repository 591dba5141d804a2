package campcloth.fire;

import campcloth.cloth.Fit;
import campcloth.event.RuleConditions;
import java.util.ArrayList;
import java.util.List;

/** Plain surface and close fit. A garment told as close passes; what its sleeves do shows on the wearer. */
final class SurfaceAndFitCheck implements ClothCheck {

    @Override
    public List<Finding> findings(RuleConditions asked, WornCloth cloth) {
        List<Finding> findings = new ArrayList<>();
        if (asked.plainSurfaceOnly()) {
            findings.add(
                    cloth.isRaised()
                            ? Finding.forbidden("Its surface is raised; only plain surfaces are allowed.")
                            : Finding.passed("Its surface is plain."));
        }
        if (asked.closeFitOnly()) {
            findings.add(
                    cloth.fit() == Fit.LOOSE
                            ? Finding.forbidden("The garment hangs loose; only close-fitting clothing is allowed.")
                            : Finding.passed(
                                    "The garment fits closely as told; look at sleeves and hems on the wearer."));
        }
        return findings;
    }
}
