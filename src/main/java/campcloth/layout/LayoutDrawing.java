package campcloth.layout;

import campcloth.figure.SvgText;
import campcloth.figure.Words;
import java.util.List;

/**
 * A layout drawn to be chalked from: an SVG picture in black on white, one unit to a cm. The cut edge lies at the bottom,
 * the selvedges left and right, with a measure along both. Each piece carries its number, its name where there is room, and
 * an arrow along the grain that points to the end which is up on the pattern; a small cross marks the lower left corner of
 * its box, whose distances from selvedge and cut edge stand in the list below the cloth. Title and description say the same
 * in words.
 */
public final class LayoutDrawing {

    private static final double MARGIN = 14;
    private static final double LINE = 5.2;
    private static final double LIST_SIZE = 3.6;
    /** Width of a character in parts of its size, on the broad side. */
    private static final double CHARACTER = 0.58;

    private final Layout layout;
    private final String title;
    private final StringBuilder svg = new StringBuilder();

    private LayoutDrawing(Layout layout, String title) {
        this.layout = layout;
        this.title = title;
    }

    /** The drawing as a whole SVG document. */
    public static String svg(Layout layout, String title) {
        return new LayoutDrawing(layout, title).drawn();
    }

    private String drawn() {
        double width = Math.max(layout.widthCm(), listWidth()) + 2 * MARGIN;
        double height =
                layout.lengthCm() + 2 * MARGIN + 8 + LINE * (layout.placements().size() + 2);
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"title desc\" viewBox=\"")
                .append(n(-MARGIN) + " " + n(-MARGIN) + " " + n(width) + " " + n(height))
                .append("\" font-family=\"sans-serif\" font-size=\"4\" fill=\"#000\" stroke-linejoin=\"round\">\n");
        svg.append("<title id=\"title\">").append(SvgText.of(title)).append("</title>\n");
        svg.append("<desc id=\"desc\">").append(SvgText.of(description())).append("</desc>\n");
        svg.append("<rect x=\"" + n(-MARGIN) + "\" y=\"" + n(-MARGIN) + "\" width=\"" + n(width) + "\" height=\""
                + n(height) + "\" fill=\"#fff\"/>\n");
        drawCloth();
        drawMeasures();
        for (int i = 0; i < layout.placements().size(); i++) {
            drawPiece(i + 1, layout.placements().get(i));
        }
        drawList();
        return svg.append("</svg>\n").toString();
    }

    private double listWidth() {
        int longest = summary().length();
        for (int i = 0; i < layout.placements().size(); i++) {
            longest = Math.max(
                    longest, sentence(i + 1, layout.placements().get(i)).length());
        }
        return longest * CHARACTER * LIST_SIZE;
    }

    private String description() {
        StringBuilder words = new StringBuilder(summary()).append('.');
        for (int i = 0; i < layout.placements().size(); i++) {
            words.append(' ')
                    .append(sentence(i + 1, layout.placements().get(i)))
                    .append('.');
        }
        return words.toString();
    }

    private String summary() {
        return "Cloth " + Words.fixed(layout.widthCm(), 1) + " cm wide, " + Words.fixed(layout.lengthCm(), 1)
                + " cm long, " + Words.fixed(layout.usedPercent(), 0) + " % used";
    }

    private static String sentence(int number, Placement placement) {
        return number + ": " + placement.piece() + " " + placement.copy() + ", "
                + Words.fixed(placement.xCm(), 1) + " cm from the selvedge, "
                + Words.fixed(placement.yCm(), 1) + " cm from the cut edge"
                + (placement.turned() ? ", turned" : "") + (placement.mirrored() ? ", mirrored" : "");
    }

    private void drawCloth() {
        svg.append("<defs><pattern id=\"offcut\" width=\"3\" height=\"3\" patternUnits=\"userSpaceOnUse\">")
                .append(
                        "<path d=\"M0 3L3 0\" stroke=\"#999\" stroke-width=\"0.15\" fill=\"none\"/></pattern></defs>\n");
        svg.append("<rect width=\"" + n(layout.widthCm()) + "\" height=\"" + n(layout.lengthCm())
                + "\" fill=\"url(#offcut)\" stroke=\"#000\" stroke-width=\"0.3\" stroke-dasharray=\"2 1\"/>\n");
        for (double x : new double[] {0, layout.widthCm()}) {
            line(x, 0, x, layout.lengthCm(), 0.9);
        }
    }

    private void drawMeasures() {
        double step = step(Math.max(layout.widthCm(), layout.lengthCm()));
        for (double x = 0; x <= layout.widthCm() + 1e-9; x += step) {
            line(x, 0, x, -2, 0.3);
            text(x, -6, 3.5, "middle", Words.number(x));
        }
        for (double y = 0; y <= layout.lengthCm() + 1e-9; y += step) {
            line(0, y, -2, y, 0.3);
            text(-3, y - 1.2, 3.5, "end", Words.number(y));
        }
        text(layout.widthCm() / 2, -11, 3.5, "middle", "cm from the selvedge; cut edge at this side");
    }

    private static double step(double longest) {
        double step = 10;
        while (longest / step > 60) {
            step *= 10;
        }
        return step;
    }

    private void drawPiece(int number, Placement placement) {
        Outline outline = layout.outlineOf(placement);
        svg.append("<g><title>").append(SvgText.of(sentence(number, placement))).append("</title><path d=\"");
        char command = 'M';
        for (Point point : outline.points()) {
            svg.append(command).append(n(point.xCm())).append(' ').append(n(up(point.yCm())));
            command = 'L';
        }
        svg.append("Z\" fill=\"#fff\" stroke=\"#000\" stroke-width=\"0.5\"/>");
        double x = placement.xCm();
        double y = placement.yCm();
        line(x, y, x + 1.5, y, 0.5);
        line(x, y, x, y + 1.5, 0.5);
        LabelSpot spot = LabelSpot.of(outline);
        drawGrain(outline, spot, placement.turned());
        drawName(number, placement, spot, outline.heightCm());
        svg.append("</g>\n");
    }

    private void drawGrain(Outline outline, LabelSpot spot, boolean turned) {
        double half = Math.min(outline.heightCm() * 0.22, 12);
        double x = spot.xCm() - spot.widthCm() * 0.36;
        double tip = spot.yCm() + (turned ? -half : half);
        double barb = (turned ? 1 : -1) * Math.min(2, half / 3);
        line(x, spot.yCm() - half, x, spot.yCm() + half, 0.35);
        line(x, tip, x - Math.abs(barb) / 2, tip + barb, 0.35);
        line(x, tip, x + Math.abs(barb) / 2, tip + barb, 0.35);
    }

    private void drawName(int number, Placement placement, LabelSpot spot, double heightCm) {
        double size = Math.max(0.8, Math.min(6, Math.min(spot.widthCm() / 4, heightCm / 4)));
        text(spot.xCm(), spot.yCm(), size, "middle", Integer.toString(number));
        String name = placement.piece() + " " + placement.copy();
        double nameSize = Math.min(3.5, Math.min(heightCm / 7, spot.widthCm() * 0.66 / (0.6 * name.length())));
        if (nameSize >= 1.4) {
            text(spot.xCm(), spot.yCm() - 1.3 * nameSize, nameSize, "middle", name);
        }
    }

    private void drawList() {
        List<Placement> placements = layout.placements();
        double low = -MARGIN - 6;
        text(0, low, 4.4, "start", summary());
        for (int i = 0; i < placements.size(); i++) {
            text(0, low - LINE * (i + 1.3), LIST_SIZE, "start", sentence(i + 1, placements.get(i)));
        }
    }

    private void line(double fromX, double fromY, double toX, double toY, double weight) {
        svg.append("<path d=\"M" + n(fromX) + " " + n(up(fromY)) + "L" + n(toX) + " " + n(up(toY))
                + "\" stroke=\"#000\" stroke-width=\"" + weight + "\" fill=\"none\"/>\n");
    }

    private void text(double x, double y, double size, String anchor, String words) {
        svg.append("<text x=\"" + n(x) + "\" y=\"" + n(up(y)) + "\" font-size=\"" + n(size) + "\" text-anchor=\""
                        + anchor + "\">")
                .append(SvgText.of(words))
                .append("</text>\n");
    }

    /** Heights run upwards on the cloth and downwards in the picture. */
    private double up(double y) {
        return layout.lengthCm() - y;
    }

    private static String n(double value) {
        return Words.fixed(value, 2);
    }
}
