package campcloth.figure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Lines, areas and words of an SVG picture in black on white, from the upper left, in the unit of its frame. It writes
 * presentation attributes only, no style, and every word through {@link SvgText}.
 */
public final class Canvas {

    public static final String SOLID = "";
    public static final String DASHED = "2 1";
    public static final String DOTTED = "0.3 1";

    private final StringBuilder svg = new StringBuilder();

    public String drawn() {
        return svg.toString();
    }

    /** Lays over what is drawn what another has drawn. */
    public void add(Canvas above) {
        svg.append(above.svg);
    }

    public void open(String id, String title) {
        svg.append("<g id=\"").append(id).append("\"><title>").append(SvgText.of(title));
        svg.append("</title>\n");
    }

    public void open(String id) {
        svg.append("<g id=\"").append(id).append("\">\n");
    }

    public void close() {
        svg.append("</g>\n");
    }

    /** A line or several, from the data of an SVG path. */
    public void path(CharSequence data, double weight, String dash) {
        if (data.isEmpty()) {
            return;
        }
        svg.append("<path d=\"").append(data).append("\" fill=\"none\" stroke=\"#000\" stroke-width=\"");
        svg.append(n(weight)).append('"');
        if (!dash.isEmpty()) {
            svg.append(" stroke-dasharray=\"").append(dash).append('"');
        }
        svg.append("/>\n");
    }

    /** An area with an outline. */
    public void shape(CharSequence data, String fill, String stroke, double weight) {
        svg.append("<path d=\"").append(data).append("\" fill=\"").append(fill).append("\" stroke=\"");
        svg.append(stroke).append("\" stroke-width=\"").append(n(weight)).append("\"/>\n");
    }

    public void box(double x, double y, double width, double height, String fill, double weight) {
        svg.append("<rect x=\"" + n(x) + "\" y=\"" + n(y) + "\" width=\"" + n(width) + "\" height=\"" + n(height)
                + "\" fill=\"" + fill + "\" stroke=\"#000\" stroke-width=\"" + n(weight) + "\"/>\n");
    }

    public void disc(double x, double y, double radius, String fill, double weight, String dash) {
        svg.append("<circle cx=\"" + n(x) + "\" cy=\"" + n(y) + "\" r=\"" + n(radius) + "\" fill=\"" + fill
                + "\" stroke=\"#000\" stroke-width=\"" + n(weight) + "\"");
        if (!dash.isEmpty()) {
            svg.append(" stroke-dasharray=\"").append(dash).append('"');
        }
        svg.append("/>\n");
    }

    public void line(double fromX, double fromY, double toX, double toY, double weight, String dash) {
        path(segment(fromX, fromY, toX, toY), weight, dash);
    }

    public static String segment(double fromX, double fromY, double toX, double toY) {
        return "M" + n(fromX) + " " + n(fromY) + "L" + n(toX) + " " + n(toY);
    }

    public void area(CharSequence data, String fill) {
        svg.append("<path d=\"").append(data).append("\" fill=\"").append(fill).append("\"/>\n");
    }

    /** Dots where a path with no length begins: {@code M1 2Z}. */
    public void dots(CharSequence data, double across) {
        if (!data.isEmpty()) {
            svg.append("<path d=\"").append(data).append("\" stroke=\"#000\" stroke-linecap=\"round\" stroke-width=\"");
            svg.append(n(across)).append("\"/>\n");
        }
    }

    public void text(double x, double y, double size, String anchor, String words) {
        svg.append("<text x=\"" + n(x) + "\" y=\"" + n(y) + "\" font-size=\"" + n(size) + "\"");
        anchored(anchor);
        svg.append('>').append(SvgText.of(words)).append("</text>\n");
    }

    public void boldText(double x, double y, double size, String anchor, String words) {
        svg.append("<text x=\"" + n(x) + "\" y=\"" + n(y) + "\" font-size=\"" + n(size) + "\" font-weight=\"bold\"");
        anchored(anchor);
        svg.append('>').append(SvgText.of(words)).append("</text>\n");
    }

    /** Words in two lines that are read as one. */
    public void twoLines(double x, double y, double size, String upper, String lower) {
        svg.append("<text x=\"" + n(x) + "\" y=\"" + n(y) + "\" font-size=\"" + n(size) + "\">");
        svg.append(SvgText.of(upper)).append("<tspan x=\"" + n(x) + "\" dy=\"" + n(size) + "\">");
        svg.append(SvgText.of(lower)).append("</tspan></text>\n");
    }

    /** Words that keep clear of what lies under them. */
    public void clearText(double x, double y, double size, String words) {
        svg.append("<text x=\"" + n(x) + "\" y=\"" + n(y) + "\" font-size=\"" + n(size)
                        + "\" text-anchor=\"middle\" stroke=\"#fff\" stroke-width=\"0.6\" paint-order=\"stroke\">")
                .append(SvgText.of(words))
                .append("</text>\n");
    }

    public void ring(double x, double y, double radius) {
        svg.append("<circle cx=\"" + n(x) + "\" cy=\"" + n(y) + "\" r=\"" + n(radius)
                + "\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.25\"/>\n");
    }

    /** Words that run upwards. */
    public void uprightText(double x, double y, double size, String anchor, String words) {
        svg.append("<text transform=\"translate(" + n(x) + " " + n(y) + ")rotate(-90)\" font-size=\"" + n(size) + "\"");
        anchored(anchor);
        svg.append('>').append(SvgText.of(words)).append("</text>\n");
    }

    private void anchored(String anchor) {
        if (!anchor.equals("start")) {
            svg.append(" text-anchor=\"").append(anchor).append('"');
        }
    }

    /** To a hundredth, no trailing zeros. */
    public static String n(double value) {
        String quick = Digits.shortOf(value);
        return quick.equals(Digits.UNSURE) ? exactly(value) : quick;
    }

    private static String exactly(double value) {
        BigDecimal rounded = new BigDecimal(value).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
