package campcloth.plan;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.Design;
import campcloth.garment.Designs;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Cloth that is too narrow for a piece: which piece, by how much, and what would help. */
final class TooNarrow {

    private static final double TOUCH_CM = 1e-9;

    private TooNarrow() {}

    static boolean isTooNarrow(CuttingOrder order, CutPieces pieces) {
        return pieces.widestCm() > order.cloth().usableWidthCm() + TOUCH_CM;
    }

    static void check(CuttingOrder order, CutPieces pieces) {
        if (!isTooNarrow(order, pieces)) {
            return;
        }
        CutPieces.Cut widest = pieces.cuts().stream()
                .max((a, b) -> Double.compare(a.outline().widthCm(), b.outline().widthCm()))
                .orElseThrow();
        ClothToCut cloth = order.cloth();
        throw Refused.of(
                "cloth.widthCm",
                "the piece '" + widest.name() + "' is "
                        + Words.fixed(widest.outline().widthCm(), 1)
                        + " cm wide with its allowances, the cloth gives " + Words.fixed(cloth.usableWidthCm(), 1)
                        + " cm between the selvedges" + (cloth.isWashedFirst() ? " after the wash" : ""),
                String.join("; or ", help(order, pieces)));
    }

    private static List<String> help(CuttingOrder order, CutPieces pieces) {
        List<String> help = new ArrayList<>();
        double wideEnoughCm = Math.ceil(order.cloth().widthForUsableCm(pieces.widestCm()) - TOUCH_CM);
        help.add("take cloth at least " + Words.fixed(wideEnoughCm, 0) + " cm wide");
        narrower(order).ifPresent(narrower -> {
            CutPieces narrowPieces = CutPieces.of(narrower.order());
            if (!isTooNarrow(narrower.order(), narrowPieces)) {
                help.add(narrower.how() + ", the widest piece is then " + Words.fixed(narrowPieces.widestCm(), 1)
                        + " cm");
            }
        });
        if (order.garments().stream().allMatch(TooNarrow::takesGores)) {
            help.add("cut the piece narrower and set gores into its sides, each with its own seam allowances");
        }
        return help;
    }

    private static boolean takesGores(CuttingOrder.Line line) {
        return Designs.named(line.design()).options().stream()
                .anyMatch(option -> option.key().equals(Design.SIDE_GORES));
    }

    /**
     * The same order with narrower pieces.
     *
     * @param how what is done, each way once
     */
    record Narrower(CuttingOrder order, String how) {}

    /** The order with every garment cut narrower whose design knows a way; empty where none does. */
    static Optional<Narrower> narrower(CuttingOrder order) {
        Set<String> ways = new LinkedHashSet<>();
        List<CuttingOrder.Line> lines = new ArrayList<>();
        for (CuttingOrder.Line line : order.garments()) {
            Optional<Design.Narrower> narrow = Designs.named(line.design()).narrower(line.options());
            narrow.ifPresent(way -> ways.add(way.how()));
            lines.add(narrow.map(way -> line.with(way.options())).orElse(line));
        }
        return ways.isEmpty()
                ? Optional.empty()
                : Optional.of(new Narrower(order.with(lines), String.join(" and ", ways)));
    }

    /** Cloth that does not take the pieces when it is folded as asked. */
    static Refused toFold(CuttingOrder order) {
        return Refused.of(
                "fold",
                "folded so, the cloth of " + Words.fixed(order.cloth().usableWidthCm(), 1)
                        + " cm between the selvedges does not take all pieces",
                "cut it open with the fold NONE, or leave the choice with ANY");
    }
}
