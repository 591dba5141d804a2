package campcloth.comfort;

import campcloth.comfort.model.Air;
import campcloth.comfort.model.RadiantField;
import campcloth.event.Activity;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.Place;
import campcloth.event.Spell;
import java.util.List;
import java.util.Optional;

/**
 * What surrounds the wearer during a spell, as the models want it.
 *
 * <p>Wind at body height: v = v10 ln(1.1 / z0) / ln(10 / z0) with z0 = 0.1 m for a camp on rough meadow, so 0.52 v10 (log law
 * and roughness from memory). Relative air speed: sqrt(v^2 + w^2) of wind and walking, the root mean square over all directions
 * in which one may walk.
 *
 * <p>Mean radiant temperature: that of sky and ground, with sun and fire added ({@link Overhead}, {@link RadiantField}).
 *
 * <p>A fire warms whoever sits, cooks or tends there, facing it, on that side only: the back sees the night; distance and size that nobody told are presumed as 2.5 m
 * (seated), 1.2 m (cooking, tending) and 30 kW, and no more than 1 kW/m2, where people step back (project choice).
 *
 * @param airC air temperature
 * @param humidityPercent relative humidity
 * @param windMs wind at body height
 * @param relativeMs speed of the air relative to the body
 * @param walkingMs speed of the body
 * @param radiantC mean radiant temperature, sun and fire included
 * @param seated whether the wearer sits or lies
 * @param lowMet metabolic rate to judge cold by
 * @param highMet metabolic rate to judge heat by
 */
public record Surroundings(
        double airC,
        double humidityPercent,
        double windMs,
        double relativeMs,
        double walkingMs,
        double radiantC,
        boolean seated,
        double lowMet,
        double highMet) {

    private static final double ROUGHNESS_M = 0.1;
    private static final double BODY_HEIGHT_M = 1.1;
    private static final double FORECAST_HEIGHT_M = 10;

    private static final double SEATED_M = 2.5;
    private static final double AT_WORK_M = 1.2;
    private static final double FIRE_KW = 30;
    private static final double MOST_FIRE_WM2 = 1000;

    /** Where nothing is known of the place. */
    public static Surroundings of(Spell spell) {
        return of(spell, Optional.empty());
    }

    /** On the mean of the spell. */
    public static Surroundings of(Spell spell, Optional<Place> place) {
        return between(spell, place, 0, spell.hours());
    }

    /** On the mean between two hours after the spell began. */
    static Surroundings between(Spell spell, Optional<Place> place, double fromH, double toH) {
        Activity activity = spell.activity();
        boolean seated = seated(spell);
        double windMs =
                spell.windMs() * Math.log(BODY_HEIGHT_M / ROUGHNESS_M) / Math.log(FORECAST_HEIGHT_M / ROUGHNESS_M);
        double flux = Overhead.sunWm2(spell, place, fromH, toH, seated)
                + spell.fireInUse().map(fire -> fireWm2(fire, seated)).orElse(0.0);
        double surroundingsC = Overhead.surroundingsC(spell);
        return new Surroundings(
                spell.airC(),
                spell.humidityPercent(),
                windMs,
                Math.hypot(windMs, activity.walkingMs()),
                activity.walkingMs(),
                flux > 0 ? RadiantField.radiantC(surroundingsC, flux) : surroundingsC,
                seated,
                activity.lowMet(),
                activity.highMet());
    }

    /** What is presumed of sun and sky because nobody said otherwise, a sentence each. */
    public static List<String> presumed(List<Spell> spells, Optional<Place> place) {
        return Overhead.presumed(spells, place);
    }

    /** Mean of both metabolic rates. */
    double meanMet() {
        return (lowMet + highMet) / 2;
    }

    /** The same for a wearer whose metabolic rate lies so far, 0 to 1, between the two. */
    Surroundings atPace(double share) {
        double met = lowMet + share * (highMet - lowMet);
        return new Surroundings(airC, humidityPercent, windMs, relativeMs, walkingMs, radiantC, seated, met, met);
    }

    Air air() {
        return new Air(airC, radiantC, relativeMs, humidityPercent);
    }

    private static boolean seated(Spell spell) {
        return switch (spell.activity()) {
            case SLEEPING, RESTING, SEATED -> true;
            default -> spell.fire().filter(f -> f.role() == FireRole.SEATED).isPresent();
        };
    }

    private static double fireWm2(OpenFire fire, boolean seated) {
        return switch (fire.role()) {
            case SEATED -> fireWm2(fire, SEATED_M, seated);
            case COOKING, TENDING -> fireWm2(fire, AT_WORK_M, seated);
            case NONE, PASSING, CARRYING -> 0;
        };
    }

    private static double fireWm2(OpenFire fire, double usualM, boolean seated) {
        return RadiantField.fireFluxWm2(
                fire.heatKw().orElse(FIRE_KW), fire.distanceM().orElse(usualM), MOST_FIRE_WM2, seated);
    }
}
