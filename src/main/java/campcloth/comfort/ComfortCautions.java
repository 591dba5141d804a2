package campcloth.comfort;

import campcloth.comfort.Reading.Value;
import campcloth.comfort.model.HeatIndex;
import campcloth.comfort.model.WindChill;
import campcloth.event.Place;
import campcloth.event.Spell;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Short cautions about heat illness and cold injury that no cloth takes away; they defer to marshals, first aiders and the
 * emergency services. Signs and first steps after public health bodies (sources {@code cdc-heat-illness},
 * {@code tpchd-cold-injury}, {@code nhs-hypothermia}, {@code heat-risk-groups}). Heat: from a heat index of 27 degrees Celsius
 * (first band of the US National Weather Service, second-hand), or hard work in air above 20 (project choice); work above its
 * reference of WBGT: {@link HeatStress}. Cold: air at 10 degrees or below, where ISO 11079 begins; bare
 * skin: wind chill of -10 or below (project choice), skin may freeze from -28 (Environment Canada, second-hand).
 */
public final class ComfortCautions {

    private static final double WARM_INDEX_C = 27;
    private static final double WARM_WORK_C = 20;
    private static final double HARD_WORK_MET = 3.5;
    private static final double HOTTEST_INDEX_C = 50;
    private static final double BITTER_CHILL_C = -10;
    private static final double FREEZING_CHILL_C = -28;

    private ComfortCautions() {}

    /** The cautions that the weather of these spells calls for, each once; none in mild weather. */
    public static List<String> of(List<Spell> spells, Optional<Place> place) {
        List<String> cautions = new ArrayList<>();
        Optional<String> stress = HeatStress.caution(spells, place);
        if (stress.isPresent() || spells.stream().anyMatch(ComfortCautions::warm)) {
            cautions.add(
                    "Heat: rest in the shade, drink, open or take off layers. Dizziness, headache, sickness or cramps:"
                            + " stop, cool down, tell a marshal or first aider.");
            cautions.add(
                    "Confusion, collapse or hot skin in the heat is an emergency: call the emergency number and the first"
                            + " aiders at once, and cool the person until they come.");
        }
        stress.ifPresent(cautions::add);
        if (spells.stream().anyMatch(spell -> spell.airC() <= Wardrobe.COLD_C)) {
            cautions.add(
                    "Cold: stay dry, add layers before you shiver, warm up in between; children and older people cool"
                            + " faster than these figures tell. Hands, feet and face come first.");
            cautions.add(
                    "Strong shivering, slurred speech, clumsiness or confusion in the cold is an emergency: call the"
                            + " emergency number and the first aiders, and bring the person to a warm, dry place gently.");
        }
        spells.stream().mapToDouble(ComfortCautions::chillC).min().ifPresent(chill -> {
            if (chill <= BITTER_CHILL_C) {
                cautions.add(bareSkin(chill));
            }
        });
        if (!cautions.isEmpty()) {
            cautions.add(
                    "Small children, older people, who is pregnant or ill, and who takes medicine for heart, water or sleep bear"
                            + " heat and cold less than these figures tell: ask a doctor or midwife beforehand, and let nobody be"
                            + " alone.");
        }
        return List.copyOf(cautions);
    }

    private static boolean warm(Spell spell) {
        boolean hardWork = spell.airC() > WARM_WORK_C && spell.activity().highMet() >= HARD_WORK_MET;
        return hardWork || spell.airC() > HOTTEST_INDEX_C || heatIndexC(spell) >= WARM_INDEX_C;
    }

    private static double heatIndexC(Spell spell) {
        return HeatIndex.temperatureC(spell.airC(), spell.humidityPercent())
                .inRange()
                .map(Value::value)
                .orElse(spell.airC());
    }

    /** Wind chill, or the air itself where there is none. */
    private static double chillC(Spell spell) {
        return WindChill.temperatureC(spell.airC(), spell.windMs())
                .inRange()
                .map(Value::value)
                .orElse(spell.airC());
    }

    private static String bareSkin(double chillC) {
        String freezing = chillC <= FREEZING_CHILL_C ? " and can freeze within half an hour" : "";
        return "Bare skin cools as at " + Words.fixed(chillC, 0) + " degrees Celsius in still air" + freezing
                + ": cover face, ears and hands; numb or waxy skin needs a first aider.";
    }
}
