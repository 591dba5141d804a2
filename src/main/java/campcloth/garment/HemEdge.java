package campcloth.garment;

/**
 * An edge of a garment that is hemmed.
 *
 * @param kind which edge
 * @param lengthCm all of it that is sewn, on the whole garment
 * @param hangsFromCm finished length of cloth between the edge and where its piece hangs from (shoulder to hem); what
 *     residual shrinkage is reckoned from; 0 where it runs along the grain, or
 *     where the whole piece is cut larger instead
 * @param panelWidthCm width of one panel at the edge
 * @param flareTangent tangent of the angle between the panel's side and the grain, 0 for a straight panel
 * @param allowanceCm most cloth that is left beyond the finished edge, before any shrinkage
 */
public record HemEdge(
        Kind kind, double lengthCm, double hangsFromCm, double panelWidthCm, double flareTangent, double allowanceCm) {

    /** An edge with the allowance that is usual for its kind. */
    public HemEdge(Kind kind, double lengthCm, double hangsFromCm, double panelWidthCm, double flareTangent) {
        this(kind, lengthCm, hangsFromCm, panelWidthCm, flareTangent, kind.usualAllowanceCm());
    }

    /** The edges that garments have. */
    public enum Kind {
        BODY("hem", 5),
        CUFF("cuff", 5),
        LEG_END("leg end", 5),
        SIDE_SPLIT("side split", 2),
        WRIST_SLIT("wrist slit", 2),
        NECK("neck", 1),
        SQUARE_NECK("neck", 1),
        FACED_HEM("faced hem", 1),
        FRONT("front edges", 2),
        FACE("face edge", 2),
        SIDE("side edges", 2),
        TOP("top edge", 2);

        private final String words;
        private final double usualAllowanceCm;

        Kind(String words, double usualAllowanceCm) {
            this.words = words;
            this.usualAllowanceCm = usualAllowanceCm;
        }

        /** Cloth left beyond the finished edge; common practice, no source. */
        public double usualAllowanceCm() {
            return usualAllowanceCm;
        }

        /** Left open in a seam. */
        boolean isSlit() {
            return this == SIDE_SPLIT || this == WRIST_SLIT;
        }

        /** Sewn to a facing. */
        boolean isFaced() {
            return this == NECK || this == SQUARE_NECK || this == FACED_HEM;
        }

        /** The end of a sleeve or a leg. */
        boolean isTubeEnd() {
            return this == CUFF || this == LEG_END;
        }

        /** An edge that is neither hem nor sleeve end: it uses the seams' allowance. */
        boolean isOpenEdge() {
            return this == FRONT || this == FACE || this == SIDE || this == TOP;
        }

        public String words() {
            return words;
        }
    }
}
