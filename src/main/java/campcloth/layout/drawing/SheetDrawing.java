package campcloth.layout.drawing;

import campcloth.figure.Canvas;
import campcloth.layout.CuttingSheet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What every picture of a sheet is made from: parts in their order, the scale, and the measures still to be told. */
final class SheetDrawing {

    /** Breadth of A4 within margins of 10 mm. */
    static final double PAPER_MM = 190;

    final CuttingSheet sheet;
    final List<Shape> shapes;
    final CutOrder order;
    final List<Drawn> parts;
    private final Map<Integer, Set<String>> untold = new TreeMap<>();

    SheetDrawing(CuttingSheet sheet) {
        this.sheet = sheet;
        this.shapes = Drawn.shapes(sheet);
        this.order = CutOrder.of(shapes);
        this.parts = Drawn.all(sheet, order, shapes);
        parts.forEach(part ->
                untold.put(part.number(), new LinkedHashSet<>(part.measures().keySet())));
    }

    Scale widest() {
        return Scale.fitting(sheet.widthCm(), PAPER_MM - ClothDrawing.LEFT_MM - ClothDrawing.RIGHT_MM);
    }

    /** Draws a stretch of the cloth whose upper end lies at the height given; gives where its rulers end. */
    double drawCloth(Canvas canvas, Clip clip, Scale scale, double topMm) {
        double bottom = topMm + (clip.topCm() - clip.lowCm()) * scale.mmPerCm();
        Window window = new Window(clip, ClothDrawing.LEFT_MM, bottom, scale.mmPerCm());
        ClothDrawing cloth = new ClothDrawing(canvas, sheet, window);
        cloth.drawUnder();
        PartDrawing drawing = new PartDrawing(canvas, window);
        for (Drawn part : parts) {
            if (PartDrawing.isSeen(part, clip)) {
                drawing.draw(part, untold.getOrDefault(part.number(), new LinkedHashSet<>()));
            }
        }
        cloth.drawOver(order);
        new Rulers(canvas, sheet, window).draw();
        return bottom + Rulers.BELOW_MM;
    }

    /** The list of parts; complete once all of the cloth was drawn. */
    CutList list() {
        return new CutList(parts, untold, PAPER_MM);
    }

    /** The list without the measures that may yet find no room. */
    CutList listOfNames() {
        return new CutList(parts, Map.of(), PAPER_MM);
    }

    String description() {
        StringBuilder words = new StringBuilder();
        sheet.facts().forEach(fact -> words.append(fact).append(' '));
        words.append("Cloth as it lies ")
                .append(Drawn.cm(sheet.widthCm()) + " cm wide, " + Drawn.cm(sheet.lengthCm()) + " cm long, ")
                .append(sheet.isFolded() ? "folded." : "open.");
        parts.forEach(part -> words.append(' ').append(part.sentence()).append('.'));
        return words.toString();
    }
}
