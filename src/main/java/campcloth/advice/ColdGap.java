package campcloth.advice;

import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort.Warmth;
import campcloth.comfort.SpellNeeds;
import campcloth.event.Activity;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The most insulation that is missing in any spell, as worn. Sleeping is left out, there bedding decides; so is what no model
 * tells.
 *
 * @param spell where most is missing
 * @param clo what is missing there to feel neutral; 0 or less where nothing is
 * @param closes how far the need is met over all the spells
 */
record ColdGap(SpellNeeds spell, double clo, Closes closes) {

    static Optional<ColdGap> of(List<SpellNeeds> needs, List<Warmth> warmth, Predicate<SpellNeeds> counted) {
        Optional<ColdGap> worst = Optional.empty();
        Closes closes = Closes.NEUTRAL;
        for (int i = 0; i < needs.size(); i++) {
            SpellNeeds need = needs.get(i);
            Optional<Value> margin = warmth.get(i).marginClo().inRange();
            if (margin.isEmpty() || need.spell().activity() == Activity.SLEEPING || !counted.test(need)) {
                continue;
            }
            double missing = -margin.get().value();
            Closes here = closes(missing, warmth.get(i));
            closes = here.compareTo(closes) < 0 ? here : closes;
            if (worst.isEmpty() || missing > worst.get().clo) {
                worst = Optional.of(new ColdGap(need, missing, here));
            }
        }
        Closes all = closes;
        return worst.map(gap -> new ColdGap(gap.spell, gap.clo, all));
    }

    private static Closes closes(double missingClo, Warmth warmth) {
        if (missingClo <= 0) {
            return Closes.NEUTRAL;
        }
        return warmth.minimalMarginClo().inRange().filter(m -> m.value() >= 0).isPresent()
                ? Closes.MINIMAL
                : Closes.NOT;
    }
}
