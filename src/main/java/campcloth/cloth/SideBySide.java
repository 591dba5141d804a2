package campcloth.cloth;

import campcloth.figure.Refused;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cloths side by side, figure by figure. Nothing here adds the figures up: which of them matters is for the wearer and the
 * event. It knows no fire.
 *
 * @param cloths the cloths with their estimates, in the order asked
 * @param figures each figure of all of them
 */
public record SideBySide(List<Cloth> cloths, List<ComparedFigure> figures) {

    public static final int LEAST = 2;
    public static final int MOST = 12;

    public SideBySide {
        cloths = List.copyOf(cloths);
        figures = List.copyOf(figures);
    }

    public static SideBySide of(List<Cloth> asked) {
        if (asked.size() < LEAST || asked.size() > MOST) {
            throw Refused.of("cloths", "and ids name " + asked.size() + " in all", "compare 2 to 12 cloths");
        }
        List<Cloth> completed = asked.stream().map(Estimates::complete).toList();
        List<ComparedFigure> figures = Arrays.stream(ComparedFigure.Quantity.values())
                .map(quantity -> ComparedFigure.of(quantity, completed))
                .toList();
        return new SideBySide(completed, figures);
    }

    /** What the cloth at a place is clearly the best at, in words; empty where the intervals do not tell. */
    public List<String> bestAt(int place) {
        List<String> best = new ArrayList<>();
        figures.forEach(figure -> figure.bestAt(place).ifPresent(best::add));
        return best;
    }
}
