package campcloth.layout;

import campcloth.figure.Range;

/**
 * Lines at which the pattern of the cloth repeats.
 *
 * @param firstCm where the first lies, from the cut edge or from the left edge
 * @param everyCm the repeat
 * @param along whether the lines run along the cloth (lengthwise stripes) rather than across it
 */
public record Stripes(double firstCm, double everyCm, boolean along) {

    private static final Range FIRST = new Range("firstCm", 0, 100_000, "cm");
    private static final Range EVERY = new Range("everyCm", 0.1, 1_000, "cm");

    public Stripes {
        FIRST.check(firstCm);
        EVERY.check(everyCm);
    }
}
