package campcloth.fibre;

import campcloth.figure.Fault;
import campcloth.figure.Figure;
import campcloth.figure.ReferenceTable;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The fibres known, in the order of the table. */
public final class Fibres {

    private static final String FILE = "fibres.csv";

    private static final List<String> COLUMNS = List.of(
            "key",
            "name",
            "family",
            "agreedAllowancePercent",
            "densityGCm3",
            "regainPercent",
            "softensC",
            "meltsC",
            "decomposesC",
            "oxygenIndexPercent",
            "diameterUm",
            "modulusGPa",
            "inTheFlame");

    private final Map<String, Fibre> byKey;

    private Fibres(Map<String, Fibre> byKey) {
        this.byKey = byKey;
    }

    /**
     * Reads the fibre table; what is wrong in it goes to the faults given and the rest is kept.
     *
     * @throws IOException where the file cannot be read at all
     */
    public static Fibres read(Reader text, List<Fault> faults) throws IOException {
        Map<String, Fibre> byKey = new LinkedHashMap<>();
        ReferenceTable.read(FILE, text, COLUMNS, faults).map(row -> {
            Fibre fibre = fibre(row);
            if (byKey.putIfAbsent(fibre.key(), fibre) != null) {
                throw Refused.of("key", fibre.key() + " stands twice", "keep one row a fibre");
            }
            return fibre;
        });
        for (String needed : List.of(Fibre.OTHER, Fibre.UNKNOWN)) {
            if (!byKey.containsKey(needed)) {
                faults.add(new Fault(FILE, 1, "key", "has no row for '" + needed + "'", "add it"));
            }
        }
        return new Fibres(byKey);
    }

    public List<Fibre> all() {
        return List.copyOf(byKey.values());
    }

    public Optional<Fibre> named(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    /** A blend of fibres named by key; refuses keys that are not in the table. */
    public Blend blend(Map<String, Double> percentByKey) {
        List<Blend.Share> shares = new ArrayList<>();
        percentByKey.forEach((key, percent) -> shares.add(new Blend.Share(require(key), percent)));
        return new Blend(shares);
    }

    /** The fibre of that key, however it is capitalised; refuses a key that is not in the table. */
    public Fibre require(String key) {
        return require(key, "fibre");
    }

    /** The same for a field of another name. */
    public Fibre require(String key, String field) {
        return named(key.strip().toLowerCase(Locale.ROOT))
                .orElseThrow(() -> Refused.of(
                        field,
                        Words.quoted(key) + " is not a fibre known here",
                        "use a generic name such as wool, cotton, flax (linen), polyamide (nylon), viscose (rayon), elastane"
                                + " (spandex), polyester, or 'other' or 'unknown'"));
    }

    /** Reads {@code flax 70; polyester 30}; refuses unknown fibres and sums other than 100. */
    public Blend blend(String text) {
        Map<String, Double> shares = new LinkedHashMap<>();
        for (String part : text.split(";")) {
            String[] words = part.trim().split("\\s+");
            try {
                if (words.length == 2) {
                    shares.merge(words[0], Double.parseDouble(words[1]), Double::sum);
                    continue;
                }
            } catch (NumberFormatException notANumber) {
                // refused below
            }
            throw Refused.of("blend", "'" + part.trim() + "' is not a share", "write: flax 70; polyester 30");
        }
        return blend(shares);
    }

    private static Fibre fibre(ReferenceTable.Row row) {
        return new Fibre(
                row.text("key"),
                row.text("name"),
                row.word("family", FibreFamily.class),
                row.figure("agreedAllowancePercent"),
                needed(row, "densityGCm3"),
                needed(row, "regainPercent"),
                row.figure("softensC"),
                row.figure("meltsC"),
                row.figure("decomposesC"),
                row.figure("oxygenIndexPercent"),
                row.figure("diameterUm"),
                row.figure("modulusGPa"),
                row.text("inTheFlame"));
    }

    private static Figure needed(ReferenceTable.Row row, String column) {
        return row.figure(column).orElseThrow(() -> Refused.of(column, "is empty", "every fibre needs this figure"));
    }
}
