package campcloth.garment.drawing;

import campcloth.figure.SvgDocument;
import campcloth.garment.TapeLine;

/** The figure with the tape where it lies for a measurement. */
public final class TapePicture {

    private TapePicture() {}

    public static String of(TapeLine tape, String title, String description) {
        return new SvgDocument(title, description)
                .hatchings(6)
                .of(0, 0, Sketch.WIDTH, Sketch.HEIGHT, sketch(tape).drawn());
    }

    private static Sketch sketch(TapeLine tape) {
        return switch (tape) {
            case CALF, ANKLE, ANKLE_TO_KNEE, HEEL, CROTCH_DEPTH, WRIST -> Parts.of(tape);
            case GARMENT_ROUND, NECK_OPENING, SLEEVE_TOP, SLEEVE_END, LEG_END -> Parts.of(tape);
            default -> Persons.of(tape);
        };
    }
}
