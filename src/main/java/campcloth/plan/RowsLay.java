package campcloth.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The pieces as the rule of thumb has them, with their allowances: alike pieces abreast as often as the cloth is wide, row
 * behind row, the sleeves behind the body. A real layout, so that it tells whether the length by the rule holds the pieces at
 * all; seldom a short one.
 */
final class RowsLay {

    private static final double TOUCH_CM = 1e-9;

    private record Size(double widthCm, double heightCm) {}

    private record Copy(CutPieces.Cut cut, int number) {}

    private RowsLay() {}

    static Lay of(double usableWidthCm, CutPieces pieces) {
        List<PlacedPiece> placed = new ArrayList<>();
        double y = 0;
        for (Map.Entry<Size, List<Copy>> alike : alike(pieces).entrySet()) {
            Size size = alike.getKey();
            int abreast = Math.max(1, (int) Math.floor((usableWidthCm + TOUCH_CM) / size.widthCm));
            List<Copy> copies = alike.getValue();
            for (int i = 0; i < copies.size(); i++) {
                placed.add(lying(copies.get(i), i % abreast * size.widthCm, y + i / abreast * size.heightCm));
            }
            y += (copies.size() + abreast - 1) / abreast * size.heightCm;
        }
        return new Lay(y, placed);
    }

    private static Map<Size, List<Copy>> alike(CutPieces pieces) {
        Map<Size, List<Copy>> alike = new LinkedHashMap<>();
        for (CutPieces.Cut cut : pieces.cuts()) {
            Size size = new Size(cut.outline().widthCm(), cut.outline().heightCm());
            List<Copy> copies = alike.computeIfAbsent(size, none -> new ArrayList<>());
            for (int number = 1; number <= cut.count(); number++) {
                copies.add(new Copy(cut, number));
            }
        }
        return alike;
    }

    private static PlacedPiece lying(Copy copy, double xCm, double yCm) {
        boolean mirrored = copy.cut.pair() && copy.number % 2 == 0;
        return new PlacedPiece(
                copy.cut.name(),
                copy.number,
                xCm,
                yCm,
                false,
                mirrored,
                copy.cut.outline().lying(false, mirrored, xCm, yCm).points());
    }
}
