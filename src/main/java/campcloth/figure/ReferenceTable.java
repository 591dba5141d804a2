package campcloth.figure;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table of reference data in CSV (RFC 4180, with a header line; lines that start with {@code #} are comments). Rows that
 * cannot be read do not stop the reading: each leaves a {@link Fault}, so that all of them can be mended at once.
 */
public final class ReferenceTable {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .setIgnoreSurroundingSpaces(true)
            .setIgnoreEmptyLines(true)
            .setTrim(true)
            .get();

    /** {@code 190 (180..200) TYPICAL some-source}; the interval may be left out. */
    private static final Pattern FIGURE = Pattern.compile(
            "(-?[0-9.]+)\\s*(?:\\(\\s*(-?[0-9.]+)\\s*\\.\\.\\s*(-?[0-9.]+)\\s*\\))?\\s+([A-Z]+)\\s+([a-z0-9-]+)");

    private final String file;
    private final List<Row> rows;
    private final List<Fault> faults;

    private ReferenceTable(String file, List<Row> rows, List<Fault> faults) {
        this.file = file;
        this.rows = rows;
        this.faults = faults;
    }

    /**
     * Reads a whole table. Faults found here (no such column, a row with too many or too few cells) and later by
     * {@link #map} go to the list given.
     *
     * @throws IOException where the file cannot be read at all
     */
    public static ReferenceTable read(String file, Reader text, List<String> columns, List<Fault> faults)
            throws IOException {
        List<Row> rows = new ArrayList<>();
        try (CSVParser parser =
                CSVParser.builder().setReader(text).setFormat(FORMAT).get()) {
            for (String column : columns) {
                if (!parser.getHeaderNames().contains(column)) {
                    faults.add(new Fault(file, 1, column, "the column is missing", "add it to the header line"));
                    return new ReferenceTable(file, List.of(), faults);
                }
            }
            for (CSVRecord row : parser) {
                long line = parser.getCurrentLineNumber();
                if (row.isConsistent()) {
                    rows.add(new Row(row, line));
                } else {
                    faults.add(new Fault(
                            file,
                            line,
                            "(whole row)",
                            "has " + row.size() + " cells, the header has "
                                    + parser.getHeaderNames().size(),
                            "quote cells that contain a comma, fill empty cells with nothing"));
                }
            }
        } catch (IllegalArgumentException | java.io.UncheckedIOException broken) {
            faults.add(new Fault(file, 1, "(whole file)", "is not CSV: " + broken.getMessage(), "mend the quoting"));
        }
        return new ReferenceTable(file, rows, faults);
    }

    /** Turns every row into a value; a row that is refused becomes a fault and is left out. */
    public <T> List<T> map(Function<Row, T> reading) {
        List<T> values = new ArrayList<>();
        for (Row row : rows) {
            try {
                values.add(reading.apply(row));
            } catch (Refused refused) {
                for (Refusal refusal : refused.refusals()) {
                    faults.add(new Fault(file, row.line, refusal.field(), refusal.because(), refusal.remedy()));
                }
            }
        }
        return values;
    }

    /** One row; every reader refuses with the name of the column. */
    public static final class Row {

        private final CSVRecord cells;
        private final long line;

        private Row(CSVRecord cells, long line) {
            this.cells = cells;
            this.line = line;
        }

        public long line() {
            return line;
        }

        /** The source ids that this row cites, by column: those of its figures, and whole cells of a column {@code source}. */
        Map<String, String> citedSources() {
            Map<String, String> cited = new LinkedHashMap<>();
            cells.toMap().forEach((column, text) -> {
                Matcher figure = FIGURE.matcher(text);
                if (figure.matches()) {
                    cited.put(column, figure.group(5));
                } else if (column.equals("source") && !text.isEmpty()) {
                    cited.put(column, text);
                }
            });
            return cited;
        }

        /** Text that must be there. */
        public String text(String column) {
            return optionalText(column).orElseThrow(() -> Refused.of(column, "is empty", "fill it in"));
        }

        public Optional<String> optionalText(String column) {
            return cells.isMapped(column) ? Optional.of(cells.get(column)).filter(t -> !t.isEmpty()) : Optional.empty();
        }

        public double number(String column) {
            String text = text(column);
            try {
                double value = Double.parseDouble(text);
                if (Double.isFinite(value)) {
                    return value;
                }
            } catch (NumberFormatException notANumber) {
                // told below, as is a number that is not finite
            }
            throw Refused.of(column, "'" + text + "' is not a number", "write digits with a decimal point");
        }

        public Optional<Double> optionalNumber(String column) {
            return optionalText(column).map(ignored -> number(column));
        }

        public boolean yes(String column) {
            String text = text(column);
            return switch (text) {
                case "yes" -> true;
                case "no" -> false;
                default -> throw Refused.of(column, "'" + text + "' is neither yes nor no", "write yes or no");
            };
        }

        public <E extends Enum<E>> E word(String column, Class<E> words) {
            String text = text(column);
            for (E word : words.getEnumConstants()) {
                if (word.name().equals(text)) {
                    return word;
                }
            }
            throw Refused.of(
                    column, "'" + text + "' is not known", "write one of " + List.of(words.getEnumConstants()));
        }

        /** A figure written as {@code value (low..high) BASIS source}; empty where the cell is empty. */
        public Optional<Figure> figure(String column) {
            return optionalText(column).map(text -> {
                Matcher parts = FIGURE.matcher(text);
                if (!parts.matches()) {
                    throw Refused.of(
                            column, "'" + text + "' is not a figure", "write: value (low..high) BASIS source-id");
                }
                double value = number(column, parts.group(1));
                double low = parts.group(2) == null ? value : number(column, parts.group(2));
                double high = parts.group(3) == null ? value : number(column, parts.group(3));
                Basis basis = basis(column, parts.group(4));
                return Refused.within(column, () -> new Figure(value, low, high, basis, parts.group(5)));
            });
        }

        private static double number(String column, String text) {
            try {
                return Double.parseDouble(text);
            } catch (NumberFormatException notANumber) {
                throw Refused.of(column, "'" + text + "' is not a number", "write digits with one decimal point");
            }
        }

        private static Basis basis(String column, String text) {
            for (Basis basis : Basis.values()) {
                if (basis.name().equals(text)) {
                    return basis;
                }
            }
            throw Refused.of(column, "'" + text + "' is no basis", "write one of " + List.of(Basis.values()));
        }
    }
}
