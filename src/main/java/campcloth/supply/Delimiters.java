package campcloth.supply;

import java.io.IOException;
import java.io.StringReader;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Which sign parts the cells of a list: the one by which most heads are words that are known, then the one that stands most often. */
final class Delimiters {

    private static final List<Character> KNOWN = List.of(',', ';', '\t');

    private Delimiters() {}

    /**
     * The sign.
     *
     * @param start the beginning of the list
     */
    static char recognised(String start, HeadReader heads) {
        return KNOWN.stream()
                .max(Comparator.comparingLong((Character sign) -> heads.known(head(start, sign)))
                        .thenComparingInt(sign -> head(start, sign).size())
                        .thenComparingInt(sign -> -KNOWN.indexOf(sign)))
                .orElse(',');
    }

    private static List<String> head(String start, char delimiter) {
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter).get();
        try (CSVParser parser = CSVParser.builder()
                .setReader(new StringReader(start))
                .setFormat(format)
                .get()) {
            for (CSVRecord first : parser) {
                return first.toList().stream().limit(HeadReader.MOST_COLUMNS).toList();
            }
        } catch (IOException | java.io.UncheckedIOException noCsvThatWay) {
            return List.of();
        }
        return List.of();
    }
}
