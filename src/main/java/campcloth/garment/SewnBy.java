package campcloth.garment;

/** How a garment is sewn together. */
public enum SewnBy {
    MACHINE("by machine", 0.15),
    HAND("by hand", 0.35);

    private final String words;
    private final double waste;

    SewnBy(String words, double waste) {
        this.words = words;
        this.waste = waste;
    }

    public String words() {
        return words;
    }

    /**
     * Thread on top of what the stitches take, as a share of it. By machine common practice, no source (10 to 15 % in
     * industry); by hand project choice: of each length of about 50 cm some 13 cm stay in the needle and at its ends.
     */
    double waste() {
        return waste;
    }
}
