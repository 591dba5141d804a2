package campcloth.pages.sheet;

import campcloth.errand.OtherWearer;
import campcloth.figure.Refused;
import campcloth.garment.Design;
import campcloth.garment.Measurement;
import campcloth.pages.TypedIn;
import campcloth.pages.Units;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Somebody who wears the garment. */
public final class WearerForm {

    /** What they are called on the sheet. */
    public @Nullable String name;

    /** Key of a size, for what was not measured. */
    public @Nullable String size;

    public @Nullable Integer count;

    /** By the key of {@link Measurement}; those that the design has no use for are left alone. */
    @TypedIn(Units.Measure.LENGTH_CM)
    public Map<String, @Nullable Double> measures = new LinkedHashMap<>();

    /** Whether the form asked for it: else what was told with the event holds. */
    public boolean told;

    /** Taken off the form again; its number stays, so that what is wrong with the others stays with them. */
    public boolean gone;

    /** Whether the measurements are to be seen: they are wanted where nothing else tells who it is. */
    public boolean wantsMeasures() {
        return size == null || measures.values().stream().anyMatch(Objects::nonNull);
    }

    Optional<String> chosenSize() {
        return Optional.ofNullable(size);
    }

    String calledName() {
        return name == null ? "" : name;
    }

    Map<String, Double> measuredCm(Design design) {
        Map<String, Double> measured = new TreeMap<>();
        for (Measurement measurement : design.measurements()) {
            Double cm = measures.get(measurement.key());
            if (cm != null) {
                measured.put(measurement.key(), cm);
            }
        }
        return measured;
    }

    /** As one of those who wear it besides the first. */
    OtherWearer other(Design design, int number) {
        return Refused.within(
                "others[" + number + "]",
                () -> new OtherWearer(calledName(), measuredCm(design), chosenSize(), count == null ? 1 : count));
    }
}
