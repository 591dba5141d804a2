package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class LabelReaderTest {

    private static final LabelReader READER = LabelFixture.reader();

    static Stream<Arguments> labels() {
        return LabelFixture.labels().values().stream()
                .flatMap(List::stream)
                .map(row -> Arguments.of(LabelFixture.unescaped(row.get("text")), row.get("parts")));
    }

    static Stream<Arguments> refusals() {
        return LabelFixture.refusals().values().stream()
                .flatMap(List::stream)
                .map(row -> Arguments.of(
                        LabelFixture.unescaped(row.get("text")),
                        LabelFixture.unescaped(row.get("place")),
                        row.get("because")));
    }

    @ParameterizedTest
    @MethodSource("labels")
    void labelsSayWhatTheySay(String text, String expected) {
        assertThat(READER.read(text)).as(text).isInstanceOf(LabelReading.Read.class);
        LabelReading.Read read = (LabelReading.Read) READER.read(text);
        List<String> expectedParts = List.of(expected.split(" \\| "));
        assertThat(read.parts()).hasSameSizeAs(expectedParts);
        for (int i = 0; i < expectedParts.size(); i++) {
            String[] partAndShares = expectedParts.get(i).split(": ");
            LabelReading.Part part = read.parts().get(i);
            assertThat(part.part()).isEqualTo(partAndShares[0]);
            String[] shares = partAndShares[1].split("; ");
            assertThat(part.blend().shares()).hasSameSizeAs(shares);
            for (String share : shares) {
                String[] fibreAndPercent = share.split(" ");
                assertThat(part.blend().percentOf(fibreAndPercent[0]))
                        .as(share)
                        .isCloseTo(Double.parseDouble(fibreAndPercent[1]), within(0.001));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("refusals")
    void whatIsNoClearCompositionIsRefusedInItsPlace(String text, String place, String because) {
        LabelReading reading = READER.read(text);
        assertThat(reading).as(text).isInstanceOf(LabelReading.NotRead.class);
        LabelReading.NotRead notRead = (LabelReading.NotRead) reading;
        if (!place.isEmpty()) {
            assertThat(notRead.place()).as(notRead.because()).isEqualTo(place);
            assertThat(notRead.from()).isLessThan(notRead.to());
        }
        assertThat(notRead.because()).contains(because);
        assertThat(notRead.remedy()).isNotBlank();
        assertThat(notRead.from()).isBetween(0, text.length());
        assertThat(notRead.to()).isBetween(notRead.from(), text.length());
    }

    @Test
    void thePublishedTablesAreNotSmall() {
        assertThat(labels().count()).isGreaterThanOrEqualTo(400);
        assertThat(refusals().count()).isGreaterThanOrEqualTo(100);
        Set<String> languages = LabelFixture.rowsByLanguage().keySet().stream()
                .filter(file -> file.length() == 2)
                .collect(Collectors.toSet());
        assertThat(languages).hasSize(13);
        assertThat(LabelFixture.labels()).containsKeys(languages.toArray(String[]::new));
        assertThat(LabelFixture.refusals()).containsKeys(languages.toArray(String[]::new));
        assertThat(languages).allSatisfy(language -> {
            assertThat(texts(LabelFixture.labels(), language)).hasSizeGreaterThanOrEqualTo(45);
            assertThat(texts(LabelFixture.refusals(), language)).hasSizeGreaterThanOrEqualTo(12);
        });
    }

    /** Different labels of a language; one that stands twice counts once. */
    private static Set<String> texts(Map<String, List<CSVRecord>> corpus, String language) {
        return corpus.getOrDefault(language, List.of()).stream()
                .map(row -> row.get("text"))
                .collect(Collectors.toSet());
    }

    /** Only where there is no text there is no place to point at. */
    @Test
    void everyRefusedRowHasAPlace() {
        assertThat(LabelFixture.refusals().values().stream().flatMap(List::stream))
                .allSatisfy(row -> assertThat(row.get("place").isEmpty())
                        .as(row.get("text"))
                        .isEqualTo(row.get("text").isEmpty()));
    }

    @Test
    void twoMeaningsAreBothTold() {
        assertThat(notRead("60 CO 40 PE").readings()).containsExactly("polyethylene", "polyester");
        assertThat(notRead("100% CA").readings()).containsExactly("acetate", "hemp");
        assertThat(notRead("100% cotton or polyester").readings()).containsExactly("cotton", "polyester");
        assertThat(notRead("poly-cotton").readings()).hasSize(2);
        assertThat(notRead("100% cotton shell, lining 100% silk").readings()).hasSize(2);
    }

    @Test
    void theOffsetsPointAtTheCharactersOfTheText() {
        String text = "Shell: 100% cotton\nLining: 60% silk, 40% cottn";
        LabelReading.NotRead notRead = notRead(text);
        assertThat(text.substring(notRead.from(), notRead.to())).isEqualTo("cottn");
    }

    @Test
    void aLabelWithoutSyntheticsIsNoProofAndSaysSo() {
        assertThat(notes("100% wool")).anyMatch(n -> n.contains("does not prove"));
        assertThat(notes("Shell: 100% polyester Lining: 100% cotton")).anyMatch(n -> n.contains("does not prove"));
        assertThat(notes("60% wool 40% polyester")).noneMatch(n -> n.contains("does not prove"));
        assertThat(notes("95% wool 5% other fibres")).noneMatch(n -> n.contains("does not prove"));
    }

    @Test
    void whatTheRegulationLetsALabelLeaveOutIsNoted() {
        assertThat(notes("pure linen"))
                .singleElement()
                .asString()
                .contains("2 %", "carded", "5 %", "7 %", "Articles 7, 10 and 20");
        assertThat(notes("70% wool 30% linen")).hasSize(2).anyMatch(n -> n.contains("3 % of the whole mass"));
        assertThat(notes("70% cotton 30% polyester")).singleElement().asString().contains("Article 20");
        assertThat(notes("100% polyester")).isEmpty();
        assertThat(notes("90% cotton 10% other fibres")).anyMatch(n -> n.contains("worst") && n.contains("Article 9"));
        assertThat(notes("60% cotton 40% other fibres")).anyMatch(n -> n.contains("more than 15 %"));
        assertThat(notes("85% cotton 15% other fibres")).noneMatch(n -> n.contains("more than 15 %"));
        assertThat(notes("Shell: 60% wool 40% linen\nLining: 90% silk 10% other fibres\nTrim: 100% polyester"))
                .hasSize(3)
                .anyMatch(n -> n.startsWith("lining: other fibres"))
                .anyMatch(n -> n.startsWith("shell: no fibre that melts"))
                .anyMatch(n -> n.startsWith("shell, lining: each share"));
    }

    @Test
    void whatALabelSaysBesideTheSharesIsNoted() {
        assertThat(notes("30% polyester 70% cotton")).anyMatch(n -> n.contains("descending order"));
        assertThat(notes("70% cotton 30% polyester")).noneMatch(n -> n.contains("descending order"));
        assertThat(notes("50% cotton 30% polyester 20% cotton")).anyMatch(n -> n.contains("stands twice"));
        assertThat(notes("33.3% cotton 33.3% linen 33.3% hemp")).anyMatch(n -> n.contains("scaled to 100"));
        assertThat(notes("100% organic cotton")).anyMatch(n -> n.startsWith("'organic'"));
        assertThat(notes("100% bamboo viscose")).anyMatch(n -> n.contains("plant"));
        assertThat(notes("100% rayon")).anyMatch(n -> n.contains("United States"));
        assertThat(notes("100% coated cotton")).anyMatch(n -> n.contains("may melt"));
        assertThat(notes("no label")).anyMatch(n -> n.contains("worst"));
        assertThat(notes("100% wool exclusive of trim")).anyMatch(n -> n.contains("decoration"));
    }

    @Test
    void aTextThatIsTooLongIsRefusedPastTheLimit() {
        String longest = "100% cotton" + " ".repeat(LabelReader.MOST_CHARACTERS - 11);
        assertThat(READER.read(longest)).isInstanceOf(LabelReading.Read.class);
        assertThat(notRead(longest + " ").from()).isEqualTo(LabelReader.MOST_CHARACTERS);
        assertThat(notRead("9".repeat(5_000_000)).place()).hasSizeLessThan(80);
    }

    @Test
    void hostileTextsAreRefusedWithoutHarm() {
        List<String> hostile = new ArrayList<>(List.of(
                "\uD83E",
                "\uDDF5",
                "\u0000",
                "\uFEFF100% cotton",
                "100%\u200Bcotton",
                "\u202E%001 nottoc",
                "e\u0301".repeat(900)));
        for (String bomb : List.of(
                "a", "%", "(", "-", "1", "1 ", ", ", "or ", "cotton ", "main ", "other ", "not ", "1.", "/", "'")) {
            hostile.add(bomb.repeat(LabelReader.MOST_CHARACTERS / bomb.length()));
        }
        for (String text : hostile) {
            LabelReading.NotRead notRead = notRead(text);
            assertThat(notRead.place())
                    .doesNotContain("\u0000")
                    .doesNotContain("\u202E")
                    .hasSizeLessThan(80);
        }
    }

    @Test
    void aFibreWordInsideAnotherWordNeverMatches() {
        for (String word : List.of("cottonwool", "xwool", "woolx", "subacetate", "acrylics", "linens")) {
            assertThat(notRead("100% " + word).place()).isEqualTo(word);
        }
    }

    private static LabelReading.NotRead notRead(String text) {
        assertThat(READER.read(text)).as(text).isInstanceOf(LabelReading.NotRead.class);
        return (LabelReading.NotRead) READER.read(text);
    }

    private static List<String> notes(String text) {
        assertThat(READER.read(text)).as(text).isInstanceOf(LabelReading.Read.class);
        return ((LabelReading.Read) READER.read(text)).notes();
    }
}
