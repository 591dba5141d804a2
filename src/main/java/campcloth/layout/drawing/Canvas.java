package campcloth.layout.drawing;

import campcloth.figure.SvgText;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lines and words of an SVG picture in black on white, in mm from the upper left. */
final class Canvas {

    /** No letter is smaller on paper. */
    static final double LEAST_TEXT_MM = 2.5;

    static final String SOLID = "";
    static final String DASHED = "2 1";
    static final String DOTTED = "0.3 1";
    static final String FOLD = "6 1.2 1 1.2";

    private final StringBuilder svg = new StringBuilder();

    String drawn() {
        return svg.toString();
    }

    void open(String id, String title) {
        svg.append("<g id=\"").append(id).append("\"><title>").append(SvgText.of(title));
        svg.append("</title>\n");
    }

    void open(String id) {
        svg.append("<g id=\"").append(id).append("\">\n");
    }

    void close() {
        svg.append("</g>\n");
    }

    /** A line or several, from the data of an SVG path. */
    void path(CharSequence data, double weightMm, String dash) {
        if (data.isEmpty()) {
            return;
        }
        svg.append("<path d=\"").append(data).append("\" fill=\"none\" stroke=\"#000\" stroke-width=\"");
        svg.append(n(weightMm)).append('"');
        if (!dash.isEmpty()) {
            svg.append(" stroke-dasharray=\"").append(dash).append('"');
        }
        svg.append("/>\n");
    }

    void line(double fromX, double fromY, double toX, double toY, double weightMm, String dash) {
        path(segment(fromX, fromY, toX, toY), weightMm, dash);
    }

    static String segment(double fromX, double fromY, double toX, double toY) {
        return "M" + n(fromX) + " " + n(fromY) + "L" + n(toX) + " " + n(toY);
    }

    void area(CharSequence data, String fill) {
        svg.append("<path d=\"").append(data).append("\" fill=\"").append(fill).append("\"/>\n");
    }

    /** Dots where a path with no length begins: {@code M1 2Z}. */
    void dots(CharSequence data, double acrossMm) {
        if (!data.isEmpty()) {
            svg.append("<path d=\"").append(data).append("\" stroke=\"#000\" stroke-linecap=\"round\" stroke-width=\"");
            svg.append(n(acrossMm)).append("\"/>\n");
        }
    }

    void text(double x, double y, double sizeMm, String anchor, String words) {
        svg.append("<text x=\"" + n(x) + "\" y=\"" + n(y) + "\" font-size=\"" + n(sizeMm) + "\"");
        anchored(anchor);
        svg.append('>').append(SvgText.of(words)).append("</text>\n");
    }

    /** Words in two lines that are read as one. */
    void twoLines(double x, double y, double sizeMm, String upper, String lower) {
        svg.append("<text x=\"" + n(x) + "\" y=\"" + n(y) + "\" font-size=\"" + n(sizeMm) + "\">");
        svg.append(SvgText.of(upper)).append("<tspan x=\"" + n(x) + "\" dy=\"" + n(sizeMm) + "\">");
        svg.append(SvgText.of(lower)).append("</tspan></text>\n");
    }

    /** Words that keep clear of what lies under them. */
    void clearText(double x, double y, double sizeMm, String words) {
        svg.append("<text x=\"" + n(x) + "\" y=\"" + n(y) + "\" font-size=\"" + n(sizeMm)
                        + "\" text-anchor=\"middle\" stroke=\"#fff\" stroke-width=\"0.6\" paint-order=\"stroke\">")
                .append(SvgText.of(words))
                .append("</text>\n");
    }

    void ring(double x, double y, double radiusMm) {
        svg.append("<circle cx=\"" + n(x) + "\" cy=\"" + n(y) + "\" r=\"" + n(radiusMm)
                + "\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.25\"/>\n");
    }

    /** Words that run upwards. */
    void uprightText(double x, double y, double sizeMm, String anchor, String words) {
        svg.append(
                "<text transform=\"translate(" + n(x) + " " + n(y) + ")rotate(-90)\" font-size=\"" + n(sizeMm) + "\"");
        anchored(anchor);
        svg.append('>').append(SvgText.of(words)).append("</text>\n");
    }

    private void anchored(String anchor) {
        if (!anchor.equals("start")) {
            svg.append(" text-anchor=\"").append(anchor).append('"');
        }
    }

    /** To a hundredth of a mm, no trailing zeros. */
    static String n(double value) {
        BigDecimal rounded = new BigDecimal(value).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
