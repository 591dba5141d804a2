package campcloth.cloth;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import java.util.Optional;
import java.util.Set;

/**
 * Something worn with a garment, or sewn into it, besides the garment's own cloth.
 *
 * @param kind what it is
 * @param cloth what it is made of; empty where nobody said
 * @param insulationClo its insulation I_clu, clo; empty where nobody said. Only for what is worn by itself
 * @param spells names of the spells through which it is worn; empty where it is worn through all of them
 */
public record OutfitPart(Kind kind, Optional<Cloth> cloth, Optional<Double> insulationClo, Set<String> spells) {

    private static final Range INSULATION = new Range("insulationClo", 0, 4, "clo");

    public OutfitPart {
        insulationClo.ifPresent(INSULATION::check);
        spells = Set.copyOf(spells);
        if (kind.isSewnIn() && !spells.isEmpty()) {
            throw Refused.of(
                    "spells", "cannot be told of what is sewn in", "leave it out: the garment is worn through all");
        }
    }

    /** Worn through all spells. */
    public OutfitPart(Kind kind, Optional<Cloth> cloth, Optional<Double> insulationClo) {
        this(kind, cloth, insulationClo, Set.of());
    }

    /** As it is worn through one spell: with no insulation where it is not worn then. */
    OutfitPart in(String spell) {
        return spells.isEmpty() || spells.contains(spell)
                ? this
                : new OutfitPart(kind, Optional.empty(), Optional.of(0.0));
    }

    /** What a part is and where it lies. */
    public enum Kind {
        SHIRT("shirt", Layer.SKIN, false),
        WARM_UNDERWEAR("warm underwear", Layer.SKIN, false),
        HOSE("hose or trousers", Layer.SKIN, false),
        UNDER_TUNIC("tunic worn beneath", Layer.MIDDLE, false),
        OVERGARMENT("garment worn over it", Layer.OUTER, false),
        CLOAK("cloak", Layer.OUTER, false),
        HOOD("hood", Layer.OUTER, false),
        MITTENS("mittens", Layer.OUTER, false),
        FOOTWEAR("footwear", Layer.OUTER, false),
        LINING("lining", Layer.SKIN, true),
        WADDING("wadding", Layer.MIDDLE, true),
        INTERLINING("interlining", Layer.MIDDLE, true),
        TRIM("trim", Layer.OUTER, true),
        THREAD("sewing thread", Layer.OUTER, true);

        private final String words;
        private final Layer layer;
        private final boolean sewnIn;

        Kind(String words, Layer layer, boolean sewnIn) {
            this.words = words;
            this.layer = layer;
            this.sewnIn = sewnIn;
        }

        public String words() {
            return words;
        }

        /** Where it lies: a lining nearer the skin than the garment's cloth, trim and thread on its face. */
        public Layer layer() {
            return layer;
        }

        /** Whether it belongs to the garment itself. */
        public boolean isSewnIn() {
            return sewnIn;
        }
    }
}
