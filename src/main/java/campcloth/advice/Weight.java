package campcloth.advice;

import static campcloth.figure.Words.fixed;
import static campcloth.figure.Words.number;

import campcloth.cloth.Property;
import campcloth.figure.Figure;
import java.util.Optional;

/**
 * Not too heavy to carry, not too thin to last: the mass of the cloth in the finished garment, kg. Thin cloth is scored by its
 * mass per area, since what tears in a season is no bargain.
 */
final class Weight implements Criterion {

    /** Project choice: half a kilogram is not noticed, three are a burden for a day. */
    private static final Curve BURDEN = Curve.through(0.5, 100, 0.8, 90, 1.4, 55, 2.2, 20, 3.5, 0);

    /** Common practice, no source: outdoor garments from about 130 g/m2; under 80 is gauze. */
    private static final Curve SUBSTANCE = Curve.through(40, 0, 80, 30, 110, 70, 140, 100);

    @Override
    public String name() {
        return "weight";
    }

    @Override
    public double weight(Demands demands) {
        return 0.1;
    }

    @Override
    public Assessment assess(Facts facts) {
        Figure gsm = facts.cloth().required(Property.WEIGHT_GSM);
        double areaM2 = facts.wear().clothAreaM2();
        double atValue = score(gsm.value(), areaM2);
        double atLow = score(gsm.low(), areaM2);
        double atHigh = score(gsm.high(), areaM2);
        return new Assessment(
                name(),
                atValue,
                Math.min(atValue, Math.min(atLow, atHigh)),
                Math.max(atValue, Math.max(atLow, atHigh)),
                Optional.of(new Quantity(kg(gsm.value(), areaM2), kg(gsm.low(), areaM2), kg(gsm.high(), areaM2))),
                "kg in the garment",
                because(gsm.value(), areaM2),
                gsm.basis());
    }

    @Override
    public double score(Facts facts) {
        return score(facts.value(Property.WEIGHT_GSM), facts.wear().clothAreaM2());
    }

    /** The score alone. */
    static double score(double gsm, double areaM2) {
        return Math.min(BURDEN.score(kg(gsm, areaM2)), SUBSTANCE.score(gsm));
    }

    private static double kg(double gsm, double areaM2) {
        return gsm * areaM2 / 1000;
    }

    private static String because(double gsm, double areaM2) {
        String sentence =
                number(gsm) + " g/m2 on " + fixed(areaM2, 1) + " m2 makes " + fixed(kg(gsm, areaM2), 2) + " kg";
        if (SUBSTANCE.score(gsm) < 100) {
            return sentence + "; so thin a cloth wears through soon outdoors.";
        }
        return sentence + (BURDEN.score(kg(gsm, areaM2)) < 60 ? "; that is felt by evening." : ".");
    }
}
