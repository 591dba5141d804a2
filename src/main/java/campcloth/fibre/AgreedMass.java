package campcloth.fibre;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import java.util.List;

/**
 * From the dry composition that a laboratory finds to the percentages that stand on a label: Regulation (EU) No 1007/2011,
 * Article 19(3) and Annex VIII. Each dry share P is raised by its agreed allowance a and by the loss b that the fibre suffered
 * in pre-treatment, both percent of dry mass, and the sum is brought back to 100:
 *
 * <pre>P (1 + (a + b)/100) / sum of all P (1 + (a + b)/100) x 100</pre>
 *
 * Dry shares need not sum to exactly 100 (laboratories round), but some mass must be there. Not a law of moisture: the
 * allowances are a convention, the moisture of real cloth is the regain.
 */
public final class AgreedMass {

    private AgreedMass() {}

    /**
     * One fibre of a dry composition.
     *
     * @param dryPercent share of the dry, purified mass, percent
     * @param allowancePercent agreed allowance, percent of dry mass
     * @param lossPercent loss in pre-treatment, percent of dry mass; 0 where there is none
     */
    public record Component(double dryPercent, double allowancePercent, double lossPercent) {

        private static final Range DRY = new Range("dryPercent", 0, 100, "%");
        private static final Range ALLOWANCE = new Range("allowancePercent", 0, 30, "%");
        private static final Range LOSS = new Range("lossPercent", 0, 50, "%");

        public Component {
            DRY.check(dryPercent);
            ALLOWANCE.check(allowancePercent);
            LOSS.check(lossPercent);
        }

        private double agreedMass() {
            return dryPercent * (1 + (allowancePercent + lossPercent) / 100);
        }
    }

    /** The percentages with agreed allowances, in the order of the components; they sum to 100. */
    public static List<Double> percents(List<Component> components) {
        double sum = components.stream().mapToDouble(Component::agreedMass).sum();
        if (!(sum > 0)) {
            throw Refused.of("components", "hold no mass", "give at least one dry share above 0");
        }
        return components.stream().map(c -> c.agreedMass() / sum * 100).toList();
    }
}
