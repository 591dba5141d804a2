package campcloth.pages.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Lines of a sheet, of which paper has room for the first: on the screen all are shown, on paper it is said how many are left out.
 *
 * @param lines all of them, what matters most first
 */
public record PaperLines<T>(List<Line<T>> lines) {

    /** A line, and whether it is printed. */
    public record Line<T>(T it, boolean printed) {}

    public PaperLines {
        lines = List.copyOf(lines);
    }

    /**
     * The first is always printed, the others while they fit.
     *
     * @param text what a line says
     * @param most characters that there is room for
     */
    static <T> PaperLines<T> of(List<T> all, Function<T, String> text, int most) {
        List<Line<T>> lines = new ArrayList<>();
        int characters = 0;
        for (T one : all) {
            characters += text.apply(one).length();
            lines.add(new Line<>(one, lines.isEmpty() || characters <= most));
        }
        return new PaperLines<>(lines);
    }

    public long leftOut() {
        return lines.stream().filter(line -> !line.printed()).count();
    }
}
