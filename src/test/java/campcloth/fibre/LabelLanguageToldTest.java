package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.figure.Fault;
import campcloth.figure.Refused;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The language of a label, told beside it. */
class LabelLanguageToldTest {

    private static final String HEAD = "word,kind,means,source,note\n";
    private static final LabelReader READER = LabelFixture.reader();
    private static final SortedSet<String> LANGUAGES =
            LabelFixture.vocabulary(new ArrayList<>()).languages();

    @Test
    void itSettlesAWordThatLanguagesUnderstandDifferently() {
        assertThat(READER.read("100% raion")).isInstanceOf(LabelReading.NotRead.class);
        assertThat(keys(READER.read("100% raion", "pt"))).containsExactly("viscose");
        assertThat(keys(READER.read("100% raion", "it"))).containsExactly("viscose");
        assertThat(READER.read("100% raion", "fi")).isInstanceOf(LabelReading.NotRead.class);
    }

    @Test
    void aLabelThatReadsWithoutItReadsAlikeInWhateverLanguage() {
        assertThat(LANGUAGES).hasSize(13);
        for (List<CSVRecord> rows : LabelFixture.labels().values()) {
            for (CSVRecord row : rows) {
                String text = LabelFixture.unescaped(row.get("text"));
                LabelReading alone = READER.read(text);
                assertThat(LANGUAGES)
                        .allSatisfy(told ->
                                assertThat(READER.read(text, told)).as(text).isEqualTo(alone));
            }
        }
    }

    /** What is refused for another reason than the language of a word stays refused, at the same place. */
    @Test
    void itMendsNoOtherFault() {
        for (List<CSVRecord> rows : LabelFixture.refusals().values()) {
            for (CSVRecord row : rows) {
                String text = LabelFixture.unescaped(row.get("text"));
                LabelReading alone = READER.read(text);
                assertThat(LANGUAGES)
                        .allSatisfy(told ->
                                assertThat(READER.read(text, told)).as(text).isEqualTo(alone));
            }
        }
    }

    @Test
    void itCountsForNothingWhereTheOtherWordsSpeakAgainstIt() throws IOException {
        Map<String, StringReader> tables = Map.of(
                "it.csv", new StringReader(HEAD + "lana,FIBRE,wool,test,\npuro,PURE,,test,\n"),
                "es.csv", new StringReader(HEAD + "lana,FIBRE,silk,test,\npuro,PURE,,test,\n"),
                "sv.csv", new StringReader(HEAD + "lana,FIBRE,hemp,test,\n"));
        List<Fault> faults = new ArrayList<>();
        LabelReader reader = new LabelReader(LabelVocabulary.read(tables, LabelFixture.fibres(), faults));
        assertThat(faults).isEmpty();
        assertThat(reader.read("puro lana")).isInstanceOf(LabelReading.NotRead.class);
        assertThat(keys(reader.read("puro lana", "it"))).containsExactly("wool");
        assertThat(keys(reader.read("puro lana", "es"))).containsExactly("silk");
        assertThat(reader.read("puro lana", "sv")).isEqualTo(reader.read("puro lana"));
        assertThat(keys(reader.read("100% lana", "sv"))).containsExactly("hemp");
    }

    @Test
    void aLanguageThatIsNotReadIsRefusedWithTheChoices() {
        for (String told : List.of("", "xx", "EN", "en-GB", "english", "\u0000")) {
            assertThatThrownBy(() -> READER.read("100% wool", told))
                    .isInstanceOfSatisfying(
                            Refused.class,
                            refused -> assertThat(refused.refusals())
                                    .singleElement()
                                    .satisfies(r -> {
                                        assertThat(r.field()).isEqualTo("language");
                                        assertThat(r.sentence())
                                                .contains("cs, da, de, en, es, fi, fr, it, nl, no, pl, pt, sv");
                                    }));
        }
    }

    private static List<String> keys(LabelReading reading) {
        assertThat(reading).isInstanceOf(LabelReading.Read.class);
        return ((LabelReading.Read) reading)
                .parts().get(0).blend().shares().stream()
                        .map(share -> share.fibre().key())
                        .toList();
    }
}
