package campcloth.garment;

import campcloth.figure.Fault;
import campcloth.figure.Figure;
import campcloth.figure.Range;
import campcloth.figure.ReferenceTable;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The size table: body measurements of people of a few sizes, read from the catalogue. */
public final class Sizes {

    private static final String FILE = "sizes.csv";
    private static final List<String> MEASUREMENTS =
            List.of("heightCm", "neckCm", "chestCm", "waistCm", "hipCm", "thighCm", "sleeveLengthCm", "inseamCm");

    private static final double LEAST_CM = 20;
    private static final double MOST_CM = 230;

    private final Map<String, Size> byKey;

    private Sizes(Map<String, Size> byKey) {
        this.byKey = byKey;
    }

    /** Reads the table; what is wrong in it goes to the faults given. */
    public static Sizes read(Reader text, List<Fault> faults) throws IOException {
        Map<String, Size> byKey = new LinkedHashMap<>();
        ReferenceTable.read(FILE, text, columns(), faults).map(row -> {
            Size size = size(row);
            if (byKey.putIfAbsent(size.key(), size) != null) {
                throw Refused.of("key", "'" + size.key() + "' stands twice", "keep one row a size");
            }
            return size;
        });
        return new Sizes(byKey);
    }

    private static List<String> columns() {
        List<String> columns = new ArrayList<>(List.of("key", "name"));
        columns.addAll(MEASUREMENTS);
        return columns;
    }

    private static Size size(ReferenceTable.Row row) {
        Map<String, Figure> cm = new LinkedHashMap<>();
        for (String measurement : MEASUREMENTS) {
            row.figure(measurement).ifPresent(figure -> {
                new Range(measurement, LEAST_CM, MOST_CM, "cm").check(figure.value());
                cm.put(measurement, figure);
            });
        }
        if (cm.isEmpty()) {
            throw Refused.of("key", "has no measurement", "fill in at least one");
        }
        return new Size(row.text("key"), row.text("name"), cm);
    }

    public List<Size> all() {
        return List.copyOf(byKey.values());
    }

    /** The size of that key; refuses a key that is not known. */
    public Size named(String key) {
        Size size = byKey.get(key);
        if (size == null) {
            throw Refused.of(
                    "size",
                    Words.quoted(key) + " is not a size known here",
                    "use one of " + String.join(", ", byKey.keySet()) + ", or give the wearer's measurements");
        }
        return size;
    }
}
