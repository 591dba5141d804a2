package campcloth.fibre.label;

import java.util.List;

/**
 * The label cannot be read safely, and where. Never leaves the room: the reader turns it into an answer.
 */
public final class Unreadable extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String because;
    private final int from;
    private final int to;
    private final String remedy;
    private final transient List<String> readings;

    Unreadable(int from, int to, String because, String remedy, List<String> readings) {
        super(because, null, false, false);
        this.because = because;
        this.from = from;
        this.to = to;
        this.remedy = remedy;
        this.readings = List.copyOf(readings);
    }

    Unreadable(int from, int to, String because, String remedy) {
        this(from, to, because, remedy, List.of());
    }

    /** A word that could mean any of the things given. */
    static Unreadable readings(String text, Spot spot) {
        return readings(text, spot, spot.senses().stream().map(Entry::reading).toList());
    }

    static Unreadable readings(String text, Spot spot, List<String> readings) {
        return new Unreadable(
                spot.from(),
                spot.to(),
                "'" + Shown.excerpt(text, spot.from(), spot.to()) + "' has more than one reading: "
                        + String.join("; ", readings),
                "say which language the label is in, or write the fibre's generic English name",
                readings);
    }

    /** Whether there are several readings, rather than none. */
    boolean isAboutReadings() {
        return !readings.isEmpty();
    }

    public String because() {
        return because;
    }

    public int from() {
        return from;
    }

    public int to() {
        return to;
    }

    public String remedy() {
        return remedy;
    }

    public List<String> readings() {
        return readings;
    }
}
