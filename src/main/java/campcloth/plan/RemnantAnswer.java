package campcloth.plan;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.layout.Effort;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Whether a piece of cloth at hand is enough, and if not, which changes make it so. Each change named was laid out and
 * fits; a change that is not named may still fit in a better layout, unless the bound rules it out.
 */
final class RemnantAnswer {

    private static final double TOUCH_CM = 1e-6;
    private static final Effort QUICK = new Effort(0.05, 1);
    private static final int[] SHORTER_BY_CM = {5, 10, 15, 20, 30};
    private static final int MOST_PIECES_TO_TRY = 60;

    private final CuttingOrder order;
    private final CuttingPlanner.Laid laid;

    RemnantAnswer(CuttingOrder order, CuttingPlanner.Laid laid) {
        this.order = order;
        this.laid = laid;
    }

    Optional<CuttingPlan.Remnant> answer() {
        return order.remnantLengthCm().map(this::answerFor);
    }

    private CuttingPlan.Remnant answerFor(double remnantCm) {
        double lengthCm = order.cloth().cutLengthCm(remnantCm);
        double neededCm = laid.chosen().lengthCm();
        String has =
                "it gives " + Words.fixed(lengthCm, 1) + " cm" + (order.cloth().prewash() ? " after the wash" : "")
                        + ", the layout takes " + Words.fixed(neededCm, 1) + " cm";
        if (neededCm <= lengthCm + TOUCH_CM) {
            return new CuttingPlan.Remnant(lengthCm, true, 0, "It is enough: " + has + ".", List.of());
        }
        String certain = laid.lowerBoundCm() > lengthCm + TOUCH_CM
                ? " and no layout can take less than " + Words.fixed(laid.lowerBoundCm(), 1) + " cm"
                : "; no shorter layout was found, which does not rule one out";
        return new CuttingPlan.Remnant(
                lengthCm, false, neededCm - lengthCm, "It is not enough: " + has + certain + ".", wouldHelp(lengthCm));
    }

    private List<String> wouldHelp(double lengthCm) {
        List<String> help = new ArrayList<>();
        if (laid.chosen().pieces().size() > MOST_PIECES_TO_TRY) {
            return help;
        }
        if (laid.open().lengthCm() <= lengthCm + TOUCH_CM) {
            help.add("Cut it open in one layer: that takes "
                    + Words.fixed(laid.open().lengthCm(), 1) + " cm.");
        }
        TooNarrow.narrower(order)
                .filter(narrower -> fits(narrower.order(), lengthCm))
                .ifPresent(narrower -> help.add(sentence(narrower.how())));
        addShorter(help, lengthCm, "lengthCm", "the body", this::bodyCm);
        addShorter(help, lengthCm, "sleeveLengthCm", "the sleeves", this::sleeveCm);
        return help;
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }

    private void addShorter(
            List<String> help,
            double lengthCm,
            String measurement,
            String what,
            ToDoubleFunction<CuttingOrder.Line> presentCm) {
        for (int shorterCm : SHORTER_BY_CM) {
            CuttingOrder shorter = order.with(order.garments().stream()
                    .map(line -> new CuttingOrder.Line(
                            line.design(),
                            line.count(),
                            line.wearer().with(measurement, presentCm.applyAsDouble(line) - shorterCm),
                            line.options()))
                    .toList());
            if (fits(shorter, lengthCm)) {
                help.add("Make " + what + " " + shorterCm + " cm shorter.");
                return;
            }
        }
    }

    private double bodyCm(CuttingOrder.Line line) {
        return madeUp(line).garment().lengthRule().lengthCm();
    }

    private double sleeveCm(CuttingOrder.Line line) {
        return madeUp(line).garment().lengthRule().sleeveLengthCm();
    }

    private CutPieces.MadeUp madeUp(CuttingOrder.Line line) {
        return CutPieces.of(order.with(List.of(line))).garments().get(0);
    }

    /** Whether a changed order is possible at all and lies on the remnant. */
    private static boolean fits(CuttingOrder changed, double lengthCm) {
        try {
            CutPieces pieces = CutPieces.of(changed);
            return !TooNarrow.isTooNarrow(changed, pieces)
                    && CuttingPlanner.laid(changed, pieces, QUICK).chosen().lengthCm() <= lengthCm + TOUCH_CM;
        } catch (Refused notPossible) {
            return false;
        }
    }
}
