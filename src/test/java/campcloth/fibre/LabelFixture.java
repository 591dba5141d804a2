package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.figure.Fault;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Fibres without real figures, the vocabulary of all languages, and the tables of labels. */
final class LabelFixture {

    private static final Path WORDS = Path.of("catalogue", "label-words");
    private static final Path PUBLISHED = Path.of("src", "test", "resources", "published");

    private static final Map<FibreFamily, String> KEYS = Map.of(
            FibreFamily.CELLULOSIC,
            "cotton flax hemp jute ramie nettle kapok abaca alfa broom coir sisal sunn henequen maguey paper alginate viscose"
                    + " modal lyocell cupro",
            FibreFamily.PROTEIN,
            "wool alpaca llama camel cashmere mohair angora vicuna yak hair horsehair silk protein",
            FibreFamily.MELTABLE,
            "acetate triacetate polyester polyamide acrylic modacrylic polypropylene polyethylene polylactide elastane"
                    + " elastodiene elastomultiester elastolefin polyurethane chlorofibre fluorofibre vinylal trivinyl metal",
            FibreFamily.FLAME_RESISTANT,
            "aramid polyimide melamine",
            FibreFamily.MINERAL,
            "glass",
            FibreFamily.UNNAMED,
            "other unknown");

    private LabelFixture() {}

    static Fibres fibres() {
        String head = "key,name,family,agreedAllowancePercent,densityGCm3,regainPercent,softensC,meltsC,decomposesC,"
                + "oxygenIndexPercent,diameterUm,modulusGPa,inTheFlame\n";
        String rows = KEYS.entrySet().stream()
                .flatMap(family -> List.of(family.getValue().split(" ")).stream()
                        .map(key -> key + "," + key + "," + family.getKey()
                                + ",,1.5 TYPICAL test,8 TYPICAL test,,,,,,,burns\n"))
                .collect(Collectors.joining());
        List<Fault> faults = new ArrayList<>();
        try {
            Fibres fibres = Fibres.read(new StringReader(head + rows), faults);
            assertThat(faults).isEmpty();
            return fibres;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A reader with the words of all languages. */
    static LabelReader reader() {
        List<Fault> faults = new ArrayList<>();
        LabelReader reader = new LabelReader(vocabulary(faults));
        assertThat(faults).extracting(Fault::sentence).isEmpty();
        return reader;
    }

    static LabelVocabulary vocabulary(List<Fault> faults) {
        Map<String, Reader> tables = new LinkedHashMap<>();
        words().forEach((name, text) -> tables.put(name, new StringReader(text)));
        try {
            return LabelVocabulary.read(tables, fibres(), faults);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The vocabulary files by name. */
    static Map<String, String> words() {
        return files(WORDS, ".*\\.csv");
    }

    /** Every row of the vocabulary files, by the file's name without its ending. */
    static Map<String, List<CSVRecord>> rowsByLanguage() {
        Map<String, List<CSVRecord>> rows = new TreeMap<>();
        words().forEach((name, text) -> rows.put(name.replace(".csv", ""), rows(text)));
        return rows;
    }

    /** The labels that must be read, by language. */
    static Map<String, List<CSVRecord>> labels() {
        return corpus("labels-([a-z]+)\\.csv");
    }

    /** The labels that must be refused, by language. */
    static Map<String, List<CSVRecord>> refusals() {
        return corpus("labels-([a-z]+)-refused\\.csv");
    }

    private static Map<String, List<CSVRecord>> corpus(String names) {
        Map<String, List<CSVRecord>> rows = new TreeMap<>();
        files(PUBLISHED, names).forEach((name, text) -> rows.put(name.replaceAll(names, "$1"), rows(text)));
        return rows;
    }

    private static Map<String, String> files(Path folder, String names) {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                String name = file.getFileName().toString();
                if (name.matches(names)) {
                    texts.put(name, Files.readString(file));
                }
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return texts;
    }

    /** The text of a table of published rows. */
    static String published(String file) {
        try {
            return Files.readString(PUBLISHED.resolve(file));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static List<CSVRecord> rows(String text) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .setIgnoreEmptyLines(true)
                .get();
        try (CSVParser rows = CSVParser.builder()
                .setReader(new StringReader(text))
                .setFormat(format)
                .get()) {
            return rows.getRecords();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The text of a table cell with its escapes written out. */
    static String unescaped(String cell) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (c != '\\') {
                text.append(c);
                continue;
            }
            i++;
            switch (cell.charAt(i)) {
                case 'n' -> text.append('\n');
                case 'r' -> text.append('\r');
                case 't' -> text.append('\t');
                case 'u' -> {
                    text.append((char) Integer.parseInt(cell.substring(i + 1, i + 5), 16));
                    i += 4;
                }
                default -> throw new IllegalArgumentException(cell);
            }
        }
        return text.toString();
    }
}
