package campcloth.comfort;

import campcloth.comfort.Reading.OutOfRange;
import campcloth.comfort.model.Air;
import campcloth.comfort.model.ColdCriterion;
import campcloth.comfort.model.Motion;
import campcloth.comfort.model.RequiredInsulation;
import campcloth.comfort.model.SkinNeed;
import campcloth.event.Place;
import campcloth.event.Spell;
import java.util.Optional;

/**
 * What a spell asks of clothing, whatever the cloth: computed once a spell. Judged with the lower metabolic rate, as though
 * the spell lasted (an hour in the two-node model), so that a short spell is not thought harmless.
 *
 * <p>Up to 10 degrees Celsius: IREQ, ISO 11079. Above: {@link SkinNeed}, but never more than ISO 11079 asks at 10 degrees in
 * the same wind, humidity and radiation, so that warmer air never needs more clothing (project choice).
 *
 * @param spell the spell
 * @param surroundings what surrounds the wearer in it
 * @param neededClo resultant insulation with which the wearer feels neutral
 * @param minimalClo resultant insulation with which the wearer is cold, but keeps the balance
 * @param model the model that tells the need
 */
public record SpellNeeds(Spell spell, Surroundings surroundings, Reading neededClo, Reading minimalClo, String model) {

    static final double WM2_PER_MET = 58.2;
    private static final double WARMEST_COLD_C = 10;
    private static final String COLD_MODEL = "ISO 11079:2007";
    private static final String MILD_MODEL =
            "two-node skin temperature after an hour, at most ISO 11079:2007 at 10 degrees";

    /** Where nothing is known of the place. */
    public static SpellNeeds of(Spell spell) {
        return of(spell, Surroundings.of(spell));
    }

    /** At a place, if it is known: the sun is reckoned for it. */
    public static SpellNeeds of(Spell spell, Optional<Place> place) {
        return of(spell, Surroundings.of(spell, place));
    }

    static SpellNeeds of(Spell spell, Surroundings around) {
        Reading neutral = required(around, around.airC(), ColdCriterion.NEUTRAL);
        Reading minimal = required(around, around.airC(), ColdCriterion.MINIMAL);
        return around.airC() <= WARMEST_COLD_C
                ? new SpellNeeds(spell, around, neutral, minimal, COLD_MODEL)
                : new SpellNeeds(spell, around, mildNeed(around), minimal, MILD_MODEL);
    }

    private static Reading mildNeed(Surroundings around) {
        Reading skin = SkinNeed.clo(around.air(), around.lowMet(), around.seated());
        Reading most = required(around, WARMEST_COLD_C, ColdCriterion.NEUTRAL);
        if (beyondFourClo(skin, around)) {
            return most.inRange().isPresent() ? most : skin;
        }
        return skin.inRange()
                .flatMap(s -> most.inRange().filter(m -> m.value() < s.value()))
                .<Reading>map(m -> m)
                .orElse(skin);
    }

    /** Whether the model holds for the spell and only its search for clothing ended without success. */
    private static boolean beyondFourClo(Reading skin, Surroundings around) {
        return skin instanceof OutOfRange && !SkinNeed.outside(around.air(), around.lowMet());
    }

    private static Reading required(Surroundings around, double airC, ColdCriterion criterion) {
        double metabolic = around.lowMet() * WM2_PER_MET;
        Air air = new Air(airC, around.radiantC(), around.relativeMs(), around.humidityPercent());
        return RequiredInsulation.clo(air, metabolic, motion(around, around.lowMet()), criterion);
    }

    static Motion motion(Surroundings around, double met) {
        return Motion.conditioned(around.relativeMs(), around.walkingMs(), met * WM2_PER_MET);
    }
}
