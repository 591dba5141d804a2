package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.figure.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What is wrong in the tables of the burn-test key is told with file, line and field. */
class FlameKeyTableTest {

    private static final String EVIDENCE = FlameFixture.text("burn-test.csv");
    private static final String CLASSES = FlameFixture.text("burn-test-classes.csv");
    private static final String ANSWERS = FlameFixture.text("burn-test-answers.csv");
    private static final String ROW = "removed,burns-on,cotton,0.96,project-burn-key,\n";

    private static List<Fault> faults(String evidence, String classes, String answers) {
        List<Fault> faults = new ArrayList<>();
        FlameFixture.read(evidence, classes, answers, faults);
        return faults;
    }

    private static List<Fault> evidenceWith(String row) {
        assertThat(EVIDENCE).contains(ROW);
        return faults(EVIDENCE.replace(ROW, row), CLASSES, ANSWERS);
    }

    private static long line() {
        return EVIDENCE.substring(0, EVIDENCE.indexOf(ROW)).lines().count() + 1;
    }

    @Test
    void everyClassHasItsRowsAndItsSource() {
        assertThat(FlameFixture.KEY.classes()).hasSize(19);
        Set<String> sources = LabelFixture.rows(FlameFixture.text("sources.csv")).stream()
                .map(row -> row.get("id"))
                .collect(Collectors.toSet());
        assertThat(sources).containsAll(FlameKey.SOURCES);
        assertThat(LabelFixture.rows(FlameFixture.text("burn-test.csv")))
                .allSatisfy(row -> assertThat(sources).contains(row.get("source")));
    }

    @Test
    void aSumOtherThanOneIsAFault() {
        assertThat(evidenceWith("removed,burns-on,cotton,0.80,project-burn-key,\n"))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.file()).isEqualTo("burn-test.csv");
                    assertThat(fault.field()).isEqualTo("likelihood");
                    assertThat(fault.line()).isEqualTo(line() + 1);
                    assertThat(fault.because())
                            .contains("cotton")
                            .contains("removed")
                            .contains("0.84");
                });
    }

    @Test
    void nothingIsImpossibleAndNothingIsCertain() {
        for (String wrong : List.of("0", "0.01", "1", "-0.5", "1.2")) {
            assertThat(evidenceWith("removed,burns-on,cotton," + wrong + ",project-burn-key,\n"))
                    .anySatisfy(fault -> {
                        assertThat(fault.field()).isEqualTo("likelihood");
                        assertThat(fault.line()).isEqualTo(line());
                    });
        }
    }

    @Test
    void aMissingRowIsAFault() {
        assertThat(evidenceWith(""))
                .singleElement()
                .satisfies(
                        fault -> assertThat(fault.because()).contains("cotton").contains("burns-on"));
    }

    @Test
    void unknownFeaturesAnswersClassesAndFibresAreFaults() {
        assertThat(evidenceWith(ROW + "colour,red,cotton,0.5,project-burn-key,\n"))
                .extracting(Fault::field)
                .containsExactly("feature");
        assertThat(evidenceWith(ROW + "removed,explodes,cotton,0.5,project-burn-key,\n"))
                .extracting(Fault::field)
                .containsExactly("answer");
        assertThat(evidenceWith(ROW + "removed,burns-on,moonlight,0.5,project-burn-key,\n"))
                .extracting(Fault::field)
                .containsExactly("class");
        assertThat(faults(EVIDENCE, CLASSES.replace("CELLULOSIC,jute,", "CELLULOSIC,unobtainium,"), ANSWERS))
                .anySatisfy(fault -> {
                    assertThat(fault.file()).isEqualTo("burn-test-classes.csv");
                    assertThat(fault.field()).isEqualTo("fibres");
                });
    }

    @Test
    void aRowThatStandsTwiceIsAFault() {
        assertThat(evidenceWith(ROW + ROW))
                .extracting(Fault::because)
                .containsExactly("stands twice for removed burns-on");
        assertThat(faults(EVIDENCE, CLASSES + "jute,jute,CELLULOSIC,jute,x,\n", ANSWERS))
                .extracting(Fault::because)
                .containsExactly("jute stands twice");
        assertThat(faults(EVIDENCE, CLASSES, ANSWERS + "ember,none,Nothing.,no\n"))
                .extracting(Fault::because)
                .containsExactly("ember none stands twice");
    }

    @Test
    void aClassThatMeltsHasNoFibreThatDoesNot() {
        assertThat(faults(EVIDENCE, CLASSES.replace("MELTABLE,acrylic,", "MELTABLE,acrylic; wool,"), ANSWERS))
                .anySatisfy(fault -> assertThat(fault.because()).contains("wool does not melt"));
        assertThat(faults(EVIDENCE, CLASSES.replace("PROTEIN,silk,", "PROTEIN,silk; polyester,"), ANSWERS))
                .anySatisfy(fault -> assertThat(fault.because()).contains("polyester melts"));
    }

    @Test
    void aFeatureWithoutAnswersIsAFault() {
        String without =
                ANSWERS.lines().filter(line -> !line.startsWith("ember,")).collect(Collectors.joining("\n"));
        assertThat(faults(EVIDENCE, CLASSES, without)).anySatisfy(fault -> {
            assertThat(fault.file()).isEqualTo("burn-test-answers.csv");
            assertThat(fault.because()).contains("ember");
        });
    }

    @Test
    void emptyTablesAreFaultsAndNoCrash() {
        assertThat(faults("feature\n", "class\n", "feature\n")).hasSizeGreaterThanOrEqualTo(3);
    }
}
