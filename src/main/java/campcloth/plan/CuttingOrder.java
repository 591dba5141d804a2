package campcloth.plan;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import campcloth.garment.Measurements;
import campcloth.garment.Options;
import java.util.List;
import java.util.Optional;

/**
 * What is to be cut from one cloth.
 *
 * @param cloth the cloth
 * @param garments the garments, each line for one wearer
 * @param remnantLengthCm length of a piece that is at hand, as it lies there, where there is one
 * @param fold how the cloth may lie
 * @param shopStepCm what the shop rounds a length up to
 * @param particulars what most orders do without
 */
public record CuttingOrder(
        ClothToCut cloth,
        List<Line> garments,
        Optional<Double> remnantLengthCm,
        Fold fold,
        double shopStepCm,
        Particulars particulars) {

    /** What shops usually round up to. */
    public static final double USUAL_STEP_CM = 10;

    /** Bought on top of what the layout takes. */
    static final double SQUARING_CM = 2;

    private static final Range REMNANT = new Range("remnantLengthCm", 1, 100_000, "cm");
    private static final Range STEP = new Range("shopStepCm", 0.1, 100, "cm");
    private static final int MOST_LINES = 50;

    /**
     * Some garments alike for one wearer.
     *
     * @param design key of the design
     * @param count how many
     * @param wearer the measurements
     * @param options what was chosen
     */
    public record Line(String design, int count, Measurements wearer, Options options) {

        private static final Range COUNT = new Range("count", 1, 100, "garments");

        public Line {
            COUNT.check(count);
        }

        Line with(Options others) {
            return new Line(design, count, wearer, others);
        }
    }

    public CuttingOrder {
        garments = List.copyOf(garments);
        if (garments.isEmpty() || garments.size() > MOST_LINES) {
            throw Refused.of(
                    "garments", "has " + garments.size() + " entries", "give from 1 to " + MOST_LINES + " garments");
        }
        remnantLengthCm.ifPresent(REMNANT::check);
        STEP.check(shopStepCm);
    }

    /** Without particulars. */
    public CuttingOrder(
            ClothToCut cloth, List<Line> garments, Optional<Double> remnantLengthCm, Fold fold, double shopStepCm) {
        this(cloth, garments, remnantLengthCm, fold, shopStepCm, Particulars.USUAL);
    }

    /** One garment, no remnant, any fold, usual rounding. */
    public static CuttingOrder of(ClothToCut cloth, Line... garments) {
        return new CuttingOrder(cloth, List.of(garments), Optional.empty(), Fold.ANY, USUAL_STEP_CM);
    }

    CuttingOrder with(ClothToCut other) {
        return new CuttingOrder(other, garments, remnantLengthCm, fold, shopStepCm, particulars);
    }

    CuttingOrder with(List<Line> others) {
        return new CuttingOrder(cloth, others, remnantLengthCm, fold, shopStepCm, particulars);
    }

    /**
     * What to buy for a length as cut: {@value #SQUARING_CM} cm more than it takes, for squaring the cut ends (common
     * practice, no source), rounded up to what the shop cuts.
     */
    double buyLengthCm(double cutLengthCm) {
        return roundedUpCm(cloth.boughtLengthCm(cutLengthCm) + SQUARING_CM);
    }

    /** Rounded up to what the shop cuts. */
    double roundedUpCm(double lengthCm) {
        double steps = Math.ceil((lengthCm - ROUNDING_CM) / shopStepCm);
        return steps * shopStepCm;
    }

    private static final double ROUNDING_CM = 1e-6;
}
