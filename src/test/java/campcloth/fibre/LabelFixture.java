package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.figure.Fault;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Fibres without real figures, the English vocabulary, and tables of the test folder. */
final class LabelFixture {

    static final String ENGLISH = "/catalogue/label-words/en.csv";

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

    static LabelReader english() {
        List<Fault> faults = new ArrayList<>();
        try (Reader words = resource(ENGLISH)) {
            LabelVocabulary vocabulary = LabelVocabulary.read(Map.of("en.csv", words), fibres(), faults);
            assertThat(faults).isEmpty();
            return new LabelReader(vocabulary);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static List<CSVRecord> table(String path) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .get();
        try (CSVParser rows =
                CSVParser.builder().setReader(resource(path)).setFormat(format).get()) {
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

    static Reader resource(String path) {
        return new InputStreamReader(
                Objects.requireNonNull(LabelFixture.class.getResourceAsStream(path), path), StandardCharsets.UTF_8);
    }
}
