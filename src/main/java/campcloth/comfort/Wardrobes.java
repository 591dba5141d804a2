package campcloth.comfort;

import campcloth.cloth.Outfit;
import campcloth.cloth.Wear;
import campcloth.event.Spell;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * What is worn besides a garment in each spell of an event, each different wardrobe once.
 *
 * @param spells the spells
 * @param distinct the wardrobes
 * @param ofSpell which of them is worn in each spell
 */
record Wardrobes(List<Spell> spells, List<Wardrobe> distinct, List<Integer> ofSpell) {

    /** What a wardrobe hangs on, for one wear. */
    private record Cause(Outfit told, int coldness) {}

    /** @param beneathClo so much insulation more, worn beneath through all spells */
    static Wardrobes of(List<Spell> spells, Wear wear, Outfit outfit, double beneathClo) {
        Map<Cause, Wardrobe> known = new HashMap<>();
        List<Wardrobe> distinct = new ArrayList<>();
        List<Integer> ofSpell = new ArrayList<>();
        for (Spell spell : spells) {
            Outfit told = outfit.in(spell.name());
            Wardrobe worn = known.computeIfAbsent(
                    new Cause(told, Wardrobe.coldness(spell.airC())),
                    cause -> Wardrobe.with(wear, spell.airC(), told).withBeneath(beneathClo));
            if (!distinct.contains(worn)) {
                distinct.add(worn);
            }
            ofSpell.add(distinct.indexOf(worn));
        }
        return new Wardrobes(spells, distinct, ofSpell);
    }

    Wardrobe in(int spell) {
        return distinct.get(ofSpell.get(spell));
    }

    /** What follows from the wardrobe of each spell, in their order. */
    <T> List<T> each(Function<Wardrobe, T> follows) {
        List<T> once = distinct.stream().map(follows).toList();
        return ofSpell.stream().map(once::get).toList();
    }

    List<Dressing> dressings() {
        return IntStream.range(0, distinct.size())
                .mapToObj(i -> new Dressing(
                        IntStream.range(0, spells.size())
                                .filter(spell -> ofSpell.get(spell) == i)
                                .mapToObj(spell -> spells.get(spell).name())
                                .toList(),
                        distinct.get(i)))
                .toList();
    }
}
