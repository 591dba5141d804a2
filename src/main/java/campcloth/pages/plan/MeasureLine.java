package campcloth.pages.plan;

import campcloth.garment.Design;
import campcloth.garment.Measurement;
import campcloth.garment.MeasuringDrawing;
import java.util.List;

/** A measurement as forms ask for it. */
public record MeasureLine(String key, String title, String how, double leastCm, double mostCm, boolean needed) {

    /** All that a design has a use for. */
    public static List<MeasureLine> of(Design design) {
        return design.measurements().stream().map(MeasureLine::of).toList();
    }

    private static MeasureLine of(Measurement measurement) {
        return new MeasureLine(
                measurement.key(),
                measurement.tape().title(),
                String.join(" ", MeasuringDrawing.text(measurement)),
                measurement.range().least(),
                measurement.range().most(),
                measurement.usualCm().isEmpty());
    }
}
