package campcloth.advice;

import static campcloth.figure.Words.fixed;
import static campcloth.figure.Words.number;

import campcloth.cloth.Property;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Does moisture get out? The water-vapour resistance of the clothing as worn, wind and walking in it, m2 Pa/W: the mean over the
 * spells, weighted by their hours.
 */
final class Breathability implements Criterion {

    /** Project choice: 10 is ordinary light clothing in a breeze, 60 a raincoat. */
    private static final Curve CURVE = Curve.through(5, 100, 10, 85, 20, 55, 35, 25, 60, 0);

    @Override
    public String name() {
        return "breathability";
    }

    @Override
    public double weight(Demands demands) {
        return 0.07 + 0.15 * demands.hot();
    }

    @Override
    public Assessment assess(Facts facts) {
        double value = mean(facts.spells(), Value::value);
        return Assessment.of(
                name(),
                CURVE::score,
                new Quantity(value, mean(facts.spells(), Value::low), mean(facts.spells(), Value::high)),
                "m2 Pa/W as worn",
                because(facts, value),
                facts.basis(Property.VAPOUR_RESISTANCE_M2PA_W, Property.AIR_PERMEABILITY_MM_S));
    }

    @Override
    public double score(Facts facts) {
        return score(facts.spells());
    }

    /** The score alone. */
    static double score(List<SpellComfort> spells) {
        return CURVE.score(mean(spells, Value::value));
    }

    private static double mean(List<SpellComfort> spells, ToDoubleFunction<Value> end) {
        double hours =
                spells.stream().mapToDouble(s -> s.needs().spell().hours()).sum();
        return spells.stream()
                        .mapToDouble(s -> s.needs().spell().hours()
                                * end.applyAsDouble(s.heat().vapourResistanceM2PaW()))
                        .sum()
                / hours;
    }

    /** The words for the classes of R_et are common practice. */
    private static String because(Facts facts, double worn) {
        double ret = facts.value(Property.VAPOUR_RESISTANCE_M2PA_W);
        String grade = ret < 6 ? "very breathable" : ret < 13 ? "breathable" : ret < 20 ? "moderate" : "poor";
        return "Moisture leaves the clothing against " + fixed(worn, 1)
                + " m2 Pa/W on the mean of the spells; the cloth" + " alone has " + number(ret) + " m2 Pa/W (" + grade
                + ").";
    }
}
