package campcloth.advice;

import campcloth.comfort.SpellComfort;
import campcloth.comfort.SpellComfort.WetLoss;
import java.util.List;

/**
 * What wet clothes of a cloth cost in a spell.
 *
 * @param spell name of the spell
 * @param loss insulation lost and heat that drying takes, from memory of measurements
 */
public record WetSpell(String spell, WetLoss loss) {

    static List<WetSpell> of(List<SpellComfort> spells) {
        return spells.stream()
                .flatMap(s -> s.warmth().wet().stream()
                        .map(loss -> new WetSpell(s.needs().spell().name(), loss)))
                .toList();
    }
}
