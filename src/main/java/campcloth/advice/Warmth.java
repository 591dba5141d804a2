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
import java.util.function.ToDoubleFunction;

/**
 * Warm enough? The insulation that wind and walking leave of the clothing, less the insulation with which the wearer would feel
 * neutral, in clo: the mean over the spells, weighted by their hours. More than 0.3 clo to spare in one spell does not make up
 * for another.
 */
final class Warmth implements Criterion {

    private static final double SPARE_THAT_COUNTS_CLO = 0.3;

    /** Project choice: neutral is 95; a clo short of it is felt as cold within the hour at rest. */
    private static final Curve CURVE = Curve.through(-3, 0, -1.5, 25, -0.7, 55, -0.3, 80, 0, 95, 0.3, 100);

    /** Wind at the body from which the reason speaks of it, m/s: project choice. */
    private static final double FELT_WIND_MS = 0.7;

    private record Known(SpellComfort spell, Value marginClo) {}

    @Override
    public String name() {
        return "warmth";
    }

    @Override
    public double share() {
        return 0.2;
    }

    @Override
    public Assessment assess(Facts facts) {
        List<Known> known = new ArrayList<>();
        for (SpellComfort spell : facts.spells()) {
            spell.warmth().marginClo().inRange().ifPresent(margin -> known.add(new Known(spell, margin)));
        }
        Basis basis = facts.basis(Property.THICKNESS_MM, Property.AIR_PERMEABILITY_MM_S);
        if (known.isEmpty()) {
            return notComputed(facts.spells(), basis);
        }
        Known worst = known.stream()
                .min(Comparator.comparingDouble(k -> k.marginClo().value()))
                .orElseThrow();
        return Assessment.of(
                name(),
                CURVE,
                new Quantity(mean(known, Value::value), mean(known, Value::low), mean(known, Value::high)),
                "clo to spare",
                because(facts, worst, known.size()),
                basis);
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

    private static String because(Facts facts, Known worst, int known) {
        Spell spell = worst.spell().needs().spell();
        double given = value(worst.spell().warmth().resultantClo());
        double needed = value(worst.spell().needs().neededClo());
        String reason =
                "Coldest in \"" + spell.name() + "\" (" + number(spell.airC()) + " degrees): the clothing gives "
                        + fixed(given, 2) + " clo, " + fixed(needed, 2) + " clo would feel neutral";
        reason += worst.marginClo().value() < 0
                ? ", so " + fixed(-worst.marginClo().value(), 2) + " clo are missing."
                : ".";
        reason += wind(facts, worst.spell(), given);
        return known < facts.spells().size()
                ? reason + " Not all spells lie within the models; those are left out."
                : reason;
    }

    private static String wind(Facts facts, SpellComfort spell, double givenClo) {
        double windMs = spell.needs().surroundings().windMs();
        double still = facts.ensemble().basicClo();
        if (windMs < FELT_WIND_MS || still <= givenClo) {
            return "";
        }
        double permeability = facts.value(Property.AIR_PERMEABILITY_MM_S);
        String tightness = permeability < 50
                ? "it is nearly windtight"
                : permeability < 200 ? "it lets some wind through" : "the wind goes through it";
        return " Wind of " + number(spell.needs().spell().windMs()) + " m/s (" + fixed(windMs, 1)
                + " m/s at the body) and movement leave that of " + fixed(still, 2) + " clo in still air; at "
                + number(permeability) + " mm/s " + tightness + ".";
    }

    private static double value(Reading reading) {
        return reading.inRange().map(Value::value).orElse(0.0);
    }

    private Assessment notComputed(List<SpellComfort> spells, Basis basis) {
        String why = spells.stream()
                .flatMap(s -> s.warmth().marginClo().outOfRange().stream())
                .map(o -> o.model() + ": " + o.because())
                .distinct()
                .findFirst()
                .orElse("");
        return Assessment.neutral(
                name(), "clo to spare", "Not computed: no spell lies within the models. " + why, basis);
    }
}
