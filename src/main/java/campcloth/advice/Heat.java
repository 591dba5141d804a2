package campcloth.advice;

import static campcloth.figure.Words.fixed;
import static campcloth.figure.Words.number;

import campcloth.cloth.Property;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort;
import campcloth.event.Spell;
import campcloth.figure.Basis;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Cool enough? The wettedness of the skin that sweating asks for after an hour of the hottest spell (two-node model), over the
 * wettedness up to which people stay comfortable. PMV is told beside it where ISO 7730 holds: in wind above 1 m/s or in the sun it mostly
 * does not, so it cannot be what cloths are ordered by.
 */
final class Heat implements Criterion {

    /** Project choice: at 1 comfort ends. */
    private static final Curve CURVE = Curve.through(0.2, 100, 0.7, 90, 1, 70, 1.5, 35, 2.2, 0);

    private static final double COLD_C = 10;

    private record Known(SpellComfort spell, Value asked) {

        double ratio() {
            return quantity().value();
        }

        Quantity quantity() {
            double ceiling = spell.heat().wettednessCeiling();
            return new Quantity(asked.value() / ceiling, asked.low() / ceiling, asked.high() / ceiling);
        }
    }

    @Override
    public String name() {
        return "heat";
    }

    @Override
    public double share() {
        return 0.2;
    }

    @Override
    public Assessment assess(Facts facts) {
        Basis basis =
                facts.basis(Property.THICKNESS_MM, Property.AIR_PERMEABILITY_MM_S, Property.VAPOUR_RESISTANCE_M2PA_W);
        Optional<Known> worst = facts.spells().stream()
                .flatMap(s -> s.heat().wettednessAsked().inRange().map(w -> new Known(s, w)).stream())
                .max(Comparator.comparingDouble(Known::ratio));
        return worst.map(known -> Assessment.of(
                        name(),
                        CURVE,
                        known.quantity(),
                        "of the comfortable skin wettedness",
                        because(facts, known),
                        basis))
                .orElseGet(() -> outside(facts.spells(), basis));
    }

    private static String because(Facts facts, Known worst) {
        Spell spell = worst.spell().needs().spell();
        double wet =
                worst.spell().heat().wettedness().inRange().map(Value::value).orElse(0.0);
        double ceiling = worst.spell().heat().wettednessCeiling();
        return "Hottest in \"" + spell.name() + "\" (" + number(spell.airC()) + " degrees, "
                + spell.activity().name().toLowerCase(java.util.Locale.ROOT) + "): " + fixed(100 * wet, 0)
                + " % of the skin is wet with sweat, up to " + fixed(100 * ceiling, 0) + " % is comfortable. "
                + (Wettest.reached(worst.spell()) ? "Sweat can cool no further there: rest, shade, fewer layers. " : "")
                + "Air gets through the cloth at " + number(facts.value(Property.AIR_PERMEABILITY_MM_S)) + " mm/s."
                + vote(worst.spell());
    }

    private static String vote(SpellComfort spell) {
        return spell.vote()
                .inRange()
                .map(v -> " PMV there is " + fixed(v.value(), 1) + " (ISO 7730).")
                .orElse("");
    }

    private Assessment outside(List<SpellComfort> spells, Basis basis) {
        boolean cold = spells.stream().allMatch(s -> s.needs().spell().airC() <= COLD_C);
        String unit = "of the comfortable skin wettedness";
        return cold
                ? Assessment.best(
                        name(), unit, "No spell is warm enough for heat to matter; the model starts at 0.", basis)
                : Assessment.neutral(
                        name(),
                        unit,
                        "Not computed: "
                                + spells.stream()
                                        .flatMap(s -> s.heat().wettedness().outOfRange().stream())
                                        .map(o -> o.model() + ": " + o.because())
                                        .findFirst()
                                        .orElse("outside the model")
                                + ".",
                        basis);
    }
}
