package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.fibre.Fibres;
import campcloth.figure.Citation;
import campcloth.figure.Fault;
import campcloth.figure.Sources;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClothTableTest {

    private static final String HEADER = "id,name,blend,weave,surface,finish,weightGsm,widthCm,thicknessMm,"
            + "airPermeabilityMmS,vapourResistanceM2PaW,shrinkWarpPercent,shrinkWeftPercent,fibreDiameterUm,"
            + "fibreDiameterCvPercent,pricePerMetre,nap,stretch,note\n";
    private static final String GOOD = "linen-plain,shirt linen,flax 70; polyester 30,PLAIN,PLAIN,NONE,"
            + "150 (145..155) TYPICAL trade,148 TYPICAL trade,,,,6 (4..10) TYPICAL trade,,,,,no,yes,\n";

    private static Fibres fibres;

    @BeforeAll
    static void readFibres() throws IOException {
        List<Fault> faults = new ArrayList<>();
        try (var text = Files.newBufferedReader(Path.of("catalogue/fibres.csv"))) {
            fibres = Fibres.read(text, faults);
        }
        assertThat(faults).isEmpty();
    }

    private final List<Fault> faults = new ArrayList<>();

    private List<ClothTable.Entry> read(String text) throws IOException {
        return ClothTable.read(new StringReader(text), fibres, faults);
    }

    @Test
    void aGoodRowBecomesACloth() throws IOException {
        List<ClothTable.Entry> entries = read(HEADER + GOOD);
        assertThat(faults).isEmpty();
        assertThat(entries).singleElement().satisfies(entry -> {
            Cloth cloth = entry.cloth();
            assertThat(entry.id()).isEqualTo("linen-plain");
            assertThat(cloth.blend().percentOf("flax")).isEqualTo(70);
            assertThat(cloth.required(Property.WEIGHT_GSM).high()).isEqualTo(155);
            assertThat(cloth.required(Property.SHRINK_WARP_PERCENT).value()).isEqualTo(6);
            assertThat(cloth.figure(Property.THICKNESS_MM)).isEmpty();
            assertThat(cloth.nap()).isFalse();
            assertThat(cloth.stretch()).isTrue();
            assertThat(cloth.note()).isEmpty();
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "150 (145..155) TYPICAL trade | heavy | weightGsm | is not a figure",
                "150 (145..155) TYPICAL trade | 15o TYPICAL trade | weightGsm | is not a figure",
                "150 (145..155) TYPICAL trade | 1.5.0 TYPICAL trade | weightGsm | is not a number",
                "150 (145..155) TYPICAL trade | 150 (155..160) TYPICAL trade | weightGsm.low | does not contain",
                "150 (145..155) TYPICAL trade | 150 USUAL trade | weightGsm | is no basis",
                "150 (145..155) TYPICAL trade | 5 TYPICAL trade | weightGsm | is 5",
                "150 (145..155) TYPICAL trade | '' | weightGsm | is empty",
                "148 TYPICAL trade | '' | widthCm | is empty",
                "148 TYPICAL trade | 148 (5..900) TYPICAL trade | widthCm | is 5",
                "flax 70; polyester 30 | flax 60; polyester 30 | blend | sum to 90",
                "flax 70; polyester 30 | flax 70; unobtainium 30 | blend | not a fibre known here",
                "flax 70; polyester 30 | 70 flax | blend | is not a share",
                "flax 70; polyester 30 | flax 130; polyester -30 | blend | is 130",
                "linen-plain | Linen Plain | id | is not an id",
                "linen-plain | '' | id | is empty",
                "shirt linen | '' | name | is empty",
                "NONE | BLESSED | finish | is not known",
                "no,yes | no,perhaps | stretch | neither yes nor no",
            })
    void whatIsWrongIsToldWithFileLineFieldAndRemedy(String good, String bad, String field, String because)
            throws IOException {
        String row = GOOD.replaceFirst(java.util.regex.Pattern.quote(good), bad);
        assertThat(row).isNotEqualTo(GOOD);
        assertThat(read("# a comment\n" + HEADER + GOOD.replace("linen-plain", "another") + row))
                .hasSize(1);
        assertThat(faults).isNotEmpty().allSatisfy(fault -> {
            assertThat(fault.file()).isEqualTo("cloths.csv");
            assertThat(fault.line()).isEqualTo(4);
            assertThat(fault.field()).isEqualTo(field);
            assertThat(fault.remedy()).isNotBlank();
            assertThat(fault.sentence()).contains("cloths.csv", "line 4", field, fault.remedy());
        });
        assertThat(faults.get(0).because()).contains(because);
    }

    @Test
    void aSecondClothOfTheSameIdIsAFault() throws IOException {
        assertThat(read(HEADER + GOOD + GOOD)).hasSize(1);
        assertThat(faults).singleElement().satisfies(fault -> {
            assertThat(fault.line()).isEqualTo(3);
            assertThat(fault.field()).isEqualTo("id");
            assertThat(fault.because()).contains("stands twice");
        });
    }

    @Test
    void aMissingColumnIsAFaultOfTheHeader() throws IOException {
        assertThat(read(HEADER.replace(",widthCm", "") + GOOD)).isEmpty();
        assertThat(faults).singleElement().satisfies(fault -> {
            assertThat(fault.line()).isEqualTo(1);
            assertThat(fault.field()).isEqualTo("widthCm");
            assertThat(fault.because()).contains("missing");
        });
    }

    @Test
    void allBrokenRowsAreToldAtOnceAndTheGoodOnesKept() throws IOException {
        String broken = GOOD.replace("flax 70", "flax 60");
        assertThat(read(HEADER + broken + GOOD + broken + "too,short\n")).hasSize(1);
        assertThat(faults).extracting(Fault::line).containsExactlyInAnyOrder(2L, 4L, 5L);
    }

    @Test
    void aSourceThatIsNotOnFileIsAFault() throws IOException {
        Sources sources = Sources.read(
                new StringReader("id,kind,citation,evidence,note\ntrade,COMMON_PRACTICE,Trade,MEMORY,\n"), faults);
        String row = GOOD.replace("148 TYPICAL trade", "148 TYPICAL hearsay");
        List<Fault> missing = Citation.in("cloths.csv", new StringReader(HEADER + GOOD + row)).stream()
                .map(citation -> citation.missingFrom(sources))
                .flatMap(Optional::stream)
                .toList();
        assertThat(faults).isEmpty();
        assertThat(missing).singleElement().satisfies(fault -> {
            assertThat(fault.line()).isEqualTo(3);
            assertThat(fault.field()).isEqualTo("widthCm");
            assertThat(fault.sentence()).contains("cloths.csv", "hearsay", "sources.csv");
        });
    }
}
