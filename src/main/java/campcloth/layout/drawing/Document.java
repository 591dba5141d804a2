package campcloth.layout.drawing;

import campcloth.figure.SvgText;

/** An SVG document in mm, to be seen as one picture with a title and a description. */
final class Document {

    private Document() {}

    /**
     * A picture.
     *
     * @param frame what part of the plane it shows
     * @param size width and height as attributes; empty where it is to fill what it is put in
     */
    static String of(String title, String description, Box frame, String size, Canvas canvas) {
        String x = Canvas.n(frame.left());
        String y = Canvas.n(frame.top());
        String width = Canvas.n(frame.width());
        String height = Canvas.n(frame.height());
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"title desc\" viewBox=\"" + x
                + " " + y + " " + width + " " + height + "\"" + size
                + " font-family=\"Arial, Helvetica, 'Liberation Sans', sans-serif\" fill=\"#000\""
                + " stroke-linejoin=\"round\">\n"
                + "<title id=\"title\">" + SvgText.of(title) + "</title>\n"
                + "<desc id=\"desc\">" + SvgText.of(description) + "</desc>\n"
                + "<defs><pattern id=\"left-over\" width=\"3\" height=\"3\" patternUnits=\"userSpaceOnUse\">"
                + "<path d=\"M0 3L3 0\" stroke=\"#999\" stroke-width=\"0.15\" fill=\"none\"/></pattern></defs>\n"
                + "<rect x=\"" + x + "\" y=\"" + y + "\" width=\"" + width + "\" height=\"" + height
                + "\" fill=\"#fff\"/>\n"
                + canvas.drawn() + "</svg>\n";
    }
}
