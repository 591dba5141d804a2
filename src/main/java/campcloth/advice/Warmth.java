package campcloth.advice;

import static campcloth.figure.Words.fixed;
import static campcloth.figure.Words.number;

import campcloth.cloth.Property;
import campcloth.comfort.Reading;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort;
import campcloth.event.Spell;
import campcloth.figure.Basis;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Warm enough? The insulation that wind and walking leave of the clothing, less the insulation with which the wearer would feel
 * neutral, in clo: the mean over the spells, weighted by their hours. More than 0.3 clo to spare in one spell does not make up
 * for another. Half of the score is how much is missing or to spare, half how much of what a cloth can do there it does.
 */
final class Warmth implements Criterion {

    private static final double SPARE_THAT_COUNTS_CLO = 0.3;

    /** Project choice: neutral is 95; a clo short of it is felt as cold within the hour at rest. */
    private static final Curve CURVE = Curve.through(-4, 0, -1.5, 25, -0.7, 55, -0.3, 80, 0, 95, 0.3, 100);

    /** Wind at the body from which the reason speaks of it, m/s: project choice. */
    private static final double FELT_WIND_MS = 0.7;

    /** Less than this is no difference, clo. */
    private static final double SAME_CLO = 0.01;

    private static final String UNIT = "clo to spare";

    private record Known(SpellComfort spell, Value marginClo) {

        static List<Known> of(List<SpellComfort> spells) {
            List<Known> known = new ArrayList<>();
            for (SpellComfort spell : spells) {
                spell.warmth().marginClo().inRange().ifPresent(margin -> known.add(new Known(spell, margin)));
            }
            return known;
        }
    }

    @Override
    public String name() {
        return "warmth";
    }

    @Override
    public double weight(Demands demands) {
        return 0.08 + 0.32 * demands.cold();
    }

    @Override
    public Assessment assess(Facts facts) {
        List<Known> known = Known.of(facts.spells());
        Basis basis = facts.basis(Property.THICKNESS_MM, Property.AIR_PERMEABILITY_MM_S);
        if (known.isEmpty()) {
            return Assessment.neutral(name(), UNIT, "Not computed: " + outside(facts.spells()), basis);
        }
        return Assessment.of(
                name(),
                scoring(facts.bounds()),
                new Quantity(mean(known, Value::value), mean(known, Value::low), mean(known, Value::high)),
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
                : OptionalDouble.of(scoring(bounds).applyAsDouble(mean(known, Value::value)));
    }

    /** The same, and what stands for it where nothing was computed. */
    static double scoreOrUsual(List<SpellComfort> spells, Bounds bounds) {
        return score(spells, bounds).orElse(50);
    }

    private static DoubleUnaryOperator scoring(Bounds bounds) {
        double airy = mean(Known.of(bounds.airy()), Value::value);
        double close = mean(Known.of(bounds.close()), Value::value);
        return clo -> 0.5 * CURVE.score(clo) + 50 * Bounds.position(clo, airy, close, SAME_CLO);
    }

    /** By how much the score rises at most for a clo more. */
    static double steepness(Bounds bounds) {
        List<Known> airy = Known.of(bounds.airy());
        if (airy.isEmpty()) {
            return 0;
        }
        double width = Math.abs(mean(Known.of(bounds.close()), Value::value) - mean(airy, Value::value));
        return 0.5 * CURVE.steepest() + (width <= SAME_CLO ? 0 : 50 / width);
    }

    private static double mean(List<Known> known, ToDoubleFunction<Value> end) {
        double hours = known.stream()
                .mapToDouble(k -> k.spell().needs().spell().hours())
                .sum();
        return known.stream()
                        .mapToDouble(k -> k.spell().needs().spell().hours()
                                * Math.min(SPARE_THAT_COUNTS_CLO, end.applyAsDouble(k.marginClo())))
                        .sum()
                / hours;
    }

    private static String because(Facts facts, List<Known> known) {
        Known worst = known.stream()
                .min(Comparator.comparingDouble(k -> k.marginClo().value()))
                .orElseThrow();
        Spell spell = worst.spell().needs().spell();
        double given = value(worst.spell().warmth().resultantClo());
        double needed = value(worst.spell().needs().neededClo());
        String reason = "Most is asked for in \"" + spell.name() + "\" (" + number(spell.airC())
                + " degrees Celsius): the clothing gives " + fixed(given, 2) + " clo, " + fixed(needed, 2)
                + " clo would feel neutral";
        reason += worst.marginClo().value() < 0
                ? ", so " + fixed(-worst.marginClo().value(), 2) + " clo are missing."
                : ".";
        return reason + wet(worst.spell()) + wind(facts, worst.spell(), given) + leftOut(facts.spells());
    }

    private static String wet(SpellComfort spell) {
        return spell.warmth()
                .wet()
                .map(loss ->
                        " Being wet costs " + span(loss.lostClo(), 2) + " clo of it, already off, and drying takes "
                                + span(loss.dryingWm2(), 0) + " W/m2 (from memory of measurements).")
                .orElse("");
    }

    private static String span(Value value, int decimals) {
        return fixed(value.value(), decimals) + " (" + fixed(value.low(), decimals) + " to "
                + fixed(value.high(), decimals) + ")";
    }

    private static String leftOut(List<SpellComfort> spells) {
        String names = spells.stream()
                .filter(s -> s.warmth().marginClo().inRange().isEmpty())
                .map(s -> "\"" + s.needs().spell().name() + "\"")
                .collect(Collectors.joining(", "));
        return names.isEmpty() ? "" : " Not computed, and not in this: " + names + ".";
    }

    private static String outside(List<SpellComfort> spells) {
        return spells.stream()
                .flatMap(s -> Optional.of(s.warmth().marginClo()).stream())
                .flatMap(m -> m.outOfRange().stream())
                .map(o -> o.model() + ": " + o.because())
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private static String wind(Facts facts, SpellComfort spell, double givenClo) {
        double windMs = spell.needs().surroundings().windMs();
        double still = facts.ensembles().get(facts.spells().indexOf(spell)).basicClo();
        if (windMs < FELT_WIND_MS || still <= givenClo) {
            return "";
        }
        double permeability = facts.value(Property.AIR_PERMEABILITY_MM_S);
        String tightness = permeability < 50
                ? "it is nearly windtight"
                : permeability < 200 ? "it lets some wind through" : "the wind goes through it";
        return " Wind of " + number(spell.needs().spell().windMs()) + " m/s (" + fixed(windMs, 1)
                + " m/s at the body)" + (spell.warmth().wet().isPresent() ? ", wet" : "")
                + " and movement leave that of " + fixed(still, 2) + " clo in still air; at "
                + fixed(permeability, 0) + " mm/s " + tightness + ".";
    }

    private static double value(Reading reading) {
        return reading.inRange().map(Value::value).orElse(0.0);
    }
}
