package campcloth.figure;

/**
 * A whole SVG picture on white paper, with a title and a description for whoever does not see it. It stands by itself: nothing
 * outside is referred to, nothing in it moves or runs.
 */
public final class SvgDocument {

    /** Lines that rise to the right. */
    public static final String RISING = "url(#rising)";

    /** Lines that fall to the right. */
    public static final String FALLING = "url(#falling)";

    /** Lines both ways. */
    public static final String CROSSED = "url(#crossed)";

    /** Level lines. */
    public static final String LEVEL = "url(#level)";

    /** Dots. */
    public static final String DOTS = "url(#dots)";

    private static final String FACE = "Arial, Helvetica, 'Liberation Sans', sans-serif";

    private final String title;
    private final String description;
    private final StringBuilder defs = new StringBuilder();

    public SvgDocument(String title, String description) {
        this.title = title;
        this.description = description;
    }

    /** With a hatching of its own, from an SVG path within a square. */
    public SvgDocument hatched(String id, double side, String data, String stroke, double weight) {
        return patterned(
                id,
                side,
                "<path d=\"" + data + "\" stroke=\"" + stroke + "\" stroke-width=\"" + Canvas.n(weight)
                        + "\" fill=\"none\"/>");
    }

    /** With the hatchings named in this class, in squares of the side given. */
    public SvgDocument hatchings(double side) {
        String s = Canvas.n(side);
        String half = Canvas.n(side / 2);
        double weight = side / 8;
        return hatched("rising", side, "M0 " + s + "L" + s + " 0", "#000", weight)
                .hatched("falling", side, "M0 0L" + s + " " + s, "#000", weight)
                .hatched("crossed", side, "M0 " + half + "H" + s + "M" + half + " 0V" + s, "#000", weight)
                .hatched("level", side, "M0 " + half + "H" + s, "#000", weight)
                .patterned(
                        "dots",
                        side,
                        "<circle cx=\"" + half + "\" cy=\"" + half + "\" r=\"" + Canvas.n(side / 9) + "\"/>");
    }

    private SvgDocument patterned(String id, double side, String drawn) {
        String s = Canvas.n(side);
        defs.append("<pattern id=\"" + id + "\" width=\"" + s + "\" height=\"" + s
                + "\" patternUnits=\"userSpaceOnUse\">" + drawn + "</pattern>");
        return this;
    }

    /** The picture, as large as what it is put in. */
    public String of(double left, double top, double width, double height, String drawn) {
        return of(left, top, width, height, "", drawn);
    }

    /**
     * The picture.
     *
     * @param size width and height as attributes; empty where it is to fill what it is put in
     * @param drawn what a {@link Canvas} has drawn
     */
    public String of(double left, double top, double width, double height, String size, String drawn) {
        String place = " x=\"" + Canvas.n(left) + "\" y=\"" + Canvas.n(top) + "\"";
        String extent = Canvas.n(width) + " " + Canvas.n(height);
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"title desc\" viewBox=\""
                + Canvas.n(left) + " " + Canvas.n(top) + " " + extent + "\"" + size + " font-family=\"" + FACE
                + "\" fill=\"#000\" stroke-linejoin=\"round\">\n"
                + "<title id=\"title\">" + SvgText.of(title) + "</title>\n"
                + "<desc id=\"desc\">" + SvgText.of(description) + "</desc>\n"
                + (defs.isEmpty() ? "" : "<defs>" + defs + "</defs>\n")
                + "<rect" + place + " width=\"" + Canvas.n(width) + "\" height=\"" + Canvas.n(height)
                + "\" fill=\"#fff\"/>\n"
                + drawn + "</svg>\n";
    }
}
