package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.Wear;
import campcloth.comfort.Comfort;
import campcloth.comfort.SpellNeeds;
import campcloth.comfort.Wardrobe;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A garment of one cloth with an outfit, to which more can be added.
 *
 * @param comfort the event
 * @param cloth the garment's cloth, completed
 * @param wear how the garment is worn
 * @param outfit what is told to be worn besides
 */
record LayeredWear(Comfort comfort, Cloth cloth, Wear wear, Outfit outfit) {

    /** With another part; empty where an outfit cannot have more. */
    Optional<LayeredWear> with(OutfitPart part) {
        if (outfit.parts().size() >= Outfit.MOST_PARTS) {
            return Optional.empty();
        }
        List<OutfitPart> parts = new ArrayList<>(outfit.parts());
        parts.add(part);
        return Optional.of(new LayeredWear(comfort, cloth, wear, new Outfit(parts)));
    }

    /** With so much more garment insulation beneath. */
    LayeredWear withMoreBeneath(double clo) {
        return new LayeredWear(comfort.withMoreBeneath(clo), cloth, wear, outfit);
    }

    /** What is worn besides in a spell. */
    Wardrobe wardrobe(SpellNeeds spell) {
        return comfort.wearing(outfit).wardrobe(wear, comfort.needs().indexOf(spell));
    }

    Optional<ColdGap> gap() {
        return gap(spell -> true);
    }

    Optional<ColdGap> gap(Predicate<SpellNeeds> counted) {
        return ColdGap.of(comfort.needs(), comfort.wearing(outfit).warmth(cloth, wear), counted);
    }
}
