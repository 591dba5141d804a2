package campcloth.supply;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.fibre.Fibres;
import campcloth.fibre.LabelReader;
import campcloth.fibre.LabelVocabulary;
import campcloth.figure.Fault;
import campcloth.figure.Refusal;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Lists read for tests, with the words and fibres of the catalogue. */
public final class Lists {

    static final Fibres FIBRES = reading(faults -> Fibres.read(open("fibres.csv"), faults));
    static final ListWords WORDS = reading(faults -> ListWords.read(open("list-columns.csv"), faults));
    public static final ListReader READER = new ListReader(WORDS, labels(), FIBRES);

    private Lists() {}

    /** A list that was read. */
    record Read(ListHead head, List<ListRow> rows) {

        Listed good(int at) {
            assertThat(rows.get(at)).isInstanceOf(ListRow.Good.class);
            return ((ListRow.Good) rows.get(at)).listed();
        }

        /** The reasons of a row that is refused, as {@code field: sentence}. */
        String bad(int at) {
            assertThat(rows.get(at)).isInstanceOf(ListRow.Bad.class);
            return ((ListRow.Bad) rows.get(at))
                    .refusals().stream().map(Lists::words).collect(Collectors.joining(" | "));
        }
    }

    static Read read(String text) {
        return read(text, new ListOrder("Wendlow Mill", Optional.empty(), Optional.empty()));
    }

    static Read read(String text, ListOrder order) {
        return read(text.getBytes(StandardCharsets.UTF_8), order);
    }

    static Read read(byte[] bytes, ListOrder order) {
        List<ListRow> rows = new ArrayList<>();
        try {
            return new Read(READER.read(new ByteArrayInputStream(bytes), order, rows::add), rows);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The one row of a list of three needed columns and one more. */
    static Read with(String header, String cell) {
        return read("key;name;composition;" + header + "\nA1;Linen;100% linen;" + cell + "\n");
    }

    private static String words(Refusal refusal) {
        return refusal.field() + ": " + refusal.sentence();
    }

    private static LabelReader labels() {
        return reading(faults -> {
            Map<String, Reader> tables = new LinkedHashMap<>();
            try (var files = Files.list(Path.of("catalogue", "label-words"))) {
                for (Path file : files.sorted().toList()) {
                    tables.put("label-words/" + file.getFileName(), Files.newBufferedReader(file));
                }
            }
            return new LabelReader(LabelVocabulary.read(tables, FIBRES, faults));
        });
    }

    private static Reader open(String file) throws IOException {
        return Files.newBufferedReader(Path.of("catalogue", file));
    }

    private interface Reading<T> {
        T from(List<Fault> faults) throws IOException;
    }

    private static <T> T reading(Reading<T> what) {
        List<Fault> faults = new ArrayList<>();
        try {
            T read = what.from(faults);
            assertThat(faults).isEmpty();
            return read;
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }
}
