package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What published burn-test keys say of a fibre is told as that fibre first. */
class FlameKeyPublishedTest {

    private static final String FILE = "burn-test-keys.csv";

    record Row(String source, Set<String> classes, String observations) {}

    static List<Row> rows() {
        return LabelFixture.rows(LabelFixture.published(FILE)).stream()
                .map(FlameKeyPublishedTest::row)
                .toList();
    }

    private static Row row(CSVRecord row) {
        return new Row(row.get("source"), Set.of(row.get("classes").split(";")), row.get("observations"));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theFirstClassIsOneThatTheKeyNames(Row row) {
        FlameFinding.OfThread thread = FlameFixture.thread(row.observations());
        assertThat(row.classes())
                .as("%s: %s", row, ranking(thread))
                .contains(thread.first().key());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void noneOfThemContradictsItself(Row row) {
        assertThat(FlameFixture.thread(row.observations()).verdict()).isNotEqualTo(FlameFinding.Verdict.FITS_NOTHING);
    }

    @Test
    void severalKeysAndMostClassesAreThere() {
        List<Row> rows = rows();
        assertThat(rows.stream().map(Row::source).distinct()).hasSizeGreaterThanOrEqualTo(6);
        assertThat(rows).hasSizeGreaterThanOrEqualTo(35);
        Set<String> known =
                FlameFixture.KEY.classes().stream().map(FlameClass::key).collect(Collectors.toSet());
        assertThat(rows).allSatisfy(row -> assertThat(known).containsAll(row.classes()));
    }

    private static String ranking(FlameFinding.OfThread thread) {
        return thread.ranking().stream()
                .limit(4)
                .map(ranked -> ranked.fibreClass().key() + " " + ranked.probability())
                .toList()
                .toString();
    }
}
