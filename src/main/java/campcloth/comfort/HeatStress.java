package campcloth.comfort;

import campcloth.comfort.Reading.Value;
import campcloth.comfort.model.Air;
import campcloth.comfort.model.Sunlight;
import campcloth.comfort.model.Wbgt;
import campcloth.event.Activity;
import campcloth.event.Place;
import campcloth.event.Sky;
import campcloth.event.Spell;
import campcloth.figure.Words;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Spells whose {@link Wbgt} passes the reference for their work, judged with the higher metabolic rate of the activity and the
 * wind at body height, hour by hour where the sun moves. The sun on open ground and its share in PART are those of
 * {@link Overhead}: of place, hour and cloud, or the presumed one. In the sun the sky is that of {@link Overhead} where clouds
 * or a shelter are told, else a clear one; in shade the surroundings are as warm as the air; a fire is not in it. Sleepers are
 * not judged. Work shared with rest: mean metabolic rate of an hour at the reference. Second layer:
 * {@code acgih-clothing-adjustment}.
 */
final class HeatStress {

    private static final int MINUTES = 60;
    private static final int STEP_MINUTES = 5;

    private HeatStress() {}

    /** One caution for all such spells, told for the worst hour of them; none where every spell keeps to the reference. */
    static Optional<String> caution(List<Spell> spells, Optional<Place> place) {
        List<Passed> passed = spells.stream()
                .filter(spell -> spell.activity() != Activity.SLEEPING)
                .flatMap(spell -> passed(spell, place).stream())
                .toList();
        double hours = passed.stream().mapToDouble(Passed::hours).sum();
        return passed.stream().max(Comparator.comparingDouble(Passed::excessK)).map(worst -> words(worst, hours));
    }

    private static List<Passed> passed(Spell spell, Optional<Place> place) {
        int pieces = Overhead.moves(spell, place) ? (int) Math.ceil(spell.hours()) : 1;
        double hours = spell.hours() / pieces;
        double met = spell.activity().highMet();
        double reference = referenceC(met, false);
        return IntStream.range(0, pieces)
                .mapToObj(piece -> wbgtC(spell, place, (piece + 0.5) * hours))
                .flatMap(Optional::stream)
                .filter(wbgt -> wbgt > reference)
                .map(wbgt -> new Passed(spell, hours, wbgt, reference, referenceC(met, true)))
                .toList();
    }

    /** Estimated WBGT so many hours after the spell began; empty where it is too cool or too hot to be estimated. */
    static Optional<Double> wbgtC(Spell spell, Optional<Place> place, double afterH) {
        double airC = spell.airC();
        double humidity = spell.humidityPercent();
        double speedMs = Surroundings.of(spell).windMs();
        double share = Overhead.share(spell.sun());
        Optional<Double> shade = reading(new Air(airC, airC, speedMs, humidity), Sunlight.NONE);
        Air open = new Air(airC, surroundingsC(spell), speedMs, humidity);
        Optional<Double> sun = reading(open, Overhead.sunlight(spell, place, afterH));
        return shade.flatMap(without -> sun.map(with -> share * with + (1 - share) * without));
    }

    private static double surroundingsC(Spell spell) {
        Sky sky = spell.skyTold();
        return sky.cloudPercent().isPresent() || !sky.open()
                ? Overhead.surroundingsC(spell)
                : Wbgt.openSurroundingsC(spell.airC(), spell.humidityPercent());
    }

    private static Optional<Double> reading(Air air, Sunlight sun) {
        return Wbgt.temperatureC(air, sun).inRange().map(Value::value);
    }

    private record Passed(Spell spell, double hours, double wbgtC, double referenceC, double acclimatisedC) {

        double excessK() {
            return wbgtC - referenceC;
        }
    }

    private static double referenceC(double met, boolean acclimatised) {
        return Wbgt.referenceC(met, acclimatised).inRange().orElseThrow().value();
    }

    private static String words(Passed worst, double hours) {
        String others = worst.wbgtC > worst.acclimatisedC
                ? " and above " + Words.fixed(worst.acclimatisedC, 1) + " for people who are"
                : ", below " + Words.fixed(worst.acclimatisedC, 1) + " for people who are";
        return "Heat stress for " + Words.number(Math.round(hours * 10) / 10.0) + " h, worst in \"" + worst.spell.name()
                + "\": wet bulb globe"
                + " temperature about " + Words.fixed(worst.wbgtC, 1) + " degrees Celsius, above "
                + Words.fixed(worst.referenceC, 1) + " for that work and people not used to heat" + others + ". "
                + work(worst)
                + " A second layer counts as 3 degrees Celsius more. What the event's first aiders say goes first.";
    }

    private static String work(Passed worst) {
        double share = Wbgt.workShare(worst.spell.activity().highMet(), worst.wbgtC);
        int minutes = (int) (share * MINUTES / STEP_MINUTES) * STEP_MINUTES;
        return minutes == 0
                ? "Put that work off to cooler hours; rest in the shade."
                : "At most about " + minutes + " minutes of it in an hour, the rest of the hour at rest, in the shade"
                        + " where there is any.";
    }
}
