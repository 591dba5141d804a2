package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What each language must be able to say, whatever its words are. */
class LabelLanguagesTest {

    private static final LabelReader READER = LabelFixture.reader();

    private static final Set<String> NAMES = Set.of("FIBRE", "OTHER", "UNKNOWN", "US_NAME", "CODE");

    /** Kinds without which a label of more than one fibre or part cannot be read in its language. */
    private static final Set<String> NEEDED = Set.of(
            "FIBRE",
            "OTHER",
            "UNKNOWN",
            "AMBIGUOUS",
            "IMITATION",
            "PURE",
            "PERCENT",
            "PART",
            "MODIFIER",
            "CLOTH",
            "HEADING",
            "REMARK",
            "AND",
            "OR");

    static Stream<String> languages() {
        return LabelFixture.rowsByLanguage().keySet().stream().filter(name -> name.length() == 2);
    }

    static Stream<String> files() {
        return LabelFixture.rowsByLanguage().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("languages")
    void everyFibreHasANameInEveryLanguage(String language) {
        Set<String> named = rows(language).stream()
                .filter(row -> NAMES.contains(row.get("kind")))
                .map(row -> row.get("means"))
                .collect(Collectors.toSet());
        assertThat(LabelFixture.fibres().all())
                .allSatisfy(fibre -> assertThat(named).contains(fibre.key()));
    }

    @ParameterizedTest
    @MethodSource("languages")
    void everyLanguageHasTheWordsAroundTheFibres(String language) {
        assertThat(rows(language)).extracting(row -> row.get("kind")).containsAll(NEEDED);
        assertThat(rows(language))
                .filteredOn(row -> row.get("kind").equals("PART"))
                .extracting(row -> row.get("means"))
                .contains("outer", "main", "lining", "sleeves", "hood", "filling", "trim");
    }

    /** The parts are compared by name, so a language may not bring names of its own. */
    @ParameterizedTest
    @MethodSource("languages")
    void theNamesOfPartsAreThoseOfTheEnglishWords(String language) {
        Set<String> english = parts("en");
        assertThat(english).containsAll(parts(language));
    }

    /** A word of a language alone on a label says what its row says, or is refused with all of its readings. */
    @ParameterizedTest
    @MethodSource("files")
    void everyNameOfAFibreIsReadAsThatFibre(String file) {
        for (CSVRecord row : rows(file)) {
            if (!NAMES.contains(row.get("kind"))) {
                continue;
            }
            LabelReading reading = READER.read("100 % " + row.get("word"));
            if (reading instanceof LabelReading.Read read) {
                assertThat(read.parts()).as(row.get("word")).hasSize(1);
                assertThat(read.parts().get(0).blend().percentOf(row.get("means")))
                        .as(row.get("word"))
                        .isEqualTo(100);
            } else if (reading instanceof LabelReading.NotRead notRead) {
                assertThat(notRead.readings()).as(row.get("word")).hasSizeGreaterThan(1);
            }
        }
    }

    /** A word known to be no clear fibre refuses any label of its language. */
    @ParameterizedTest
    @MethodSource("files")
    void everyWordThatIsNoFibreRefusesTheLabel(String file) {
        assertThat(rows(file))
                .filteredOn(row ->
                        row.get("kind").equals("AMBIGUOUS") || row.get("kind").equals("IMITATION"))
                .allSatisfy(row -> {
                    assertThat(row.get("note")).isNotBlank();
                    assertThat(READER.read("100 % " + row.get("word"))).isInstanceOf(LabelReading.NotRead.class);
                });
    }

    private static Set<String> parts(String language) {
        return rows(language).stream()
                .filter(row -> row.get("kind").equals("PART"))
                .map(row -> row.get("means"))
                .collect(Collectors.toSet());
    }

    private static List<CSVRecord> rows(String file) {
        return LabelFixture.rowsByLanguage().getOrDefault(file, List.of());
    }
}
