package campcloth.cloth;

import campcloth.figure.Refused;
import java.util.List;

/**
 * All that is worn or sewn in besides the cloth of the garment in question, as far as somebody said.
 *
 * @param parts its parts, at most 20; empty where nobody said anything
 */
public record Outfit(List<OutfitPart> parts) {

    public static final int MOST_PARTS = 20;

    /** Nobody said what else is worn. */
    public static final Outfit UNTOLD = new Outfit(List.of());

    public Outfit {
        if (parts.size() > MOST_PARTS) {
            throw Refused.of("outfit", "has " + parts.size() + " parts", "give at most 20");
        }
        parts = List.copyOf(parts);
    }

    /** As it is worn through one spell: what is taken off then is there with no insulation. */
    public Outfit in(String spell) {
        return parts.stream().allMatch(part -> part.spells().isEmpty())
                ? this
                : new Outfit(parts.stream().map(part -> part.in(spell)).toList());
    }

    public boolean has(OutfitPart.Kind kind) {
        return parts.stream().anyMatch(part -> part.kind() == kind);
    }

    /** Whether something is worn over the garment. */
    public boolean liesOver() {
        return has(OutfitPart.Kind.OVERGARMENT) || has(OutfitPart.Kind.CLOAK);
    }

    /** Whether something is worn or sewn in between the garment's cloth and the skin. */
    public boolean liesBeneath() {
        return has(OutfitPart.Kind.SHIRT)
                || has(OutfitPart.Kind.WARM_UNDERWEAR)
                || has(OutfitPart.Kind.UNDER_TUNIC)
                || has(OutfitPart.Kind.LINING);
    }
}
