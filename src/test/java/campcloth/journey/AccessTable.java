package campcloth.journey;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A table of {@code src/test/resources/access/}: who may do what. Its columns: the operation or page; the place of the address, the
 * query or the body that names a kept thing, none where it names none; the kind of that thing; the rule; what a page is sent besides.
 */
record AccessTable(String file, List<Row> rows) {

    /** A pattern of addresses may hold a comma within braces. */
    private static final Pattern ROW = Pattern.compile("(.*?),([^,{}]+),([A-Z_]+|-),([A-Z_]+)(?:,(.*))?");

    private static final String NONE = "-";

    /** A row; {@code sent} is empty where nothing else is sent. */
    record Row(String what, String place, String thing, AccessRule rule, String sent) {

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
        Matcher cells = ROW.matcher(line);
        if (!cells.matches()) {
            throw new AssertionError("not a row: " + line);
        }
        String sent = cells.group(5) == null ? "" : cells.group(5);
        return new Row(cells.group(1), cells.group(2), cells.group(3), AccessRule.valueOf(cells.group(4)), sent);
    }

    List<Row> of(String what) {
        return rows.stream().filter(row -> row.what().equals(what)).toList();
    }
}
