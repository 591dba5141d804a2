package campcloth.comfort;

import campcloth.comfort.model.Daylight;
import campcloth.comfort.model.OpenSky;
import campcloth.comfort.model.RadiantField;
import campcloth.comfort.model.SunHeight;
import campcloth.comfort.model.Sunlight;
import campcloth.event.Place;
import campcloth.event.Sky;
import campcloth.event.Spell;
import campcloth.event.Sun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What sun and sky do to the wearer, W per m2 of the radiating body.
 *
 * <p>Sun: where latitude and hour are told, its height and strength follow ({@link SunHeight}, {@link Daylight}; a clear sky
 * where nobody told the clouds), on a body that turns about, over grass of reflectance 0.2, on clothing of middle colour
 * (absorptance 0.7); PART is half of it: shade, not cloud. Where they are not, FULL is presumed as a beam of 600 W/m2 at 45
 * degrees, and a fifth of it from the sky, on a body half of which is shaded by itself, a hat and trees, PART as half of that
 * (project choice, about 21 and 11 K).
 *
 * <p>Sky: as warm as the air where nobody told the clouds, or under trees or a tent; else {@link OpenSky}.
 */
final class Overhead {

    private static final RadiantField.Sun PRESUMED = new RadiantField.Sun(600, 45, 1, 1, 0.5, 0.2, 0.7);
    private static final double PART_OF_SUN = 0.5;
    private static final double SAMPLES_AN_HOUR = 6;
    private static final double HOURS_A_DAY = 24;

    private Overhead() {}

    /** Whether the sun on the wearer changes through the spell. */
    static boolean moves(Spell spell, Optional<Place> place) {
        return spell.sun() != Sun.NONE
                && place.isPresent()
                && spell.skyTold().startsAt().isPresent();
    }

    /** Mean of the sun between two hours after the spell began. */
    static double sunWm2(Spell spell, Optional<Place> place, double fromH, double toH, boolean seated) {
        double share = share(spell.sun());
        if (!moves(spell, place)) {
            return share * RadiantField.sunFluxWm2(PRESUMED, seated);
        }
        int samples = (int) Math.max(1, Math.ceil((toH - fromH) * SAMPLES_AN_HOUR));
        double sum = 0;
        for (int i = 0; i < samples; i++) {
            sum += fluxAt(spell, place, fromH + (i + 0.5) * (toH - fromH) / samples, seated);
        }
        return share * sum / samples;
    }

    private static double fluxAt(Spell spell, Optional<Place> place, double afterH, boolean seated) {
        double height = heightDegrees(spell, place, afterH);
        if (height <= 0) {
            return 0;
        }
        Daylight light = light(spell, height);
        return RadiantField.sunFluxTurningWm2(
                new RadiantField.Sun(light.directWm2(), light.diffuseWm2(), height, 1, 1, 1, 0.2, 0.7), seated);
    }

    /** How much of the time the sun meets the wearer. */
    static double share(Sun sun) {
        return switch (sun) {
            case FULL -> 1;
            case PART -> PART_OF_SUN;
            case NONE -> 0;
        };
    }

    /** The sun on open ground so many hours after the spell began; the presumed one where place or hour is not told. */
    static Sunlight sunlight(Spell spell, Optional<Place> place, double afterH) {
        if (!moves(spell, place)) {
            return Sunlight.of(new Daylight(PRESUMED.directWm2(), PRESUMED.diffuseWm2()), PRESUMED.altitudeDegrees());
        }
        double height = heightDegrees(spell, place, afterH);
        return Sunlight.of(light(spell, height), height);
    }

    private static Daylight light(Spell spell, double height) {
        return Daylight.under(spell.skyTold().cloudPercent().orElse(0.0) / 100, height);
    }

    private static double heightDegrees(Spell spell, Optional<Place> place, double afterH) {
        Place at = place.orElseThrow();
        double begin = spell.skyTold().startsAt().orElseThrow().toSecondOfDay() / 3600.0;
        return SunHeight.degrees(at.latitudeDeg(), at.dayOfYear(), (begin + afterH) % HOURS_A_DAY);
    }

    /** Mean temperature of sky and ground without sun and fire, degrees Celsius. */
    static double surroundingsC(Spell spell) {
        Sky sky = spell.skyTold();
        return sky.cloudPercent()
                .filter(cloud -> sky.open())
                .map(cloud -> OpenSky.radiantC(spell.airC(), spell.humidityPercent(), cloud / 100))
                .orElse(spell.airC());
    }

    /** What is presumed of sun and sky because nobody said otherwise. */
    static List<String> presumed(List<Spell> spells, Optional<Place> place) {
        List<String> presumed = new ArrayList<>();
        if (spells.stream().anyMatch(s -> s.sun() != Sun.NONE && !moves(s, place))) {
            presumed.add("Sun of middling strength and height was presumed where latitude or hour is not told.");
        }
        if (spells.stream().anyMatch(s -> moves(s, place))) {
            presumed.add(
                    "The sun stands as on the first day of the event, or on the middle day of its season where no dates are told,"
                            + " in solar time.");
        }
        boolean clearSun = spells.stream()
                .anyMatch(s -> moves(s, place) && s.skyTold().cloudPercent().isEmpty());
        if (clearSun) {
            presumed.add("Where the clouds are not told, the sun is that of a clear sky.");
        }
        boolean warmSky = spells.stream()
                .anyMatch(s -> s.skyTold().open() && s.skyTold().cloudPercent().isEmpty());
        if (warmSky) {
            presumed.add(
                    "Where the clouds are not told, the sky was presumed as warm as the air: under a clear night sky"
                            + " it is colder than that.");
        }
        return presumed;
    }
}
