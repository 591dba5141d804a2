package campcloth.fibre;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.figure.Basis;
import campcloth.figure.Fault;
import campcloth.figure.Figure;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class FibreTableTest {

    private static final Path FILE = Path.of("catalogue/fibres.csv");

    private final List<Fault> faults = new ArrayList<>();

    private Fibres shipped() throws IOException {
        Fibres fibres = Fibres.read(new StringReader(Files.readString(FILE)), faults);
        assertThat(faults).isEmpty();
        return fibres;
    }

    @Test
    void whatMeltsSaysWhereAndWhatDoesNotSaysNothing() throws IOException {
        for (Fibre fibre : shipped().all()) {
            boolean melts = fibre.softensC().isPresent() || fibre.meltsC().isPresent();
            switch (fibre.family()) {
                case MELTABLE, UNNAMED -> {
                    assertThat(melts).as(fibre.key()).isTrue();
                    assertThat(lowest(fibre)).as(fibre.key()).isLessThan(350);
                }
                case CELLULOSIC, PROTEIN, FLAME_RESISTANT ->
                    assertThat(melts).as(fibre.key()).isFalse();
                case MINERAL -> assertThat(lowest(fibre)).as(fibre.key()).isGreaterThan(600);
            }
        }
    }

    private static double lowest(Fibre fibre) {
        return Math.min(
                fibre.softensC().map(Figure::low).orElse(Double.MAX_VALUE),
                fibre.meltsC().map(Figure::low).orElse(Double.MAX_VALUE));
    }

    @Test
    void fibresSoftenBeforeTheyMeltAndMeltBeforeTheyDecompose() throws IOException {
        for (Fibre fibre : shipped().all()) {
            ordered(fibre, fibre.softensC(), fibre.meltsC());
            ordered(fibre, fibre.meltsC(), fibre.decomposesC());
        }
    }

    /** Chlorofibre and elastane start to decompose about where they melt: a margin of 15 degrees. */
    private static void ordered(Fibre fibre, Optional<Figure> lower, Optional<Figure> higher) {
        lower.ifPresent(low -> higher.ifPresent(
                high -> assertThat(low.value()).as(fibre.key()).isLessThanOrEqualTo(high.value() + 15)));
    }

    @Test
    void anUnnamedFibreIsPresumedAsBadAsTheWorst() throws IOException {
        Fibres fibres = shipped();
        for (String key : List.of(Fibre.OTHER, Fibre.UNKNOWN)) {
            Fibre unnamed = fibres.require(key);
            assertThat(unnamed.family()).isEqualTo(FibreFamily.UNNAMED);
            for (Fibre named : fibres.all()) {
                noHigher(unnamed, named, Fibre::softensC);
                noHigher(unnamed, named, Fibre::meltsC);
                noHigher(unnamed, named, Fibre::oxygenIndexPercent);
            }
            assertThat(unnamed.densityGCm3().basis()).isEqualTo(Basis.ESTIMATED);
            assertThat(unnamed.agreedAllowancePercent()).isEmpty();
        }
    }

    private static void noHigher(Fibre unnamed, Fibre named, Function<Fibre, Optional<Figure>> property) {
        property.apply(named)
                .ifPresent(figure -> assertThat(
                                property.apply(unnamed).orElseThrow().low())
                        .as(named.key())
                        .isLessThanOrEqualTo(figure.low()));
    }

    @Test
    void densitiesAndRegainsAreThoseOfFibres() throws IOException {
        assertThat(shipped().all()).hasSizeGreaterThanOrEqualTo(36).allSatisfy(fibre -> {
            assertThat(fibre.densityGCm3().low()).as(fibre.key()).isBetween(0.85, 2.6);
            assertThat(fibre.regainPercent().low()).as(fibre.key()).isBetween(0.0, 20.0);
            assertThat(fibre.regainPercent().high()).as(fibre.key()).isBetween(0.0, 30.0);
            assertThat(fibre.inTheFlame()).as(fibre.key()).endsWith(".");
        });
    }

    @Test
    void keysAreSingleLowerCaseWordsSoThatBlendsCanBeWritten() throws IOException {
        Fibres fibres = shipped();
        assertThat(fibres.all())
                .extracting(Fibre::key)
                .allMatch(key -> key.matches("[a-z]+"))
                .doesNotHaveDuplicates();
        for (Fibre fibre : fibres.all()) {
            assertThat(fibres.blend(fibre.key() + " 100").percentOf(fibre.key()))
                    .isEqualTo(100);
        }
    }

    @Test
    void brokenRowsAreToldWithLineFieldAndRemedy() throws IOException {
        String text = "key,name,family,agreedAllowancePercent,densityGCm3,regainPercent,softensC,meltsC,decomposesC,"
                + "oxygenIndexPercent,diameterUm,modulusGPa,inTheFlame\n"
                + "wool,wool,PROTEIN,,heavy,16 TYPICAL book,,,,,,,Chars.\n"
                + "silk,silk,SPIDER,,1.3 TYPICAL book,10 TYPICAL book,,,,,,,Chars.\n"
                + "flax,flax,CELLULOSIC,,1.5 TYPICAL book,,,,,,,,Burns.\n"
                + "other,other,UNNAMED,,1.3 ESTIMATED us,3 ESTIMATED us,,,,,,,Melts.\n"
                + "other,other,UNNAMED,,1.3 ESTIMATED us,3 ESTIMATED us,,,,,,,Melts.\n";
        Fibres fibres = Fibres.read(new StringReader(text), faults);
        assertThat(fibres.all()).extracting(Fibre::key).containsExactly("other");
        assertThat(faults)
                .extracting(fault -> fault.line() + " " + fault.field())
                .containsExactlyInAnyOrder("2 densityGCm3", "3 family", "4 regainPercent", "6 key", "1 key");
        Set<String> remedies = Set.copyOf(faults.stream().map(Fault::remedy).toList());
        assertThat(remedies).hasSize(5).noneMatch(String::isBlank);
        assertThat(faults).allSatisfy(fault -> assertThat(fault.sentence()).contains("fibres.csv", fault.field()));
    }
}
