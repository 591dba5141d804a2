package campcloth.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.ShippedCatalogue;
import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import campcloth.figure.Refused;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SizesTest {

    private static final Sizes SIZES = ShippedCatalogue.get().sizes();
    private static final String HEADER =
            "key,name,heightCm,neckCm,chestCm,waistCm,hipCm,thighCm,sleeveLengthCm,inseamCm\n";

    @Test
    void threeSizesEachOfWomenAndMenThatGrow() {
        assertThat(SIZES.all()).extracting(Size::key).containsExactly("W-S", "W-M", "W-L", "M-S", "M-M", "M-L");
        for (String who : new String[] {"W", "M"}) {
            for (String key : SIZES.named(who + "-M").cm().keySet()) {
                assertThat(cm(who + "-M", key))
                        .as(who + " " + key)
                        .isStrictlyBetween(cm(who + "-S", key), cm(who + "-L", key));
            }
        }
    }

    /** 5th and 95th percentile of a normal law lie 1.645 standard deviations from the mean; people are a little skewed. */
    @Test
    void twoReadingsOfTheSurveyAgree() throws IOException {
        List<Fault> faults = new ArrayList<>();
        try (var text = Files.newBufferedReader(Path.of("src/test/resources/agreement/body-sizes.csv"))) {
            int rows = ReferenceTable.read(
                            "body-sizes.csv", text, List.of("sex", "measurement", "meanCm", "spreadCm"), faults)
                    .map(row -> {
                        String key = row.text("measurement");
                        double mean = row.number("meanCm");
                        double spread = 1.645 * row.number("spreadCm");
                        agrees(row.text("sex") + "-S", key, mean - spread);
                        agrees(row.text("sex") + "-M", key, mean);
                        agrees(row.text("sex") + "-L", key, mean + spread);
                        return row.line();
                    })
                    .size();
            assertThat(rows).isEqualTo(14);
        }
        assertThat(faults).isEmpty();
    }

    private static void agrees(String size, String key, double cm) {
        assertThat(cm(size, key)).as(size + " " + key).isCloseTo(cm, within(2.5));
    }

    private static double cm(String size, String key) {
        return Optional.ofNullable(SIZES.named(size).cm().get(key))
                .orElseThrow()
                .value();
    }

    @Test
    void everySizeMakesUpEveryDesignOrSaysWhatIsMissing() {
        for (Design design : Designs.all()) {
            for (Size size : SIZES.all()) {
                Garment garment =
                        design.madeUp(Measurements.of(Map.of()).ofSize(size), Options.USUAL, SewnCloth.usual());
                assertThat(garment.notes())
                        .as(design.key() + " " + size.key())
                        .anyMatch(note -> note.contains("size " + size.key()));
            }
        }
    }

    @Test
    void whatWasMeasuredWins() {
        Measurements wearer = Measurements.of(Map.of("sleeveLengthCm", 60.0)).ofSize(SIZES.named("W-M"));
        Garment tunic = Designs.named("tunic").madeUp(wearer, Options.USUAL, SewnCloth.usual());
        // chest 94 of the table with 28 cm of ease and the cloth's thickness
        assertThat(2 * (tunic.pieces().get(0).outline().widthCm() - 4))
                .isCloseTo(94 + 28 + 2 * Math.PI * 0.05, within(1e-9));
        assertThat(tunic.pieces().get(2).outline().heightCm()).isEqualTo(60 + 2 + 5);
        assertThat(tunic.notes())
                .anyMatch(note ->
                        note.startsWith("From size W-M (women, middle: 50th percentile): round the chest 94 cm;")
                                && note.contains("ansur-2012"))
                .noneMatch(note -> note.contains("is not used"));
    }

    @Test
    void refusesASizeThatIsNotThere() {
        assertThatThrownBy(() -> SIZES.named("XXL"))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.refusals().get(0).field()).isEqualTo("size"));
    }

    @Test
    void faultsNameFileLineAndField() throws IOException {
        String cells = ",,,90 TYPICAL x,,,,,\n";
        assertThat(faults(HEADER + "A,a" + cells + "A,b" + cells))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.file()).isEqualTo("sizes.csv");
                    assertThat(fault.line()).isEqualTo(3);
                    assertThat(fault.field()).isEqualTo("key");
                });
        assertThat(faults(HEADER + "A,a,,,ninety,,,,,\n"))
                .extracting(Fault::field)
                .containsExactly("chestCm");
        assertThat(faults(HEADER + "A,a,,,9 TYPICAL x,,,,,\n"))
                .extracting(Fault::field)
                .containsExactly("chestCm");
        assertThat(faults(HEADER + "A,a,,,,,,,,\n")).extracting(Fault::field).containsExactly("key");
        assertThat(faults("key,name\nA,a\n")).extracting(Fault::field).contains("heightCm");
    }

    private static List<Fault> faults(String text) throws IOException {
        List<Fault> faults = new ArrayList<>();
        Sizes.read(new StringReader(text), faults);
        return faults;
    }
}
