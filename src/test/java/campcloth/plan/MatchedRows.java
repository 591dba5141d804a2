package campcloth.plan;

import campcloth.layout.Repeat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The plain way to match a pattern: pieces in rows, the tallest first, each row beginning where the repeat does, middles on a
 * stripe. A good search takes no more cloth.
 */
final class MatchedRows {
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

    private MatchedRows(ClothToCut cloth, Repeat repeat) {
        usableWidthCm = cloth.usableWidthCm();
        alongCm = repeat.lengthCm().map(cloth::cutLengthCm);
        acrossCm = repeat.widthCm().map(cm -> cm * cloth.usableWidthCm() / cloth.nominalWidthCm());
    }

    static Optional<Lay> of(CuttingOrder order, CutPieces pieces) {
        return order.particulars().repeat().flatMap(repeat -> new MatchedRows(order.cloth(), repeat).lay(pieces));
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
