package campcloth.comfort;

import campcloth.comfort.Reading.Value;
import campcloth.comfort.model.Air;
import campcloth.comfort.model.Sunlight;
import campcloth.comfort.model.Wbgt;
import campcloth.event.Activity;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.figure.Words;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Spells whose {@link Wbgt} passes the reference for their work, judged with the higher metabolic rate of the activity and the
 * wind at body height. FULL sun is presumed as 544 W/m2 on level ground, 78 % of it direct, at 45 degrees (a beam of 600 W/m2
 * and a fifth of that from the sky), under a clear sky; PART as the mean of that and shade (project choice). In shade the
 * surroundings are as warm as the air; a fire is not in it. Sleepers are not judged. Work shared with rest: mean metabolic rate of
 * an hour at the reference. Second layer: {@code acgih-clothing-adjustment}.
 */
final class HeatStress {

    private static final Sunlight FULL_SUN = new Sunlight(544, 0.78, 45);
    private static final double PART_OF_SUN = 0.5;
    private static final int MINUTES = 60;
    private static final int STEP_MINUTES = 5;

    private HeatStress() {}

    /** One caution for all such spells, told for the worst of them; none where every spell keeps to the reference. */
    static Optional<String> caution(List<Spell> spells) {
        List<Passed> passed =
                spells.stream().flatMap(spell -> Passed.of(spell).stream()).toList();
        double hours = passed.stream().mapToDouble(p -> p.spell.hours()).sum();
        return passed.stream().max(Comparator.comparingDouble(Passed::excessK)).map(worst -> words(worst, hours));
    }

    /** Estimated WBGT of a spell, empty where it is too cool or too hot to be estimated. */
    static Optional<Double> wbgtC(Spell spell) {
        double airC = spell.airC();
        double speedMs = Surroundings.of(spell).windMs();
        Optional<Double> shade = reading(new Air(airC, airC, speedMs, spell.humidityPercent()), Sunlight.NONE);
        double openC = Wbgt.openSurroundingsC(airC, spell.humidityPercent());
        Optional<Double> sun = reading(new Air(airC, openC, speedMs, spell.humidityPercent()), FULL_SUN);
        double part = share(spell.sun());
        return shade.flatMap(without -> sun.map(with -> part * with + (1 - part) * without));
    }

    private static double share(Sun sun) {
        return switch (sun) {
            case FULL -> 1;
            case PART -> PART_OF_SUN;
            case NONE -> 0;
        };
    }

    private static Optional<Double> reading(Air air, Sunlight sun) {
        return Wbgt.temperatureC(air, sun).inRange().map(Value::value);
    }

    private record Passed(Spell spell, double wbgtC, double referenceC, double acclimatisedC) {

        static Optional<Passed> of(Spell spell) {
            double met = spell.activity().highMet();
            return HeatStress.wbgtC(spell)
                    .filter(wbgt -> spell.activity() != Activity.SLEEPING)
                    .map(wbgt -> new Passed(
                            spell, wbgt, HeatStress.referenceC(met, false), HeatStress.referenceC(met, true)))
                    .filter(p -> p.excessK() > 0);
        }

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
        return "Heat stress for " + Words.number(hours) + " h, worst in \"" + worst.spell.name() + "\": wet bulb globe"
                + " temperature about " + Words.fixed(worst.wbgtC, 1) + " degrees, above "
                + Words.fixed(worst.referenceC, 1) + " for that work and people not used to heat" + others + ". "
                + work(worst)
                + " A second layer counts as 3 degrees more. What the event's first aiders say goes first.";
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
