package campcloth.event;

/**
 * A fire by what people call it, and the heat it is counted as where nobody gives a figure. Project choices, from the wood burnt in
 * an hour (about 5, 14, 28 and 140 kg) at about 13 MJ/kg; that figure is from memory, no source, and no measured camp fire was
 * found. A fire of this name can be half as large or twice.
 */
public enum FireKind {
    COOKING_FIRE("a cooking fire", 20),
    CAMPFIRE("a campfire", 50),
    LARGE_FIRE("a large fire", 100),
    BONFIRE("a bonfire", 500);

    private final String words;
    private final double usualKw;

    FireKind(String words, double usualKw) {
        this.words = words;
        this.usualKw = usualKw;
    }

    /** For sentences, with its article. */
    public String words() {
        return words;
    }

    /** Heat release it is counted as, kW. */
    public double usualKw() {
        return usualKw;
    }
}
