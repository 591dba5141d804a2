package campcloth.layout.drawing;

import campcloth.figure.Canvas;
import campcloth.figure.TextWidth;
import campcloth.layout.ClothEdge;
import campcloth.layout.CuttingSheet;
import campcloth.layout.SheetPart;
import java.util.ArrayList;
import java.util.List;

/** Heading, facts, scale bar and how to read the drawing. */
final class TitleBlock {

    private static final double TITLE_MM = 5;
    private static final double FACTS_MM = 2.9;
    private static final double KEY_MM = Document.LEAST_TEXT_MM;
    private static final double LINE = 1.3;
    private static final double[] BARS_CM = {10, 20, 50, 100, 200, 500, 1000, 10_000, 100_000};
    private static final double LEAST_BAR_MM = 20;

    private final Canvas canvas;
    private final CuttingSheet sheet;
    private final double widthMm;
    private double y;

    TitleBlock(Canvas canvas, CuttingSheet sheet, double widthMm) {
        this.canvas = canvas;
        this.sheet = sheet;
        this.widthMm = widthMm;
    }

    /** Draws it from the top of the page; gives where it ends, in mm. */
    double draw(Scale scale, CutOrder order) {
        y = 0;
        write(List.of(sheet.title()), TITLE_MM);
        y += 1;
        write(facts(), FACTS_MM);
        drawScale(scale);
        write(key(order), KEY_MM);
        return y + 3;
    }

    /** Draws what is needed to read the picture, where a page tells the rest. */
    double drawBriefly(Scale scale, CutOrder order) {
        y = 0;
        drawScale(scale);
        write(List.of("Lay it " + lies() + "."), FACTS_MM);
        write(key(order), KEY_MM);
        return y + 3;
    }

    private void write(List<String> sentences, double sizeMm) {
        for (String sentence : sentences) {
            for (String line : TextWidth.lines(sentence, sizeMm, widthMm)) {
                y += LINE * sizeMm;
                canvas.text(0, y, sizeMm, "start", line);
            }
        }
    }

    private List<String> facts() {
        List<String> facts = new ArrayList<>(sheet.facts());
        facts.add("Lay it " + lies() + ": as it lies " + Drawn.cm(sheet.widthCm()) + " cm wide; the layout takes "
                + Drawn.cm(sheet.lengthCm()) + " cm of length.");
        return facts;
    }

    private String lies() {
        if (!sheet.isFolded()) {
            return "open, in one layer";
        }
        if (sheet.left().kind() == ClothEdge.Kind.BOTH_SELVEDGES
                || sheet.right().kind() == ClothEdge.Kind.BOTH_SELVEDGES) {
            return "folded once along its length, right sides together, selvedge on selvedge";
        }
        return "with " + (sheet.left().isFold() && sheet.right().isFold() ? "both selvedges" : "one selvedge")
                + " folded inwards, right sides together"
                + flap("left", sheet.left()) + flap("right", sheet.right());
    }

    private static String flap(String side, ClothEdge edge) {
        return edge.isFold() ? ", " + Drawn.cm(edge.flapCm()) + " cm turned in from the " + side : "";
    }

    private void drawScale(Scale scale) {
        double bar = BARS_CM[BARS_CM.length - 1];
        for (int i = BARS_CM.length - 1; i >= 0; i--) {
            bar = BARS_CM[i] * scale.mmPerCm() >= LEAST_BAR_MM ? BARS_CM[i] : bar;
        }
        double length = Math.min(bar * scale.mmPerCm(), widthMm * 0.6);
        double cm = length / scale.mmPerCm();
        y += 5;
        canvas.open("scale-bar");
        canvas.path(
                Canvas.segment(0, y, length, y)
                        + Canvas.segment(0, y - 1.2, 0, y + 1.2)
                        + Canvas.segment(length, y - 1.2, length, y + 1.2),
                0.5,
                Canvas.SOLID);
        canvas.text(
                length + 2,
                y + 1,
                FACTS_MM,
                "start",
                Drawn.cm(cm) + " cm of cloth; printed on A4 1 : " + scale.ratio());
        canvas.close();
        y += 2;
    }

    private List<String> key(CutOrder order) {
        List<String> key = new ArrayList<>();
        key.add(
                "Numbers in rings: the order to cut in, from the cut edge (below) on. At a corner: → cm from the left edge"
                        + (sheet.left().isFold() ? ", the fold" : ", inside the selvedge") + "; ↑ cm from the cut edge"
                        + (has(SheetPart.Cut.ON_RIGHT_FOLD) ? "; ← cm from the fold at the right" : "")
                        + ". r: radius of a rounded edge, from the centre marked +.");
        key.add("Arrow in a part: the grain, along the selvedge; its head is the top of the pattern. Heavy line: cut."
                + " Hatched: left over. × under a name: width and height of the piece in cm.");
        if (sheet.isFolded()) {
            key.add("Dash-dotted line: the fold; never cut it. A part on the fold is half of a piece, chalked once, and"
                    + " opens to the whole"
                    + (has(SheetPart.Cut.BOTH_LAYERS) ? "; a part through both layers gives two" : "")
                    + ". Thin dashes along the cloth: where the upper layer ends. Pin the layers before cutting.");
        }
        if (!order.crossCutsCm().isEmpty()) {
            key.add("Long dashes with a letter: cut straight across here, A first; it frees the parts before it.");
        }
        if (sheet.oneWay()) {
            key.add(
                    "The cloth has a nap: every part lies the same way up. Chalk its direction on the cloth before cutting.");
        }
        if (!sheet.stripes().isEmpty()) {
            key.add("Dotted lines: where the pattern of the cloth repeats.");
        }
        return key;
    }

    private boolean has(SheetPart.Cut cut) {
        return sheet.parts().stream().anyMatch(part -> part.cut() == cut);
    }
}
