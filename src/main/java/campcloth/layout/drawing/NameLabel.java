package campcloth.layout.drawing;

import campcloth.figure.Canvas;
import campcloth.figure.TextWidth;
import java.util.ArrayList;
import java.util.List;

/** Number in a ring, name, size and layers of a part, as much of it as there is room for; never less than the number. */
final class NameLabel {

    private static final double[] NAME_SIZES_MM = {3.4, Document.LEAST_TEXT_MM};
    private static final double LEAST_WRAP_MM = 12;
    private static final int MOST_NAME_LINES = 3;

    private final Canvas canvas;
    private final Room room;

    private record Label(double numberMm, double wordsMm, String number, List<String> words) {

        double ringMm() {
            return numberMm == 0 ? 0 : Math.max(numberMm * 0.78, TextWidth.of(number, numberMm) / 2 + 0.4);
        }

        double widthMm() {
            return Math.max(
                    2 * ringMm(),
                    words.stream()
                            .mapToDouble(w -> TextWidth.of(w, wordsMm))
                            .max()
                            .orElse(0));
        }

        double heightMm() {
            return 2 * ringMm() + words.size() * 1.2 * wordsMm + 0.4;
        }
    }

    NameLabel(Canvas canvas, Room room) {
        this.canvas = canvas;
        this.room = room;
    }

    void draw(Drawn part) {
        List<LabelSpot> spots = LabelSpot.all(room.shape());
        for (Label label : labels(part)) {
            for (boolean upright : new boolean[] {false, true}) {
                for (LabelSpot spot : spots) {
                    double width = upright ? label.heightMm() : label.widthMm();
                    double height = upright ? label.widthMm() : label.heightMm();
                    Box box = new Box(spot.x() - width / 2, spot.y() - height / 2, width, height);
                    if (room.take(box)) {
                        write(label, box, upright);
                        return;
                    }
                }
            }
        }
        LabelSpot spot = LabelSpot.widest(room.shape());
        double size = Document.LEAST_TEXT_MM;
        canvas.clearText(spot.x(), spot.y() + size * 0.35, size, Integer.toString(part.number()));
    }

    private List<Label> labels(Drawn part) {
        String number = Integer.toString(part.number());
        List<String> rest = new ArrayList<>();
        if (!part.layers().isEmpty()) {
            rest.add(part.layers());
        }
        List<String> all = new ArrayList<>(rest);
        all.add(part.size());
        double stretch = LabelSpot.widest(room.shape()).width() * 0.8;
        List<Label> labels = new ArrayList<>();
        for (List<String> besides : List.of(all, rest)) {
            for (double size : NAME_SIZES_MM) {
                labels.add(named(number, size, List.of(part.part().name()), besides));
                List<String> lines = TextWidth.lines(part.part().name(), size, Math.max(LEAST_WRAP_MM, stretch));
                if (lines.size() > 1 && lines.size() <= MOST_NAME_LINES) {
                    labels.add(named(number, size, lines, besides));
                }
            }
        }
        String inOneLine = number + ": " + part.part().name();
        for (String words : List.of(inOneLine + ", " + part.size(), inOneLine)) {
            labels.add(new Label(0, Document.LEAST_TEXT_MM, number, List.of(words)));
        }
        labels.add(new Label(3.4, Document.LEAST_TEXT_MM, number, List.of()));
        labels.add(new Label(Document.LEAST_TEXT_MM, Document.LEAST_TEXT_MM, number, List.of()));
        return labels;
    }

    private static Label named(String number, double size, List<String> name, List<String> besides) {
        List<String> words = new ArrayList<>(name);
        words.addAll(besides);
        return new Label(size * 1.25, size, number, words);
    }

    private void write(Label label, Box box, boolean upright) {
        double ring = label.ringMm();
        if (ring > 0) {
            put(label.number, label.numberMm, ring + label.numberMm * 0.36, box, upright);
            canvas.ring(upright ? box.left() + ring : box.middleX(), upright ? box.middleY() : box.top() + ring, ring);
        }
        double along = ring > 0 ? 2 * ring + 0.4 : 0;
        for (String words : label.words) {
            along += 1.2 * label.wordsMm;
            put(words, label.wordsMm, along - 0.25 * label.wordsMm, box, upright);
        }
    }

    private void put(String words, double size, double baseline, Box box, boolean upright) {
        if (upright) {
            canvas.uprightText(box.left() + baseline, box.middleY(), size, "middle", words);
        } else {
            canvas.text(box.middleX(), box.top() + baseline, size, "middle", words);
        }
    }
}
