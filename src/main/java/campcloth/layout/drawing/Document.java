package campcloth.layout.drawing;

import campcloth.figure.Canvas;
import campcloth.figure.SvgDocument;

/** An SVG document in mm, to be seen as one picture with a title and a description. */
final class Document {

    /** No letter is smaller on paper. */
    static final double LEAST_TEXT_MM = 2.5;

    static final String FOLD = "6 1.2 1 1.2";

    private Document() {}

    /**
     * A picture.
     *
     * @param frame what part of the plane it shows
     * @param size width and height as attributes; empty where it is to fill what it is put in
     */
    static String of(String title, String description, Box frame, String size, Canvas canvas) {
        return new SvgDocument(title, description)
                .hatched("left-over", 3, "M0 3L3 0", "#999", 0.15)
                .of(frame.left(), frame.top(), frame.width(), frame.height(), size, canvas.drawn());
    }
}
