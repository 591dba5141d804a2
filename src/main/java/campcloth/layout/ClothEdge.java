package campcloth.layout;

/**
 * A long edge of the cloth as it lies to be cut.
 *
 * @param kind what lies there
 * @param flapCm how far the upper layer reaches in from a fold; 0 at a selvedge
 */
public record ClothEdge(Kind kind, double flapCm) {

    /** What an edge is. */
    public enum Kind {
        /** One selvedge: the cloth lies open here. */
        SELVEDGE("selvedge"),
        /** Both selvedges, one on the other. */
        BOTH_SELVEDGES("both selvedges"),
        /** The cloth is folded here. */
        FOLD("fold");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public static final ClothEdge SELVEDGE = new ClothEdge(Kind.SELVEDGE, 0);
    public static final ClothEdge BOTH_SELVEDGES = new ClothEdge(Kind.BOTH_SELVEDGES, 0);

    /** A fold from which the upper layer reaches in as far as stated. */
    public static ClothEdge fold(double flapCm) {
        return new ClothEdge(Kind.FOLD, flapCm);
    }

    public boolean isFold() {
        return kind == Kind.FOLD;
    }
}
