package campcloth.fire;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.Fibres;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where each part of an outfit lies and how it hangs. What is sewn in hangs as the garment does, underwear, mittens and
 * footwear lie close, the rest hangs loose, for nobody said otherwise. What lies over a part puts it under an outer layer,
 * which is the worse place; it never makes it better. A part that is named without its cloth is taken for the worst cloth there
 * could be: of no named fibre, raised, as light as a cloth can be. Footwear of no named cloth is not judged: it is seldom cloth at
 * all. All of this is project choice.
 */
public final class WornOutfit {

    private WornOutfit() {}

    /** The garment's own cloth, under what lies over it. */
    static WornPart own(WornCloth garment, Outfit outfit) {
        boolean covered = garment.layer() == Layer.OUTER && outfit.liesOver();
        return new WornPart(Optional.empty(), covered ? garment.lying(Layer.MIDDLE) : garment);
    }

    /** What is sewn into the garment, as far as somebody said. */
    static List<WornPart> sewnIn(WornCloth garment, Outfit outfit, Fibres fibres) {
        List<WornPart> parts = new ArrayList<>();
        for (OutfitPart part : outfit.parts()) {
            if (part.kind().isSewnIn()) {
                WornCloth alone = cloth(part, garment.fit(), layer(part.kind(), outfit), fibres);
                WornCloth worn = SmallShare.isOne(part.kind())
                        ? SmallShare.in(garment, part.kind(), alone, alone.layer())
                        : alone;
                parts.add(new WornPart(Optional.of(part), worn));
            }
        }
        return parts;
    }

    /** What is worn beside the garment, as far as somebody said and it can be judged. */
    static List<WornPart> wornBesides(Outfit outfit, Fibres fibres) {
        List<WornPart> parts = new ArrayList<>();
        for (OutfitPart part : outfit.parts()) {
            if (!part.kind().isSewnIn() && isJudged(part)) {
                Layer layer = layer(part.kind(), outfit);
                parts.add(new WornPart(Optional.of(part), cloth(part, fit(part.kind()), layer, fibres)));
            }
        }
        return parts;
    }

    /** What nobody told and what is not judged, in a sentence each; those about parts that most garments have. */
    public static List<String> notTold(Outfit outfit) {
        List<String> missing = new ArrayList<>();
        if (!outfit.has(Kind.LINING)) {
            missing.add(Kind.LINING.words());
        }
        if (!outfit.has(Kind.THREAD)) {
            missing.add(Kind.THREAD.words());
        }
        if (!outfit.has(Kind.SHIRT) && !outfit.has(Kind.WARM_UNDERWEAR) && !outfit.has(Kind.UNDER_TUNIC)) {
            missing.add(Kind.SHIRT.words());
        }
        List<String> sentences = new ArrayList<>();
        if (!missing.isEmpty()) {
            sentences.add("Not told, and not judged for fire: " + FibreWords.joined(missing, "and")
                    + ". Their fibres count too, if there are any.");
        }
        if (outfit.parts().stream().anyMatch(part -> !isJudged(part))) {
            sentences.add("Nobody said what the footwear is made of: it was not judged for fire.");
        }
        return sentences;
    }

    private static boolean isJudged(OutfitPart part) {
        return part.kind() != Kind.FOOTWEAR || part.cloth().isPresent();
    }

    private static WornCloth cloth(OutfitPart part, Fit fit, Layer layer, Fibres fibres) {
        return part.cloth()
                .map(cloth -> WornCloth.of(weighed(cloth), fit, layer))
                .orElseGet(() -> worst(fit, layer, fibres));
    }

    /** The cloth with its mass, estimated where nobody told. */
    static Cloth weighed(Cloth cloth) {
        return cloth.figure(Property.WEIGHT_GSM).isPresent() ? cloth : Estimates.complete(cloth);
    }

    private static WornCloth worst(Fit fit, Layer layer, Fibres fibres) {
        return new WornCloth(
                Blend.pure(fibres.require(Fibre.UNKNOWN)),
                ClothWeight.exactly(Property.WEIGHT_GSM.range().least()),
                Surface.RAISED,
                Finish.NONE,
                Weave.PLAIN,
                fit,
                layer);
    }

    private static Fit fit(Kind kind) {
        return switch (kind) {
            case WARM_UNDERWEAR, MITTENS, FOOTWEAR -> Fit.CLOSE;
            default -> Fit.LOOSE;
        };
    }

    private static Layer layer(Kind kind, Outfit outfit) {
        boolean covered = switch (kind) {
            case TRIM -> outfit.liesOver();
            case OVERGARMENT -> outfit.has(Kind.CLOAK);
            default -> false;
        };
        return covered ? Layer.MIDDLE : kind.layer();
    }
}
