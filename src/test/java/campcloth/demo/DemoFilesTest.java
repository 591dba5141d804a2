package campcloth.demo;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.ShippedCatalogue;
import campcloth.figure.Fault;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The tables of the demo: whole as shipped, invented throughout, and told by file, line and field where they are not whole. */
class DemoFilesTest {

    private final Map<String, String> texts = new LinkedHashMap<>();
    private final List<Fault> faults = new ArrayList<>();

    DemoFilesTest() throws IOException {
        try (var files = Files.list(Path.of("catalogue", "demo"))) {
            for (Path file : files.toList()) {
                texts.put("demo/" + file.getFileName(), Files.readString(file));
            }
        }
    }

    @Test
    void asShippedItIsWholeAndSaysThatItIsInvented() throws IOException {
        DemoCamp demo = read().orElseThrow();
        assertThat(faults).extracting(Fault::sentence).isEmpty();
        assertThat(demo.event().name()).contains("(demo)");
        assertThat(demo.event().spells()).hasSize(3);
        assertThat(demo.event().rules())
                .allSatisfy(rule ->
                        assertThat(rule.provenance().source().orElseThrow()).contains("(invented)"));
        assertThat(demo.cloths()).hasSize(3).allSatisfy(cloth -> {
            assertThat(cloth.cloth().name()).contains("(demo)");
            assertThat(cloth.cloth().note()).startsWith("Invented");
        });
        assertThat(demo.cloths().stream()
                        .mapToInt(cloth -> cloth.swatches().size())
                        .sum())
                .isEqualTo(1);
    }

    @Test
    void withoutAnyTableThereIsNoDemoAndNoFault() throws IOException {
        texts.clear();
        assertThat(read()).isEmpty();
        assertThat(faults).isEmpty();
    }

    @Test
    void aFaultIsToldWithFileLineAndFieldAndNothingHalfIsPutIn() throws IOException {
        texts.computeIfPresent("demo/spells.csv", (name, text) -> text.replace(",26,", ",warm,"));
        texts.computeIfPresent("demo/rules.csv", (name, text) -> text.replace("acrylic", "mithril"));
        texts.computeIfPresent("demo/swatches.csv", (name, text) -> text.replace("bin-linen", "no-such"));
        texts.remove("demo/cloths.csv");
        assertThat(read()).isEmpty();
        assertThat(faults)
                .extracting(fault -> fault.file() + " " + fault.field())
                .contains(
                        "demo/spells.csv airC",
                        "demo/rules.csv forbiddenFibres",
                        "demo/swatches.csv cloth",
                        "demo/cloths.csv (whole file)");
        assertThat(faults).filteredOn(fault -> fault.field().equals("airC")).allMatch(fault -> fault.line() == 3);
    }

    private Optional<DemoCamp> read() throws IOException {
        Map<String, Reader> files = new LinkedHashMap<>();
        texts.forEach((name, text) -> files.put(name, new StringReader(text)));
        return DemoFiles.read(files, ShippedCatalogue.get().fibres(), faults);
    }
}
