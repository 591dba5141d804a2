package campcloth.figure;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A place in a reference table that names a source: a figure, or a cell of a column {@code source}. A cell that is no figure
 * cites nothing; that it is none is told by whoever reads the table.
 *
 * @param file name of the file
 * @param line line in the file, counted from 1
 * @param field column
 * @param source id of the source as written there
 */
public record Citation(String file, long line, String field, String source) {

    /**
     * Every citation of a table, row by row.
     *
     * @throws IOException where the file cannot be read at all
     */
    public static List<Citation> in(String file, Reader text) throws IOException {
        List<Citation> citations = new ArrayList<>();
        List<Fault> toldByTheReaderOfTheTable = new ArrayList<>();
        ReferenceTable.read(file, text, List.of(), toldByTheReaderOfTheTable).map(row -> {
            row.citedSources().forEach((column, id) -> citations.add(new Citation(file, row.line(), column, id)));
            return row.line();
        });
        return citations;
    }

    /** The fault of citing a source that is not in the table of sources; empty where it is there. */
    public Optional<Fault> missingFrom(Sources sources) {
        if (sources.named(source).isPresent()) {
            return Optional.empty();
        }
        return Optional.of(new Fault(
                file,
                line,
                field,
                "cites '" + source + "', which is no known source",
                "add that id to sources.csv or cite one that is there"));
    }
}
