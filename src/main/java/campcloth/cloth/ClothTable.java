package campcloth.cloth;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibres;
import campcloth.figure.Fault;
import campcloth.figure.Figure;
import campcloth.figure.ReferenceTable;
import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import java.io.IOException;
import java.io.Reader;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The table of cloths that comes with the program: one row a cloth, one column a {@link Property}. A cell that is empty is a
 * figure that nobody knows; weight and width must be there.
 */
public final class ClothTable {

    private static final String FILE = "cloths.csv";

    private static final List<String> COLUMNS = Stream.of(
                    Stream.of("id", "name", "blend", "weave", "surface", "finish"),
                    Stream.of(Property.values()).map(Property::field),
                    Stream.of("nap", "stretch", "note"))
            .flatMap(columns -> columns)
            .toList();

    private static final List<Property> NEEDED = List.of(Property.WEIGHT_GSM, Property.WIDTH_CM);

    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final int LONGEST_ID = 60;

    private ClothTable() {}

    /**
     * A row of the table.
     *
     * @param id lower-case words joined by dashes, at most 60 characters; stays the same from one table to the next
     * @param cloth the cloth
     */
    public record Entry(String id, Cloth cloth) {}

    /**
     * Reads the whole table, in its order; what is wrong in it goes to the faults given and the rest is kept.
     *
     * @throws IOException where the file cannot be read at all
     */
    public static List<Entry> read(Reader text, Fibres fibres, List<Fault> faults) throws IOException {
        return read(FILE, text, fibres, faults);
    }

    /**
     * The same for a table of another name.
     *
     * @throws IOException where the file cannot be read at all
     */
    public static List<Entry> read(String file, Reader text, Fibres fibres, List<Fault> faults) throws IOException {
        Set<String> seen = new HashSet<>();
        return ReferenceTable.read(file, text, COLUMNS, faults).map(row -> {
            Entry entry = new Entry(id(row), cloth(row, fibres));
            if (!seen.add(entry.id())) {
                throw Refused.of("id", "'" + entry.id() + "' stands twice", "give every cloth an id of its own");
            }
            return entry;
        });
    }

    private static String id(ReferenceTable.Row row) {
        String id = row.text("id");
        if (!ID.matcher(id).matches() || id.length() > LONGEST_ID) {
            throw Refused.of(
                    "id",
                    "'" + id + "' is not an id",
                    "write lower-case letters and digits joined by dashes, at most " + LONGEST_ID + " characters");
        }
        return id;
    }

    private static Cloth cloth(ReferenceTable.Row row, Fibres fibres) {
        return new Cloth(
                row.text("name"),
                blend(row, fibres),
                row.word("weave", Weave.class),
                row.word("surface", Surface.class),
                row.word("finish", Finish.class),
                row.yes("nap"),
                row.yes("stretch"),
                figures(row),
                row.optionalText("note").orElse(""));
    }

    /** The blend, with every refusal laid to its column. */
    private static Blend blend(ReferenceTable.Row row, Fibres fibres) {
        String text = row.text("blend");
        try {
            return fibres.blend(text);
        } catch (Refused refused) {
            throw new Refused(refused.refusals().stream()
                    .map(r -> new Refusal("blend", r.because(), r.remedy()))
                    .toList());
        }
    }

    private static Map<Property, Figure> figures(ReferenceTable.Row row) {
        Map<Property, Figure> figures = new EnumMap<>(Property.class);
        for (Property property : Property.values()) {
            row.figure(property.field()).ifPresent(figure -> figures.put(property, figure));
        }
        for (Property needed : NEEDED) {
            if (!figures.containsKey(needed)) {
                throw Refused.of(needed.field(), "is empty", "every cloth needs this figure");
            }
        }
        return figures;
    }
}
