package campcloth.layout;

import campcloth.layout.drawing.CardPage;
import java.util.List;

/**
 * A page of A4 to measure with: a square in true size to cut around, a length to check the printer by, a sketch of a marked piece,
 * a table to fill in.
 *
 * @param title heading
 * @param intro sentences under it
 * @param squareCm side of the square, at most 10 cm
 * @param pieceCm side of the marked piece in the sketch
 * @param apartCm how far the marks of a pair lie apart
 * @param besideSquare sentences beside the square
 * @param heads heads of the table's columns, the first for the names of the rows
 * @param rows names of the rows
 * @param blanks what else to write down, a line for each
 * @param foot sentences at the foot
 */
public record MeasuringCard(
        String title,
        List<String> intro,
        double squareCm,
        double pieceCm,
        double apartCm,
        List<String> besideSquare,
        List<String> heads,
        List<String> rows,
        List<String> blanks,
        List<String> foot) {

    public MeasuringCard {
        intro = List.copyOf(intro);
        besideSquare = List.copyOf(besideSquare);
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
        blanks = List.copyOf(blanks);
        foot = List.copyOf(foot);
    }

    /** The page as SVG, one unit to a mm of paper. */
    public String svg() {
        return CardPage.of(this);
    }
}
