package campcloth.layout.drawing;

import campcloth.figure.Canvas;
import campcloth.figure.TextWidth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is cut, by number, with the measures that found no room in the picture; in two columns, over several pages. */
final class CutList {

    private static final double SIZE_MM = Document.LEAST_TEXT_MM;
    private static final double LINE_MM = SIZE_MM * 1.3;
    private static final double BETWEEN_MM = 6;
    private static final int COLUMNS = 2;

    private final List<List<String>> rows = new ArrayList<>();
    private final double columnMm;
    private int next;

    CutList(List<Drawn> parts, Map<Integer, Set<String>> untold, double widthMm) {
        columnMm = (widthMm - BETWEEN_MM) / COLUMNS;
        for (Drawn part : parts) {
            Set<String> measures = untold.getOrDefault(part.number(), Set.of());
            String words = part.sentence() + (measures.isEmpty() ? "" : "; corners at " + String.join(", ", measures));
            rows.add(TextWidth.lines(words, SIZE_MM, columnMm));
        }
    }

    boolean isDone() {
        return next == rows.size();
    }

    /** How high it would be in columns of equal height. */
    double heightMm() {
        int lines = rows.stream().mapToInt(List::size).sum();
        int longest = rows.stream().mapToInt(List::size).max().orElse(0);
        return (lines / COLUMNS + longest + 1) * LINE_MM;
    }

    /** Writes as many rows as there is room for, at least one; gives where they end. */
    double draw(Canvas canvas, double topMm, double heightMm) {
        canvas.open("cut-list");
        double lowest = topMm;
        int before = next;
        for (int column = 0; column < COLUMNS; column++) {
            double y = topMm;
            double x = column * (columnMm + BETWEEN_MM);
            while (!isDone() && (next == before || y + rows.get(next).size() * LINE_MM <= topMm + heightMm)) {
                for (String line : rows.get(next)) {
                    y += LINE_MM;
                    canvas.text(x, y, SIZE_MM, "start", line);
                }
                next++;
            }
            lowest = Math.max(lowest, y);
        }
        canvas.close();
        return lowest + 1;
    }
}
