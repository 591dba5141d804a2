package campcloth.cloth;

/** What was done to the cloth after weaving that changes its figures. */
public enum Finish {
    NONE("as woven"),
    /** Washed or softened by the maker: most of the shrinkage is out. */
    WASHED("washed"),
    /** Compressively shrunk. */
    PRESHRUNK("pre-shrunk"),
    MERCERISED("mercerised"),
    BRUSHED("brushed"),
    /** Milled: felted until the weave closes. */
    FULLED("fulled"),
    CALENDERED("calendered"),
    WAXED("waxed"),
    /** Covered with a film of polymer. */
    COATED("coated");

    private final String words;

    Finish(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Whether a film or wax closes the pores. */
    public boolean closesPores() {
        return this == WAXED || this == COATED;
    }
}
