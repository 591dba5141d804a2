package campcloth.garment;

/**
 * A size of a garment that can be cut down where cloth is short.
 *
 * @param measurement key of the measurement that sets it
 * @param part what gets smaller, in words: {@code body}, {@code sleeves}
 * @param kind in which way
 * @param sizeCm what it is now
 */
public record Saving(String measurement, String part, Kind kind, double sizeCm) {

    /** The part whose panels lie side by side on the cloth or do not. */
    public static final String BODY = "body";

    /** The same size of two garments that are cut down alike: both parts named, the smaller size. */
    public Saving together(Saving other) {
        String parts = part.equals(other.part) ? part : part + " and " + other.part;
        return new Saving(measurement, parts, kind, Math.min(sizeCm, other.sizeCm));
    }

    /** The way in which a part gets smaller. */
    public enum Kind {
        SHORTER("shorter"),
        NARROWER("narrower");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
