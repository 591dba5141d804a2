package campcloth.figure;

import java.io.IOException;
import java.io.Reader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The sources that figures cite, by id. */
public final class Sources {

    private static final String FILE = "sources.csv";
    private static final List<String> COLUMNS = List.of("id", "kind", "citation", "evidence", "note");

    private final Map<String, Source> byId;

    private Sources(Map<String, Source> byId) {
        this.byId = byId;
    }

    /** Reads the table of sources; what is wrong in it goes to the faults given. */
    public static Sources read(Reader text, List<Fault> faults) throws IOException {
        Map<String, Source> byId = new LinkedHashMap<>();
        ReferenceTable.read(FILE, text, COLUMNS, faults).map(row -> {
            Source source = new Source(
                    row.text("id"),
                    row.word("kind", Source.Kind.class),
                    row.text("citation"),
                    row.word("evidence", Source.Evidence.class),
                    row.optionalText("note").orElse(""));
            if (byId.putIfAbsent(source.id(), source) != null) {
                throw Refused.of("id", "'" + source.id() + "' stands twice", "keep one row a source");
            }
            return source;
        });
        return new Sources(byId);
    }

    public Optional<Source> named(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    public List<Source> all() {
        return List.copyOf(byId.values());
    }
}
