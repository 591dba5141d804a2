package campcloth.comfort.model;

import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Rows of check values among the test resources; a table with a fault, or without rows, is a failure. */
final class CheckRows {

    private CheckRows() {}

    static List<ReferenceTable.Row> of(String file) {
        List<Fault> faults = new ArrayList<>();
        try (InputStream stream = CheckRows.class.getResourceAsStream("/" + file)) {
            if (stream == null) {
                throw new IllegalStateException(file + " is missing");
            }
            List<ReferenceTable.Row> rows = ReferenceTable.read(
                            file, new InputStreamReader(stream, StandardCharsets.UTF_8), List.of(), faults)
                    .map(row -> row);
            if (!faults.isEmpty() || rows.isEmpty()) {
                throw new IllegalStateException(file + ": " + faults + ", rows " + rows.size());
            }
            return rows;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
