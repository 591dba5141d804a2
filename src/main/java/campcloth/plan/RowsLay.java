package campcloth.plan;

import campcloth.garment.GarmentPiece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The pieces as the rule of thumb has them, with their allowances: garment by garment, alike pieces abreast as often as the
 * cloth is wide, row behind row, the sleeves behind the body. A real layout, so that it tells whether the length by the rule
 * holds the pieces at all; seldom a short one.
 */
final class RowsLay {

    private static final double TOUCH_CM = 1e-9;

    private record Size(double widthCm, double heightCm) {}

    private record Copy(CutPieces.MadeUp madeUp, GarmentPiece piece, int number) {}

    private RowsLay() {}

    static Lay of(double usableWidthCm, CutPieces pieces) {
        List<PlacedPiece> placed = new ArrayList<>();
        double y = 0;
        for (CutPieces.MadeUp madeUp : pieces.garments()) {
            for (Map.Entry<Size, List<Copy>> alike : alike(madeUp).entrySet()) {
                Size size = alike.getKey();
                int abreast = Math.max(1, (int) Math.floor((usableWidthCm + TOUCH_CM) / size.widthCm));
                List<Copy> copies = alike.getValue();
                for (int i = 0; i < copies.size(); i++) {
                    placed.add(lying(copies.get(i), i % abreast * size.widthCm, y + i / abreast * size.heightCm));
                }
                y += (copies.size() + abreast - 1) / abreast * size.heightCm;
            }
        }
        return new Lay(y, placed);
    }

    private static Map<Size, List<Copy>> alike(CutPieces.MadeUp madeUp) {
        Map<Size, List<Copy>> alike = new LinkedHashMap<>();
        for (GarmentPiece piece : madeUp.garment().pieces()) {
            Size size = new Size(piece.outline().widthCm(), piece.outline().heightCm());
            List<Copy> copies = alike.computeIfAbsent(size, none -> new ArrayList<>());
            for (int number = 1; number <= madeUp.copies(piece); number++) {
                copies.add(new Copy(madeUp, piece, number));
            }
        }
        return alike;
    }

    private static PlacedPiece lying(Copy copy, double xCm, double yCm) {
        boolean mirrored = copy.piece.pair() && copy.number % 2 == 0;
        return new PlacedPiece(
                copy.madeUp.nameOf(copy.piece),
                copy.number,
                xCm,
                yCm,
                false,
                mirrored,
                copy.piece.outline().lying(false, mirrored, xCm, yCm).points());
    }
}
