package campcloth.event;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import java.util.Optional;

/**
 * Some hours of an event during which weather and activity stay about the same.
 *
 * @param name what people call it, 1 to 100 characters
 * @param hours how long it lasts
 * @param airC air temperature, degrees Celsius
 * @param humidityPercent relative humidity
 * @param windMs wind as forecast, at 10 m height, m/s
 * @param sun how much sun reaches the wearer
 * @param activity what the wearer does
 * @param fire the fire the wearer is at, if any
 * @param sky what was said of the sky, if anything
 * @param wet how wet the clothes are; nobody said where it is empty: counted as dry
 */
public record Spell(
        String name,
        double hours,
        double airC,
        double humidityPercent,
        double windMs,
        Sun sun,
        Activity activity,
        Optional<OpenFire> fire,
        Optional<Sky> sky,

        Optional<Wetness> wet) {

    private static final int LONGEST_NAME = 100;
    private static final Range HOURS = new Range("hours", 0.1, 72, "h");
    private static final Range AIR = new Range("airC", -50, 55, "degrees Celsius");
    private static final Range HUMIDITY = new Range("humidityPercent", 0, 100, "%");
    private static final Range WIND = new Range("windMs", 0, 40, "m/s");

    public Spell {
        if (name.isBlank() || name.length() > LONGEST_NAME) {
            throw Refused.of("name", "has " + name.length() + " characters", "give a name of 1 to 100 characters");
        }
        HOURS.check(hours);
        AIR.check(airC);
        HUMIDITY.check(humidityPercent);
        WIND.check(windMs);
        if (sun == Sun.FULL && sky.filter(s -> !s.open()).isPresent()) {
            throw Refused.of("shelter", "stands beside full sun", "say PART or NONE for the sun, or leave shelter out");
        }
    }

    /** A spell of whose sky and of whose wet nothing was said. */
    public Spell(
            String name,
            double hours,
            double airC,
            double humidityPercent,
            double windMs,
            Sun sun,
            Activity activity,
            Optional<OpenFire> fire) {
        this(name, hours, airC, humidityPercent, windMs, sun, activity, fire, Optional.empty(), Optional.empty());
    }

    /** What was said of the sky. */
    public Sky skyTold() {
        return sky.orElse(Sky.UNTOLD);
    }

    /** The fire, where the wearer has a role at it. */
    public Optional<OpenFire> fireInUse() {
        return fire.filter(f -> f.role() != FireRole.NONE);
    }

    /** The same spell at another fire. */
    public Spell withFire(OpenFire other) {
        return new Spell(name, hours, airC, humidityPercent, windMs, sun, activity, Optional.of(other), sky, wet);
    }

    /** The same spell under another sky. */
    public Spell withSky(Sky other) {
        return new Spell(name, hours, airC, humidityPercent, windMs, sun, activity, fire, Optional.of(other), wet);
    }

    /** The same spell in clothes as wet as that. */
    public Spell withWet(Wetness other) {
        return new Spell(name, hours, airC, humidityPercent, windMs, sun, activity, fire, sky, Optional.of(other));
    }

    /** How wet the clothes are, where somebody said that they are. */
    public Optional<Wetness> wetting() {
        return wet.filter(w -> w != Wetness.DRY);
    }
}
