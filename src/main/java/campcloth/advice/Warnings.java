package campcloth.advice;

import static campcloth.figure.Words.fixed;
import static campcloth.figure.Words.number;

import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort;
import campcloth.fire.FireWarning;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What to heed about a cloth, most urgent first. */
final class Warnings {

    private static final double FULL_NIGHT_HOURS = 8;

    private Warnings() {}

    static List<Warning> of(Facts facts) {
        List<Warning> warnings = new ArrayList<>();
        for (FireWarning warning : facts.fire().warnings()) {
            warnings.add(new Warning(
                    warning.code().name(),
                    Warning.Severity.valueOf(warning.severity().name()),
                    warning.text()));
        }
        if (facts.cloth().stretch() && !facts.wear().stretchAllowed()) {
            warnings.add(new Warning(
                    "STRETCH",
                    Warning.Severity.CAUTION,
                    "It stretches; this design is drawn for cloth that does not. Choose woven cloth without stretch."));
        }
        facts.spells().stream().filter(Wettest::reached).findFirst().ifPresent(spell -> warnings.add(heat(spell)));
        facts.spells().stream()
                .filter(Warnings::coolsTooSoon)
                .min(Comparator.comparingDouble(s -> hours(s)))
                .ifPresent(spell -> warnings.add(cold(spell)));
        warnings.sort(Comparator.comparing(Warning::severity).reversed());
        return List.copyOf(warnings);
    }

    private static Warning heat(SpellComfort spell) {
        return new Warning(
                "HEAT_STRAIN",
                Warning.Severity.CAUTION,
                "In \"" + spell.needs().spell().name()
                        + "\" the body cannot get rid of its heat in this clothing. Rest in"
                        + " the shade, drink, take layers off.");
    }

    private static boolean coolsTooSoon(SpellComfort spell) {
        return hours(spell) < Math.min(FULL_NIGHT_HOURS, spell.needs().spell().hours());
    }

    private static double hours(SpellComfort spell) {
        return spell.warmth().hoursUntilCooling().inRange().map(Value::value).orElse(Double.POSITIVE_INFINITY);
    }

    private static Warning cold(SpellComfort spell) {
        return new Warning(
                "COLD",
                Warning.Severity.NOTE,
                "In \"" + spell.needs().spell().name() + "\" ("
                        + number(spell.needs().spell().hours())
                        + " h) this clothing alone lasts about " + fixed(hours(spell), 1)
                        + " h before the wearer cools (ISO 11079). Add a layer, move, or warm up in between.");
    }
}
