package campcloth.garment;

import campcloth.figure.Figure;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The measurements given for one wearer, in cm, by key. What is checked against a range is refused under its key. What was not
 * given is taken from the wearer's size, where there is one.
 */
public final class Measurements {

    private final Map<String, Double> cmByKey;
    private final Optional<Size> size;

    private Measurements(Map<String, Double> cmByKey, Optional<Size> size) {
        this.cmByKey = cmByKey;
        this.size = size;
    }

    public static Measurements of(Map<String, Double> cmByKey) {
        return new Measurements(new TreeMap<>(cmByKey), Optional.empty());
    }

    /** The same wearer, whose size is known for what was not measured. */
    public Measurements ofSize(Size known) {
        return new Measurements(cmByKey, Optional.of(known));
    }

    /** The same wearer with one measurement set. */
    public Measurements with(String key, double cm) {
        Map<String, Double> more = new TreeMap<>(cmByKey);
        more.put(key, cm);
        return new Measurements(more, size);
    }

    /** The measurement, where it was given or the size tells it; refused where it is not plausible. */
    public Optional<Double> given(Measurement measurement) {
        return Optional.ofNullable(cmByKey.get(measurement.key()))
                .or(() -> fromSize(measurement.key()))
                .map(cm -> measurement.range().check(cm));
    }

    private Optional<Double> fromSize(String key) {
        return size.map(known -> known.cm().get(key)).map(Figure::value);
    }

    /** The measurement, or what is usual for it and a note that says so. */
    public double orUsual(Measurement measurement, List<String> notes) {
        return given(measurement).orElseGet(() -> {
            double usual = measurement.usualCm().orElseThrow();
            notes.add(measurement.notMeasured() + Words.number(usual) + " cm taken (" + measurement.howTaken()
                    + "); measure the wearer before cutting.");
            return usual;
        });
    }

    /** A note for each measurement given that the design has no use for, and one for what was taken from the size. */
    public List<String> unusedNotes(Collection<Measurement> used, String design) {
        List<String> keys = used.stream().map(Measurement::key).toList();
        List<String> notes = new ArrayList<>();
        cmByKey.keySet().stream()
                .filter(key -> !keys.contains(key))
                .map(key -> key + " is not used by the " + design + "; it uses " + String.join(", ", keys) + ".")
                .forEach(notes::add);
        size.map(known -> taken(known, used)).ifPresent(notes::add);
        return notes;
    }

    private String taken(Size known, Collection<Measurement> used) {
        String whose = "size " + known.key() + " (" + known.name() + ")";
        List<String> taken = new ArrayList<>();
        Set<String> sources = new LinkedHashSet<>();
        for (Measurement measurement : used) {
            Figure figure = known.cm().get(measurement.key());
            if (figure != null && !cmByKey.containsKey(measurement.key())) {
                taken.add(measurement.words() + " " + Words.number(figure.value()) + " cm");
                sources.add(figure.source());
            }
        }
        if (taken.isEmpty()) {
            return "Nothing was taken from " + whose + ".";
        }
        return "From " + whose + ": " + String.join(", ", taken) + "; source " + String.join(", ", sources)
                + ". A size is nobody's measure: measure the wearer before cutting.";
    }
}
