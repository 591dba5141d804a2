package campcloth.layout.search;

/**
 * The spots to which a shape is held, in cm: its lower left corner lies at a phase beyond a whole number of steps, across and
 * along. A step of 0 leaves it free in that sense.
 */
public record Held(double stepX, double phaseX, double stepY, double phaseY) {

    public static final Held FREE = new Held(0, 0, 0, 0);

    private static final double ROUNDING = 1e-9;

    boolean isFree() {
        return stepX == 0 && stepY == 0;
    }

    /** Number of the first held place at or beyond a value. */
    static double numberFrom(double step, double phase, double value) {
        return Math.ceil((value - phase - ROUNDING) / step);
    }

    /** Number of the last held place at or before a value. */
    static double numberUpTo(double step, double phase, double value) {
        return Math.floor((value - phase + ROUNDING) / step);
    }

    /** Whether some held place lies across the cloth between 0 and the room that a shape has. */
    public boolean fitsAcross(double room) {
        return stepX == 0 || numberFrom(stepX, phaseX, 0) <= numberUpTo(stepX, phaseX, room);
    }

    /** The first held place across at or beyond 0. */
    public double firstAcross() {
        return stepX == 0 ? 0 : Math.max(0, phaseX + stepX * numberFrom(stepX, phaseX, 0));
    }

    /** The first held place along at or beyond a height. */
    public double firstAlong(double from) {
        return stepY == 0 ? from : Math.max(from, phaseY + stepY * numberFrom(stepY, phaseY, from));
    }

    boolean matches(Held other, double within) {
        return stepX == other.stepX
                && stepY == other.stepY
                && Math.abs(phaseX - other.phaseX) <= within
                && Math.abs(phaseY - other.phaseY) <= within;
    }
}
