package campcloth.plan;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.Design;
import campcloth.garment.LengthRule;
import campcloth.garment.Saving;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Body panels that miss lying side by side by no more than {@value #NEAR_CM} cm of width, and what would bring them there:
 * narrower seam allowances, no less than {@value #LEAST_SEAM_CM} cm; a body that is narrower round; washing afterwards instead
 * of before, since allowances do not have to be cut from what the wash takes. Each way named was made up and laid out like
 * the order itself, and takes less cloth to buy; of the first two the smallest change that does is named. The limits are
 * project choices.
 */
final class NearMiss {

    static final double NEAR_CM = 4;
    static final double LEAST_SEAM_CM = 1.2;

    private static final double WIDEST_SEAM_CM = 4;
    private static final double MOST_NARROWER_CM = 8;
    private static final int MOST_PIECES_TO_TRY = 60;

    private final CuttingOrder order;
    private final CutPieces pieces;
    private final double buyLengthCm;
    private final Search search;

    NearMiss(CuttingOrder order, CutPieces pieces, double buyLengthCm, Search search) {
        this.order = order;
        this.pieces = pieces;
        this.buyLengthCm = buyLengthCm;
        this.search = search;
    }

    /** A change by so much that takes less to buy, and the pieces it makes. */
    private record Way(double byCm, CutPieces pieces, double buyLengthCm) {

        private String toBuy() {
            return Words.number(buyLengthCm) + " cm to buy";
        }
    }

    /** What is missing and what would do; empty where nothing is near or nothing helps. */
    Optional<String> note() {
        List<CutPieces.MadeUp> near =
                pieces.garments().stream().filter(this::isNear).toList();
        int copies = pieces.cuts().stream().mapToInt(CutPieces.Cut::count).sum();
        if (near.isEmpty() || copies > MOST_PIECES_TO_TRY) {
            return Optional.empty();
        }
        List<String> ways = ways();
        return ways.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        missing(near) + " This would do, laid out to try it: " + String.join("; or ", ways) + ".");
    }

    private boolean isNear(CutPieces.MadeUp madeUp) {
        LengthRule rule = madeUp.garment().lengthRule();
        double usableCm = order.cloth().usableWidthCm();
        return rule.rows(usableCm + NEAR_CM) < rule.rows(usableCm);
    }

    private String missing(List<CutPieces.MadeUp> near) {
        String whose = String.join(
                " and ",
                near.stream()
                        .map(CutPieces.MadeUp::label)
                        .filter(label -> !label.isEmpty())
                        .toList());
        DoubleSummaryStatistics missingCm = near.stream()
                .mapToDouble(m ->
                        m.garment().lengthRule().shortOfOneMoreCm(order.cloth().usableWidthCm()))
                .summaryStatistics();
        String least = Words.fixed(missingCm.getMin(), 1);
        String most = Words.fixed(missingCm.getMax(), 1);
        return "The body panels" + (whose.isEmpty() ? "" : " of " + whose) + " miss lying side by side by "
                + (least.equals(most) ? least : least + " to " + most) + " cm of width.";
    }

    private List<String> ways() {
        List<String> ways = new ArrayList<>();
        double[] seamsCm = DoubleStream.iterate(WIDEST_SEAM_CM, cm -> cm >= LEAST_SEAM_CM, NearMiss::tenthLess)
                .toArray();
        gentlest(seamsCm, this::withSeams)
                .ifPresent(way -> ways.add("seam allowances of " + Words.number(seamCm(way.pieces()))
                        + " cm instead of " + Words.number(seamCm(pieces)) + " (option " + Design.SEAM_ALLOWANCE + " "
                        + Words.number(way.byCm()) + "), " + way.toBuy()));
        double[] narrowerCm = DoubleStream.iterate(1, cm -> cm <= MOST_NARROWER_CM, cm -> cm + 1)
                .toArray();
        gentlest(narrowerCm, this::narrower)
                .ifPresent(
                        way -> ways.add("a body " + Words.number(way.byCm()) + " cm narrower round, " + way.toBuy()));
        if (order.cloth().isWashedFirst()) {
            gentlest(new double[] {0}, none -> order.with(order.cloth().washedAfterwards()))
                    .ifPresent(way -> ways.add("washing the garment afterwards instead of the cloth before, its pieces"
                            + " then cut larger, " + way.toBuy()));
        }
        return ways;
    }

    private static double tenthLess(double cm) {
        return Math.round(10 * cm - 1) / 10.0;
    }

    private CuttingOrder withSeams(double cm) {
        return changed(madeUp -> Changed.option(madeUp.line(), Design.SEAM_ALLOWANCE, cm));
    }

    private CuttingOrder narrower(double cm) {
        return changed(madeUp -> madeUp.garment().savings().stream()
                .filter(NearMiss::isOfTheBody)
                .findFirst()
                .map(saving -> Changed.smaller(madeUp.line(), saving, cm))
                .orElse(madeUp.line()));
    }

    private static boolean isOfTheBody(Saving saving) {
        return saving.kind() == Saving.Kind.NARROWER && saving.part().equals(Saving.BODY);
    }

    private CuttingOrder changed(Function<CutPieces.MadeUp, CuttingOrder.Line> change) {
        return Changed.each(order, pieces, madeUp -> isNear(madeUp) ? change.apply(madeUp) : madeUp.line());
    }

    /** Greatest seam allowance of the garments that are near, made up in these pieces. */
    private double seamCm(CutPieces made) {
        return IntStream.range(0, pieces.garments().size())
                .filter(i -> isNear(pieces.garments().get(i)))
                .mapToDouble(i -> made.garments().get(i).garment().sewing().seamAllowanceCm())
                .max()
                .orElseThrow();
    }

    /** The first change that lays panels side by side and takes less to buy; none after one that is refused. */
    private Optional<Way> gentlest(double[] byCm, DoubleFunction<CuttingOrder> changed) {
        int rows = rows(order, pieces);
        try {
            for (double by : byCm) {
                if (search.isStopped()) {
                    return Optional.empty();
                }
                CuttingOrder other = changed.apply(by);
                CutPieces made = CutPieces.of(other);
                int fewer = rows(other, made);
                if (fewer < rows && !TooNarrow.isTooNarrow(other, made)) {
                    rows = fewer;
                    double buyCm = other.buyLengthCm(
                            CuttingPlanner.laid(other, made, search).chosen().lengthCm());
                    if (buyCm < buyLengthCm) {
                        return Optional.of(new Way(by, made, buyCm));
                    }
                }
            }
        } catch (Refused notPossible) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    private static int rows(CuttingOrder order, CutPieces pieces) {
        return pieces.garments().stream()
                .mapToInt(m -> m.garment().lengthRule().rows(order.cloth().usableWidthCm()))
                .sum();
    }
}
