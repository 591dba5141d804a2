package campcloth.fire;

import campcloth.cloth.OutfitPart;
import java.util.Optional;

/**
 * A part of an outfit as fire meets it. Thread and trim stand as the garment's cloth with a small share of them in it, see
 * {@link SmallShare}.
 *
 * @param part the part; empty for the garment's own cloth
 * @param worn its cloth as it is worn, the worst it could be where nobody said
 */
public record WornPart(Optional<OutfitPart> part, WornCloth worn) {

    static final String OWN_CLOTH = "the garment's own cloth";

    /** What it is, in words. */
    public String name() {
        return part.map(p -> p.kind().words()).orElse(OWN_CLOTH);
    }

    /** The same at the head of a sentence, with the name of its cloth. */
    String heading() {
        String cloth =
                part.flatMap(OutfitPart::cloth).map(c -> " (" + c.name() + ")").orElse("");
        String name = name();
        return Character.toUpperCase(name.charAt(0)) + name.substring(1) + cloth;
    }

    /** Whether somebody said what it is made of. */
    public boolean isTold() {
        return part.map(p -> p.cloth().isPresent()).orElse(true);
    }

    public boolean isSewnIn() {
        return part.map(p -> p.kind().isSewnIn()).orElse(true);
    }

    boolean isSmallShare() {
        return part.map(p -> SmallShare.isOne(p.kind())).orElse(false);
    }

    /** What it is made of by itself, where somebody said. */
    Optional<WornCloth> byItself() {
        return isSmallShare()
                ? part.flatMap(OutfitPart::cloth).map(cloth -> SmallShare.alone(cloth, worn))
                : Optional.of(worn).filter(w -> isTold());
    }
}
