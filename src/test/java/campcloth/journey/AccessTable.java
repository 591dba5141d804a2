package campcloth.journey;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/**
 * A table of {@code src/test/resources/access/}: who may do what. Its columns: the operation or page; the place of the address, the
 * query, the form or the body that names a kept thing, none where it names none; the kind of that thing; the rule.
 */
record AccessTable(String file, List<Row> rows) {

    private static final int COLUMNS = 4;
    private static final String NONE = "-";

    /** A row. */
    record Row(String what, String place, String thing, AccessRule rule) {

        boolean namesAThing() {
            return !thing.equals(NONE);
        }

        KeptThings.Kind kind() {
            return KeptThings.Kind.valueOf(thing);
        }

        @Override
        public String toString() {
            return what + (place.equals(NONE) ? "" : " " + place) + ", " + rule;
        }
    }

    static AccessTable read(String file) {
        try (InputStream in = AccessTable.class.getResourceAsStream("/access/" + file)) {
            List<Row> rows = new String(Objects.requireNonNull(in, file).readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .skip(1)
                    .map(AccessTable::row)
                    .toList();
            return new AccessTable(file, rows);
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    private static Row row(String line) {
        String[] cells = line.split(",");
        if (cells.length != COLUMNS) {
            throw new AssertionError("not " + COLUMNS + " cells: " + line);
        }
        return new Row(cells[0].strip(), cells[1].strip(), cells[2].strip(), AccessRule.valueOf(cells[3].strip()));
    }

    List<Row> of(String what) {
        return rows.stream().filter(row -> row.what().equals(what)).toList();
    }
}
