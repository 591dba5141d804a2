package campcloth.garment;

/**
 * An edge of a garment that is hemmed.
 *
 * @param kind which edge
 * @param lengthCm all of it that is sewn, on the whole garment
 * @param hangsFromCm finished length of cloth between the edge and where its piece hangs from (shoulder to hem); what
 *     residual shrinkage is reckoned from; 0 where it runs along the grain
 * @param panelWidthCm width of one panel at the edge
 * @param flareTangent tangent of the angle between the panel's side and the grain, 0 for a straight panel
 */
public record HemEdge(Kind kind, double lengthCm, double hangsFromCm, double panelWidthCm, double flareTangent) {

    /** The edges that garments have. */
    public enum Kind {
        BODY("hem"),
        CUFF("cuff"),
        SIDE_SPLIT("side split"),
        NECK("neck");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
