package campcloth.advice;

import static campcloth.figure.Words.fixed;

import campcloth.cloth.Property;
import campcloth.fire.FireGrade;
import campcloth.fire.FireReason;
import campcloth.fire.SpellHazard;
import java.util.Optional;
import java.util.stream.Collectors;

/** How far from burning? 100 less the hazard at the worst fire of the event. The verdict is not made here but by the gate. */
final class Fire implements Criterion {

    private static final String UNIT = "hazard of 100";
    private static final int REASONS = 3;

    @Override
    public String name() {
        return "fire";
    }

    @Override
    public double weight(Demands demands) {
        return demands.atFire() ? 0.2 : 0.04;
    }

    @Override
    public Assessment assess(Facts facts) {
        double hazard = facts.fire().hazard();
        double score = score(hazard);
        return new Assessment(
                name(),
                score,
                score,
                score,
                Optional.of(new Quantity(hazard, hazard, hazard)),
                UNIT,
                facts.fire()
                        .worst()
                        .map(worst -> facts.fire()
                                        .worstPart()
                                        .map(part -> "The worst of it is the "
                                                + part.part().name() + ". ")
                                        .orElse("")
                                + because(worst))
                        .orElse("No open fire was named. Near any fire, ask again with it."),
                facts.basis(Property.WEIGHT_GSM));
    }

    @Override
    public double score(Facts facts) {
        return score(facts.fire().hazard());
    }

    /** The score alone. */
    static double score(double hazard) {
        return 100 - hazard;
    }

    private static String because(SpellHazard worst) {
        return "At the fire in \"" + worst.spell() + "\": "
                + worst.hazard().grade().words() + ", hazard "
                + fixed(worst.hazard().hazard(), 0) + " of 100. "
                + worst.hazard().reasons().stream()
                        .limit(REASONS)
                        .map(FireReason::sentence)
                        .collect(Collectors.joining(" "))
                + keepBack(worst);
    }

    /** The distance to keep, where the wearer can keep one; nothing where it might be taken for leave to wear a cloth at all. */
    private static String keepBack(SpellHazard worst) {
        boolean wearable = worst.hazard().grade().compareTo(FireGrade.HIGH) < 0;
        return wearable && worst.exposure().canKeepAway()
                ? " Distance to keep: " + fixed(worst.hazard().standBack().roundedUpM(), 1)
                        + " m from the fire's centre or more (an estimate)."
                : "";
    }
}
