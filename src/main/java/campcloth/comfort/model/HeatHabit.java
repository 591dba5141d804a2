package campcloth.comfort.model;

/**
 * How far a body is used to heat, from the published {@link TwoNode} body (0) to one that days of work in the heat have made
 * used to it (1).
 *
 * <p>Sweating and skin blood flow begin at a core temperature lower by up to 0.3 K: six days lowered the threshold of sweating by
 * 0.15 K and the resting core by 0.21 K (Cotter, Patterson and Taylor 1997), eight days the core temperature at its onset by 0.49
 * K, 0.19 K of them by the work alone ({@code sweating-acclimation-conditioning}), both abstracts read. The 0.3 K are a choice of the project
 * between them. The gain of sweating stays as it is, as both found it, or nearly.
 *
 * <p>The body can sweat a quarter more, and its skin can grow wetter, 1.0 against 0.85 (ISO 7933, read second-hand). That the
 * ratio of the two is put on the published model's own greatest wettedness is a choice of the project.
 *
 * <p>Not a state of health and no promise: who is used to heat can fall ill of it too.
 *
 * @param share 0 to 1
 */
public record HeatHabit(double share) {

    /** The published body. */
    public static final HeatHabit NONE = new HeatHabit(0);

    private static final double ONSET_K = 0.3;
    private static final double MORE_SWEAT = 0.25;
    private static final double WETTEST = 1.0;
    private static final double WETTEST_UNUSED = 0.85;

    public HeatHabit {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException(share + " is no share");
        }
    }

    /** Core temperature above which the body flushes and sweats, degrees Celsius; it starts there. */
    double neutralCoreC() {
        return TwoNode.NEUTRAL_CORE_C - share * ONSET_K;
    }

    /** The most that it can sweat, where one not used to heat can sweat so much. */
    double mostSweat(double unused) {
        return unused * (1 + share * MORE_SWEAT);
    }

    /** The greatest share of its skin that can be wet, where that of one not used to heat is so much. */
    double wettest(double unused) {
        return Math.min(1, unused * (1 + share * (WETTEST / WETTEST_UNUSED - 1)));
    }
}
