package campcloth.cloth;

/** How the threads, or the fibres, are bound into cloth. */
public enum Weave {
    OPEN_PLAIN("open plain weave"),
    PLAIN("plain weave"),
    TIGHT_PLAIN("tight plain weave"),
    TWILL("twill"),
    SATIN("satin"),
    /** Woven with a cut or looped pile: velvet, plush. */
    PILE("pile weave"),
    JERSEY("jersey knit"),
    /** Knitted and raised on one or both sides. */
    FLEECE("fleece knit"),
    /** Long pile on a backing. */
    FUR("long pile"),
    FELT("felt");

    private final String words;

    Weave(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Whether fibres stand out of the face by the way it is made; such cloth has an up and a down. */
    public boolean isPile() {
        return this == PILE || this == FLEECE || this == FUR;
    }

    public boolean isKnit() {
        return this == JERSEY || this == FLEECE;
    }
}
