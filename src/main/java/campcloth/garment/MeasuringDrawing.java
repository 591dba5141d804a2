package campcloth.garment;

import campcloth.garment.drawing.TapePicture;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How to take a measurement, drawn and in words. Common practice, no source. */
public final class MeasuringDrawing {

    private MeasuringDrawing() {}

    /** A plain figure with the tape on it, as an SVG picture in black on white. */
    public static String svg(Measurement measurement) {
        return TapePicture.of(measurement.tape(), measurement.tape().title(), String.join(" ", text(measurement)));
    }

    /** The same in sentences. */
    public static List<String> text(Measurement measurement) {
        List<String> sentences = new ArrayList<>();
        String how = measurement.howTaken();
        sentences.add(how.substring(0, 1).toUpperCase(Locale.ROOT) + how.substring(1) + ".");
        sentences.addAll(measurement.tape().hints());
        return sentences;
    }
}
