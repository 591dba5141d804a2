package campcloth.advice;

import static campcloth.figure.Words.fixed;
import static campcloth.figure.Words.number;

import campcloth.cloth.Property;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort;
import campcloth.event.Spell;
import campcloth.figure.Basis;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Cool enough? The wettedness of the skin that sweating asks for after an hour of a spell (two-node model), over the wettedness
 * up to which people stay comfortable: the mean of the hottest spell and of all spells by their hours. PMV is told beside it
 * where ISO 7730 holds: in wind above 1 m/s or in the sun it mostly does not, so it cannot be what cloths are ordered by. Half
 * of the score is that quantity, half how much of what a cloth can do there it does.
 */
final class Heat implements Criterion {

    /** Project choice: at 1 comfort ends. */
    private static final Curve CURVE = Curve.through(0.2, 100, 0.7, 92, 1, 75, 1.5, 50, 2.5, 25, 6, 0);

    private static final double COLD_C = 10;

    /** Less than this is no difference, and so low a quantity is no heat at all. */
    private static final double SAME = 0.02;

    private static final double NO_HEAT = 0.6;

    private static final String UNIT = "of the comfortable skin wettedness";

    private record Known(SpellComfort spell, Value asked) {

        static List<Known> of(List<SpellComfort> spells) {
            List<Known> known = new ArrayList<>();
            for (SpellComfort spell : spells) {
                spell.heat().wettednessAsked().inRange().ifPresent(asked -> known.add(new Known(spell, asked)));
            }
            return known;
        }

        double ratio(ToDoubleFunction<Value> end) {
            return end.applyAsDouble(asked) / spell.heat().wettednessCeiling();
        }
    }

    @Override
    public String name() {
        return "heat";
    }

    @Override
    public double weight(Demands demands) {
        return 0.04 + 0.36 * demands.hot();
    }

    @Override
    public Assessment assess(Facts facts) {
        Basis basis =
                facts.basis(Property.THICKNESS_MM, Property.AIR_PERMEABILITY_MM_S, Property.VAPOUR_RESISTANCE_M2PA_W);
        List<Known> known = Known.of(facts.spells());
        if (known.isEmpty()) {
            return outside(facts.spells(), basis);
        }
        return Assessment.of(
                name(),
                scoring(facts.bounds()),
                new Quantity(quantity(known, Value::value), quantity(known, Value::low), quantity(known, Value::high)),
                UNIT,
                because(facts, known),
                basis);
    }

    @Override
    public double score(Facts facts) {
        return scoreOrUsual(facts.spells(), facts.bounds());
    }

    /** The score alone; empty where nothing was computed. */
    static OptionalDouble score(List<SpellComfort> spells, Bounds bounds) {
        List<Known> known = Known.of(spells);
        return known.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(scoring(bounds).applyAsDouble(quantity(known, Value::value)));
    }

    /** The same, and what stands for it where nothing was computed. */
    static double scoreOrUsual(List<SpellComfort> spells, Bounds bounds) {
        return score(spells, bounds).orElse(isCold(spells) ? 100 : 50);
    }

    private static boolean isCold(List<SpellComfort> spells) {
        return spells.stream().allMatch(s -> s.needs().spell().airC() <= COLD_C);
    }

    private static DoubleUnaryOperator scoring(Bounds bounds) {
        double airy = quantity(Known.of(bounds.airy()), Value::value);
        double heavy = quantity(Known.of(bounds.heavy()), Value::value);
        return ratio -> 0.5 * CURVE.score(ratio) + 50 * position(ratio, heavy, airy);
    }

    /** By how much the score rises at most where the wettedness asked for falls by so much of the comfortable one. */
    static double steepness(Bounds bounds) {
        List<Known> airy = Known.of(bounds.airy());
        if (airy.isEmpty()) {
            return 0;
        }
        double heavy = quantity(Known.of(bounds.heavy()), Value::value);
        double width = Math.abs(heavy - quantity(airy, Value::value));
        return 0.5 * CURVE.steepest() + (heavy <= NO_HEAT || width <= SAME ? 0 : 50 / width);
    }

    private static double position(double ratio, double heavy, double airy) {
        return heavy <= NO_HEAT ? 1 : Bounds.position(ratio, heavy, airy, SAME);
    }

    private static double quantity(List<Known> known, ToDoubleFunction<Value> end) {
        double hours = known.stream()
                .mapToDouble(k -> k.spell().needs().spell().hours())
                .sum();
        double mean = known.stream()
                        .mapToDouble(k -> k.spell().needs().spell().hours() * k.ratio(end))
                        .sum()
                / hours;
        double worst = known.stream().mapToDouble(k -> k.ratio(end)).max().orElseThrow();
        return (mean + worst) / 2;
    }

    private static String because(Facts facts, List<Known> known) {
        SpellComfort worst = known.stream()
                .max(Comparator.comparingDouble(k -> k.ratio(Value::value)))
                .orElseThrow()
                .spell();
        Spell spell = worst.needs().spell();
        double wet = worst.heat().wettedness().inRange().map(Value::value).orElse(0.0);
        double ceiling = worst.heat().wettednessCeiling();
        return "Hottest in \"" + spell.name() + "\" (" + number(spell.airC()) + " degrees Celsius, "
                + spell.activity().name().toLowerCase(Locale.ROOT) + "): " + fixed(100 * wet, 0)
                + " % of the skin is wet with sweat, up to " + fixed(100 * ceiling, 0) + " % is comfortable. "
                + (Sweat.dripsOff(worst) ? "Sweat can cool no further there: rest, shade, fewer layers. " : "")
                + "Air gets through the cloth at " + fixed(facts.value(Property.AIR_PERMEABILITY_MM_S), 0) + " mm/s."
                + vote(worst);
    }

    private static String vote(SpellComfort spell) {
        return spell.vote()
                .inRange()
                .map(v -> " PMV there is " + fixed(v.value(), 1) + " (ISO 7730).")
                .orElse("");
    }

    private Assessment outside(List<SpellComfort> spells, Basis basis) {
        if (isCold(spells)) {
            return Assessment.best(name(), UNIT, "No spell is warm enough for heat to matter.", basis);
        }
        String why = spells.stream()
                .flatMap(s -> s.heat().wettednessAsked().outOfRange().stream())
                .map(o -> o.model() + ": " + o.because())
                .distinct()
                .collect(Collectors.joining("; "));
        return Assessment.neutral(name(), UNIT, "Not computed: " + why, basis);
    }
}
