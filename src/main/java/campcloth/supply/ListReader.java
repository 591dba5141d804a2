package campcloth.supply;

import campcloth.fibre.Fibres;
import campcloth.fibre.LabelReader;
import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a supplier's list, row by row, in memory that does not grow with the list but for its keys. A list that is no CSV, or
 * whose head lacks what is needed, is refused whole; a row that cannot be used is handed on as such. Up to {@value #MOST_ROWS}
 * rows.
 */
public final class ListReader {

    static final int MOST_ROWS = 200_000;

    private static final int LONGEST_HEAD = 64 * 1024;

    private final HeadReader heads;
    private final Meanings meanings;
    private final LabelReader labels;
    private final Fibres fibres;

    public ListReader(ListWords words, LabelReader labels, Fibres fibres) {
        this.heads = new HeadReader(words);
        this.meanings = new Meanings(words);
        this.labels = labels;
        this.fibres = fibres;
    }

    /**
     * Reads all of it.
     *
     * @param rows who takes the rows, each of them once, in their order
     * @return what its head was understood as
     * @throws Refused where nothing of it can be read, also after some rows
     * @throws IOException where the bytes do not come
     */
    public ListHead read(InputStream bytes, ListOrder order, Consumer<ListRow> rows) throws IOException {
        RowLimit limit = new RowLimit(new BufferedReader(new InputStreamReader(
                bytes,
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPLACE)
                        .onUnmappableCharacter(CodingErrorAction.REPLACE))));
        BufferedReader text = new BufferedReader(limit);
        skipByteOrderMark(text);
        char delimiter = order.delimiter().orElse(Delimiters.recognised(start(text), heads));
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(delimiter)
                .setIgnoreEmptyLines(true)
                .get();
        try (CSVParser parser =
                CSVParser.builder().setReader(text).setFormat(format).get()) {
            return read(parser, delimiter, order, limit, rows);
        } catch (RowLimit.Exceeded tooLong) {
            throw tooLong(tooLong.line());
        } catch (UncheckedIOException broken) {
            throw refused(Optional.ofNullable(broken.getCause()).orElseGet(() -> new IOException(broken)));
        } catch (IOException broken) {
            throw refused(broken);
        }
    }

    private ListHead read(CSVParser parser, char delimiter, ListOrder order, RowLimit limit, Consumer<ListRow> rows) {
        Iterator<CSVRecord> records = parser.iterator();
        if (!records.hasNext()) {
            throw Refused.of("(body)", "is empty", "send a list with a head line and rows");
        }
        HeadReader.Head head = heads.read(delimiter, records.next().toList());
        RowReader reader = new RowReader(
                head, order, new DecimalText(delimiter != ','), new Compositions(labels), meanings, fibres);
        Set<String> keys = new HashSet<>();
        int count = 0;
        limit.rowBegins(parser.getCurrentLineNumber());
        while (records.hasNext()) {
            List<String> cells = records.next().toList();
            long line = parser.getCurrentLineNumber();
            limit.rowBegins(line);
            if (cells.stream().allMatch(String::isBlank)) {
                continue;
            }
            if (++count > MOST_ROWS) {
                throw Refused.of("(body)", "has more than " + MOST_ROWS + " rows", "send it in parts");
            }
            rows.accept(once(reader.read(line, cells), keys));
        }
        if (count == 0) {
            throw Refused.of("(body)", "has a head and no rows", "send a list with rows");
        }
        return head.told();
    }

    /** The second row of a key (or of a cloth that is named by its id) is refused, whether or not the first could be used. */
    private static ListRow once(ListRow row, Set<String> keys) {
        String named =
                row instanceof ListRow.Good good ? good.listed().clothId().orElse(row.key()) : row.key();
        if (named.isEmpty() || keys.add(named)) {
            return row;
        }
        Refusal twice = new Refusal("key", Words.quoted(named) + " stands twice in the list", "keep one row a key");
        return new ListRow.Bad(row.line(), row.key(), List.of(twice));
    }

    private static void skipByteOrderMark(BufferedReader text) throws IOException {
        text.mark(1);
        if (text.read() != '\ufeff') {
            text.reset();
        }
    }

    /** The beginning, without taking it. */
    private static String start(BufferedReader text) throws IOException {
        char[] head = new char[LONGEST_HEAD];
        text.mark(LONGEST_HEAD + 1);
        int filled = 0;
        int more = 0;
        while (filled < head.length && more >= 0) {
            more = text.read(head, filled, head.length - filled);
            filled += Math.max(more, 0);
        }
        text.reset();
        return new String(head, 0, filled);
    }

    private static Refused refused(IOException broken) throws RuntimeException {
        if (broken instanceof RowLimit.Exceeded tooLong) {
            return tooLong(tooLong.line());
        }
        return Refused.of(
                "(body)",
                "is not CSV: " + Optional.ofNullable(broken.getMessage()).orElse("it cannot be read"),
                "close every quotation mark, and double those inside a quoted cell");
    }

    private static Refused tooLong(long line) {
        return Refused.of(
                "(body)",
                "has a row of more than " + RowLimit.MOST_CHARACTERS + " characters behind line " + line,
                "look for a quotation mark that is not closed, or shorten the row");
    }
}
