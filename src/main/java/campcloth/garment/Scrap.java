package campcloth.garment;

/** A scrap of cloth for a small piece. */
public final class Scrap {

    /** Name of the small piece that faces the neck of a garment for the upper body. */
    public static final String FACING = "facing";

    private static final double SPARE_CM = 2;
    private static final double STEP_CM = 10;

    private Scrap() {}

    /** Side of a scrap for a piece so long: {@value #SPARE_CM} cm spare, in steps of {@value #STEP_CM} cm. */
    public static double sideCm(double pieceCm) {
        return STEP_CM * Math.ceil((pieceCm + SPARE_CM) / STEP_CM);
    }
}
