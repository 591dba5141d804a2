package campcloth;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModule;
import org.springframework.modulith.core.ApplicationModules;

/** The structure of the house: which room may import which, and where frameworks may live. */
class HouseTest {

    private static final Map<String, Set<String>> MAY_IMPORT = new TreeMap<>(Map.ofEntries(
            Map.entry("figure", Set.of()),
            Map.entry("access", Set.of("figure")),
            Map.entry("door", Set.of("figure", "access")),
            Map.entry("job", Set.of("figure", "access")),
            Map.entry("outage", Set.of()),
            Map.entry("fibre", Set.of("figure")),
            Map.entry("event", Set.of("figure")),
            Map.entry("layout", Set.of("figure")),
            Map.entry("cloth", Set.of("figure", "fibre", "access")),
            Map.entry("comfort", Set.of("figure", "cloth", "event")),
            Map.entry("fire", Set.of("figure", "fibre", "cloth", "event")),
            Map.entry("garment", Set.of("figure", "cloth", "layout")),
            Map.entry("advice", Set.of("figure", "fibre", "cloth", "event", "comfort", "fire")),
            Map.entry("plan", Set.of("figure", "cloth", "garment", "layout")),
            Map.entry(
                    "errand",
                    Set.of(
                            "figure", "fibre", "cloth", "event", "comfort", "fire", "garment", "layout", "advice",
                            "plan")),
            Map.entry("supply", Set.of("figure", "fibre", "cloth", "job", "access", "outage")),
            Map.entry("demo", Set.of("figure", "fibre", "cloth", "event")),
            Map.entry(
                    "store",
                    Set.of(
                            "figure", "fibre", "cloth", "event", "plan", "garment", "layout", "supply", "errand",
                            "demo", "access", "job", "outage")),
            Map.entry(
                    "rest",
                    Set.of(
                            "figure", "fibre", "cloth", "event", "comfort", "fire", "garment", "layout", "advice",
                            "plan", "supply", "errand", "access", "job", "outage")),
            Map.entry(
                    "pages",
                    Set.of(
                            "figure", "fibre", "cloth", "event", "comfort", "fire", "garment", "layout", "advice",
                            "plan", "supply", "errand", "demo", "access", "job", "outage"))));

    private static final Set<String> EDGES = Set.of("store", "rest", "pages", "door");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("campcloth");

    private final ApplicationModules rooms = ApplicationModules.of(CampclothApplication.class);

    @Test
    void everyRoomIsInTheTable() {
        assertThat(rooms.stream().map(HouseTest::name)).containsExactlyInAnyOrderElementsOf(MAY_IMPORT.keySet());
    }

    @Test
    void noCyclesAndNoReachingInside() {
        rooms.verify();
    }

    @Test
    void arrowsOnlyAsDrawn() {
        rooms.stream()
                .forEach(room -> assertThat(imports(room))
                        .as("imports of room %s", name(room))
                        .isSubsetOf(MAY_IMPORT.get(name(room))));
    }

    @Test
    void theCoreKnowsNoFramework() {
        coreKnowsNoFramework(corePackages()).check(CLASSES);
    }

    @Test
    void theRuleAboutFrameworksCanFail() {
        JavaClasses planted = new ClassFileImporter().importPackages("campcloth.planted");
        assertThatThrownBy(() -> coreKnowsNoFramework(List.of("campcloth.planted.fibre.."))
                        .check(planted))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("FibreWithSpring");
    }

    @Test
    void nothingReachesTheRoof() {
        noClasses()
                .that()
                .resideInAPackage("campcloth.*..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("campcloth")
                .check(CLASSES);
    }

    @Test
    void theCoreAsksNobodyForTheTime() {
        noClasses()
                .that()
                .resideInAnyPackage(corePackages().toArray(String[]::new))
                .should()
                .callMethod(java.time.Instant.class, "now")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .check(CLASSES);
    }

    @Test
    void nothingInTheCoreIsMutableAndStatic() {
        fields().that()
                .areDeclaredInClassesThat()
                .resideInAnyPackage(corePackages().toArray(String[]::new))
                .and()
                .areStatic()
                .should()
                .beFinal()
                .check(CLASSES);
    }

    private static ArchRule coreKnowsNoFramework(Collection<String> packages) {
        return noClasses()
                .that()
                .resideInAnyPackage(packages.toArray(String[]::new))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.springframework..",
                        "jakarta..",
                        "org.hibernate..",
                        "tools.jackson..",
                        "com.fasterxml..",
                        "io.swagger..",
                        "io.micrometer..");
    }

    private static List<String> corePackages() {
        return MAY_IMPORT.keySet().stream()
                .filter(room -> !EDGES.contains(room))
                .map(room -> "campcloth." + room + "..")
                .toList();
    }

    private Set<String> imports(ApplicationModule room) {
        Stream<ApplicationModule> used = room.getDirectDependencies(rooms).uniqueModules();
        return used.map(HouseTest::name).collect(Collectors.toCollection(TreeSet::new));
    }

    private static String name(ApplicationModule room) {
        return room.getIdentifier().toString();
    }
}
