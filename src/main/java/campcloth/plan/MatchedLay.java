package campcloth.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A layout for stripes and checks: every piece lies as drawn with its lower edge on the same line of the pattern, so that
 * pieces match along a seam from the hem up, and with its middle on the same stripe, so that both sides look alike. Pieces stand
 * in rows, the tallest first; each row begins where the repeat does. The repeat shrinks with the cloth.
 *
 * <p>It is a plain way of matching, not the shortest. Sleeves match each other and meet the pattern at their cuffs; that they
 * carry the body's line on at the armhole is not looked for. A pattern that is not its own mirror image cannot match on both
 * sides.
 */
final class MatchedLay {

    private static final double TOUCH_CM = 1e-9;

    private record Copy(CutPieces.Cut cut, int number) {

        double heightCm() {
            return cut.outline().heightCm();
        }

        double widthCm() {
            return cut.outline().widthCm();
        }
    }

    /** Pieces side by side. */
    private static final class Row {

        private final double yCm;
        private double endCm;

        private Row(double yCm) {
            this.yCm = yCm;
        }
    }

    private final double usableWidthCm;
    private final Optional<Double> alongCm;
    private final Optional<Double> acrossCm;

    private MatchedLay(CuttingOrder order) {
        ClothToCut cloth = order.cloth();
        Repeat repeat = order.particulars().repeat();
        usableWidthCm = cloth.usableWidthCm();
        alongCm = repeat.lengthCm().map(cloth::cutLengthCm);
        acrossCm = repeat.widthCm().map(cm -> cm * cloth.usableWidthCm() / cloth.nominalWidthCm());
    }

    /** Empty where the cloth has no pattern, or a piece finds no place with its middle on a stripe. */
    static Optional<Matched> of(CuttingOrder order, CutPieces pieces, double unmatchedBuyCm) {
        if (order.particulars().repeat().isNone()) {
            return Optional.empty();
        }
        MatchedLay matching = new MatchedLay(order);
        return matching.lay(pieces).map(lay -> matching.matched(order, lay, unmatchedBuyCm));
    }

    private Matched matched(CuttingOrder order, Lay lay, double unmatchedBuyCm) {
        double buyCm = Math.max(unmatchedBuyCm, order.buyLengthCm(lay.lengthCm()));
        double extraCm = buyCm - unmatchedBuyCm;
        return new Matched(
                alongCm,
                acrossCm,
                lay.lengthCm(),
                buyCm,
                extraCm,
                order.cloth().price().map(price -> price.times(extraCm / 100)),
                lay.pieces());
    }

    private Optional<Lay> lay(CutPieces pieces) {
        List<Copy> copies = new ArrayList<>();
        pieces.cuts().forEach(cut -> {
            for (int number = 1; number <= cut.count(); number++) {
                copies.add(new Copy(cut, number));
            }
        });
        copies.sort(Comparator.comparingDouble(copy -> -copy.heightCm()));
        List<Row> rows = new ArrayList<>();
        List<PlacedPiece> placed = new ArrayList<>();
        double lengthCm = 0;
        for (Copy copy : copies) {
            Optional<Row> row = rows.stream().filter(r -> takes(r, copy)).findFirst();
            if (row.isEmpty()) {
                Row fresh = new Row(onRepeat(lengthCm, alongCm));
                if (!takes(fresh, copy)) {
                    return Optional.empty();
                }
                rows.add(fresh);
                row = Optional.of(fresh);
                lengthCm = fresh.yCm + copy.heightCm();
            }
            placed.add(placed(row.get(), copy));
        }
        return Optional.of(new Lay(lengthCm, placed));
    }

    private boolean takes(Row row, Copy copy) {
        return leftCm(row, copy) + copy.widthCm() <= usableWidthCm + TOUCH_CM;
    }

    /** Left edge of the next piece of the row, its middle on a stripe. */
    private double leftCm(Row row, Copy copy) {
        double half = copy.widthCm() / 2;
        return onRepeat(row.endCm + half, acrossCm) - half;
    }

    private static double onRepeat(double cm, Optional<Double> repeatCm) {
        return repeatCm.map(repeat -> Math.ceil((cm - TOUCH_CM) / repeat) * repeat)
                .orElse(cm);
    }

    private PlacedPiece placed(Row row, Copy copy) {
        double x = leftCm(row, copy);
        row.endCm = x + copy.widthCm();
        boolean mirrored = copy.cut.pair() && copy.number % 2 == 0;
        return new PlacedPiece(
                copy.cut.name(),
                copy.number,
                x,
                row.yCm,
                false,
                mirrored,
                copy.cut.outline().lying(false, mirrored, x, row.yCm).points());
    }
}
