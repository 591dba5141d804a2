package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.figure.Basis;
import campcloth.figure.Fault;
import campcloth.figure.Figure;
import campcloth.figure.ReferenceTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The agreed allowances of the catalogue against Annex IX of the regulation. */
class AgreedAllowancesTest {

    /** Fibres of the annex that no cloth in shops names; the catalogue has no row for them. */
    private static final Set<String> NOT_IN_THE_CATALOGUE =
            Set.of("polycarbamide", "polypropylene-polyamide-bicomponent");

    private record Published(String fibre, double percent, boolean taken) {}

    private static final Map<String, List<Published>> PUBLISHED = new LinkedHashMap<>();
    private static final List<Fault> FAULTS = new ArrayList<>();
    private static Fibres fibres;

    @BeforeAll
    static void read() throws IOException {
        try (var text = Files.newBufferedReader(Path.of("catalogue/fibres.csv"))) {
            fibres = Fibres.read(text, FAULTS);
        }
        try (var text = Files.newBufferedReader(Path.of("src/test/resources/published/agreed-allowances.csv"))) {
            ReferenceTable.read("agreed-allowances.csv", text, List.of("fibre", "percent", "taken"), FAULTS)
                    .map(row -> new Published(row.text("fibre"), row.number("percent"), row.yes("taken")))
                    .forEach(row -> PUBLISHED
                            .computeIfAbsent(row.fibre(), key -> new ArrayList<>())
                            .add(row));
        }
        assertThat(FAULTS).isEmpty();
        assertThat(PUBLISHED).hasSizeGreaterThan(50);
    }

    @Test
    void everyPublishedAllowanceStandsInTheCatalogue() {
        PUBLISHED.forEach((key, rows) -> {
            if (NOT_IN_THE_CATALOGUE.contains(key)) {
                assertThat(fibres.named(key)).as(key).isEmpty();
                return;
            }
            Figure allowance = fibres.require(key).agreedAllowancePercent().orElseThrow();
            assertThat(allowance.value())
                    .as(key)
                    .isEqualTo(rows.stream()
                            .filter(Published::taken)
                            .mapToDouble(Published::percent)
                            .sum());
            assertThat(allowance.low())
                    .as(key)
                    .isEqualTo(
                            rows.stream().mapToDouble(Published::percent).min().orElseThrow());
            assertThat(allowance.high())
                    .as(key)
                    .isEqualTo(
                            rows.stream().mapToDouble(Published::percent).max().orElseThrow());
            assertThat(allowance.basis()).as(key).isEqualTo(Basis.DECLARED);
            assertThat(allowance.source()).as(key).isEqualTo("regulation-1007-2011");
        });
    }

    @Test
    void noFibreHasAnAllowanceThatIsNotPublished() {
        assertThat(fibres.all())
                .allSatisfy(fibre -> assertThat(fibre.agreedAllowancePercent().isPresent())
                        .as(fibre.key())
                        .isEqualTo(PUBLISHED.containsKey(fibre.key())));
    }
}
