package campcloth.errand;

import static campcloth.figure.Words.number;

import campcloth.figure.Figure;

/** Figures in words, with interval, how they are known and their source. */
final class KnownAs {

    private KnownAs() {}

    /** Such as {@code 6 % (2 to 9, estimated, source estimate-shrinkage)}. */
    static String words(Figure figure, String unit) {
        String spread =
                figure.low() < figure.high() ? number(figure.low()) + " to " + number(figure.high()) + ", " : "";
        return number(figure.value()) + " " + unit + " (" + spread + basis(figure) + ", source " + figure.source()
                + ")";
    }

    private static String basis(Figure figure) {
        return switch (figure.basis()) {
            case MEASURED -> "measured";
            case DECLARED -> "as its seller or label says";
            case TYPICAL -> "typical of such cloth";
            case ESTIMATED -> "estimated";
        };
    }
}
