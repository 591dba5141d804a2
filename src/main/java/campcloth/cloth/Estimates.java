package campcloth.cloth;

/** Estimates for the figures that nobody measured. */
public final class Estimates {

    private Estimates() {}

    public static Cloth complete(Cloth cloth) {
        return cloth;
    }
}
