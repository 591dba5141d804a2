package campcloth.garment;

import campcloth.figure.Words;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The measurements given for one wearer, in cm, by key. What is checked against a range is refused under its key. */
public final class Measurements {

    private final Map<String, Double> cmByKey;

    private Measurements(Map<String, Double> cmByKey) {
        this.cmByKey = cmByKey;
    }

    public static Measurements of(Map<String, Double> cmByKey) {
        return new Measurements(new TreeMap<>(cmByKey));
    }

    /** The same wearer with one measurement set. */
    public Measurements with(String key, double cm) {
        Map<String, Double> more = new TreeMap<>(cmByKey);
        more.put(key, cm);
        return new Measurements(more);
    }

    /** The measurement, where it was given; refused where it is not plausible. */
    public Optional<Double> given(Measurement measurement) {
        return Optional.ofNullable(cmByKey.get(measurement.key()))
                .map(cm -> measurement.range().check(cm));
    }

    /** The measurement, or what is usual for it and a note that says so. */
    public double orUsual(Measurement measurement, List<String> notes) {
        return given(measurement).orElseGet(() -> {
            double usual = measurement.usualCm().orElseThrow();
            notes.add(measurement.key() + " was not given: " + Words.number(usual) + " cm taken ("
                    + measurement.howTaken() + "); measure the wearer before cutting.");
            return usual;
        });
    }

    /** A note for each measurement given that the design has no use for. */
    public List<String> unusedNotes(Collection<Measurement> used, String design) {
        List<String> keys = used.stream().map(Measurement::key).toList();
        return cmByKey.keySet().stream()
                .filter(key -> !keys.contains(key))
                .map(key -> key + " is not used by the " + design + "; it uses " + String.join(", ", keys) + ".")
                .toList();
    }
}
