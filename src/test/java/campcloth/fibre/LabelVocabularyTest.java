package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.figure.Fault;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class LabelVocabularyTest {

    private static final String HEAD = "word,kind,means,source,note\n";

    @Test
    void theWordsHaveNoFault() {
        List<Fault> faults = new ArrayList<>();
        LabelVocabulary vocabulary = LabelFixture.vocabulary(faults);
        assertThat(faults).extracting(Fault::sentence).isEmpty();
        assertThat(vocabulary.size()).isGreaterThan(400);
    }

    @Test
    void everySourceOfAWordIsInTheTableOfSources() throws IOException {
        Set<String> sources = new HashSet<>();
        try (var lines = Files.lines(Path.of("catalogue", "sources.csv"))) {
            lines.forEach(line -> sources.add(line.split(",")[0]));
        }
        assertThat(LabelFixture.rowsByLanguage().values())
                .allSatisfy(rows ->
                        assertThat(rows).allSatisfy(row -> assertThat(sources).contains(row.get("source"))));
    }

    @Test
    void everyFibreIsNamedBySomeWord() {
        Set<String> named = LabelFixture.rowsByLanguage().values().stream()
                .flatMap(List::stream)
                .map(row -> row.get("means"))
                .collect(Collectors.toSet());
        assertThat(LabelFixture.fibres().all())
                .allSatisfy(fibre -> assertThat(named).contains(fibre.key()));
    }

    @Test
    void aFibreThatIsNotInTheTableIsAFaultWithItsPlace() throws IOException {
        List<Fault> faults =
                faults(Map.of("en.csv", HEAD + "wool,FIBRE,wool,test,\nunobtain,FIBRE,unobtainium,test,\n"));
        assertThat(faults).singleElement().satisfies(fault -> {
            assertThat(fault.file()).isEqualTo("en.csv");
            assertThat(fault.line()).isEqualTo(3);
            assertThat(fault.field()).isEqualTo("means");
            assertThat(fault.because()).contains("unobtainium");
            assertThat(fault.remedy()).contains("fibres.csv");
        });
    }

    @Test
    void everyRowThatCannotBeUsedIsAFaultOfItsOwn() throws IOException {
        String rows =
                "a,NONSENSE,wool,test,\nb,FIBRE,,test,\nc,PAIR,wool,test,\nd,AMBIGUOUS,wool,test,\ne,PART,,test,\n"
                        + "f,FIBRE,wool,,\n,FIBRE,wool,test,\ng,FIBRE,wool,test,\nG,FIBRE,silk,test,\n";
        assertThat(faults(Map.of("en.csv", HEAD + rows)))
                .extracting(Fault::field)
                .containsExactly("kind", "means", "means", "means", "means", "source", "word", "word");
    }

    @Test
    void aWordThatTwoLanguagesUnderstandDifferentlyIsRefusedWithBothReadings() throws IOException {
        String one = HEAD + "lana,FIBRE,wool,test,\n";
        String other = HEAD + "Lana,FIBRE,silk,test,\n";
        List<Fault> faults = new ArrayList<>();
        LabelReader reader = new LabelReader(LabelVocabulary.read(
                Map.of("it.csv", new StringReader(one), "es.csv", new StringReader(other)),
                LabelFixture.fibres(),
                faults));
        assertThat(faults).isEmpty();
        LabelReading.NotRead notRead = (LabelReading.NotRead) reader.read("100% lana");
        assertThat(notRead.place()).isEqualTo("lana");
        assertThat(notRead.readings()).containsExactly("silk (Spanish 'Lana')", "wool (Italian 'lana')");
    }

    @Test
    void aFurtherLanguageIsAFurtherTable() throws IOException {
        String german =
                HEAD + "Leinen,FIBRE,flax,test,\nund,AND,,test,\nFutter,PART,lining,test,\nSeide,FIBRE,silk,test,\n"
                        + "W\u00fcrzig,MODIFIER,,test,\n";
        List<Fault> faults = new ArrayList<>();
        Reader english = new StringReader(LabelFixture.words().get("en.csv"));
        LabelReader reader = new LabelReader(LabelVocabulary.read(
                Map.of("en.csv", english, "de.csv", new StringReader(german)), LabelFixture.fibres(), faults));
        assertThat(faults).isEmpty();
        LabelReading.Read read =
                (LabelReading.Read) reader.read("60 % wu\u0308rzig LEINEN und 40 % cotton; Futter: 100 % Seide");
        assertThat(read.parts()).extracting(LabelReading.Part::part).containsExactly("whole", "lining");
        assertThat(read.parts().get(0).blend().percentOf("flax")).isEqualTo(60);
    }

    private static List<Fault> faults(Map<String, String> tables) throws IOException {
        List<Fault> faults = new ArrayList<>();
        Map<String, Reader> readers = tables.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, e -> new StringReader(e.getValue())));
        LabelVocabulary.read(readers, LabelFixture.fibres(), faults);
        return faults;
    }
}
