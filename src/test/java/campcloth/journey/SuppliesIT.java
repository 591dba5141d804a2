package campcloth.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What the packed program is made of, by the bill of materials in it: every library is on the bill with its hash, a version that stays
 * and a licence that may be passed on. A build without network ({@code -o}) writes no bill; then there is nothing to look at.
 */
class SuppliesIT {

    private static final String BILL = "META-INF/sbom/application.cdx.json";

    /** Licences that a program under Apache-2.0 may be packed with, unchanged and as libraries of their own. */
    private static final Set<String> LICENCES = Set.of(
            "Apache-2.0",
            "BSD-2-Clause",
            "BSD-3-Clause",
            "MIT",
            "MIT-0",
            "0BSD",
            "CC0-1.0",
            "EPL-1.0",
            "EPL-2.0",
            "LGPL-2.1-only",
            "LGPL-2.1-or-later",
            "GPL-2.0-with-classpath-exception",
            "PostgreSQL",
            // By its own words an adaptation of the MIT licence.
            "Bouncy Castle Licence",
            "SAX-PD",
            "The W3C License",
            "GNU Lesser General Public License (LGPL), Version 2.1",
            "Mozilla Public License Version 2.0");

    @TempDir
    Path folder;

    @BeforeEach
    void aBillWasWritten() {
        assumeFalse(
                "offline=true".equals(System.getProperty("built.offline")),
                "built without network: no bill of materials");
    }

    @Test
    void everyLibraryInTheJarIsOnTheBill() throws IOException {
        Set<String> billed = components().stream()
                .map(c -> c.path("name").asString() + "-" + c.path("version").asString() + ".jar")
                .collect(Collectors.toSet());
        Set<String> packed = new TreeSet<>();
        try (ZipFile jar = new ZipFile(PackedProgram.JAR.toFile())) {
            jar.stream()
                    .map(entry -> entry.getName())
                    .filter(name -> name.startsWith("BOOT-INF/lib/") && name.endsWith(".jar"))
                    .map(name -> name.substring(name.lastIndexOf('/') + 1))
                    // Boot's own reader of layers, put in by its plugin and not by Maven's dependencies.
                    .filter(name -> !name.startsWith("spring-boot-jarmode-tools-"))
                    .forEach(packed::add);
        }
        assertThat(packed).hasSizeGreaterThan(80);
        assertThat(billed).containsAll(packed);
    }

    @Test
    void everyLibraryHasALicenceThatMayBePassedOn() throws IOException {
        assertThat(components()).allSatisfy(component -> {
            List<String> licences = licences(component);
            assertThat(licences)
                    .as("licences of %s", component.path("purl").asString())
                    .isNotEmpty();
            // Where there are several, one may be chosen.
            assertThat(licences.stream().anyMatch(LICENCES::contains))
                    .as("%s: %s", component.path("purl").asString(), licences)
                    .isTrue();
        });
    }

    @Test
    void everyLibraryHasAVersionThatStaysAndAHash() throws IOException {
        assertThat(components()).allSatisfy(component -> {
            assertThat(component.path("version").asString())
                    .as("%s", component.path("purl").asString())
                    .matches("\\d[\\w.-]*")
                    .doesNotContain("SNAPSHOT");
            assertThat(component.path("hashes")).isNotEmpty();
        });
    }

    @Test
    void whoWatchesOverTheProgramCanAskForTheBill() throws Exception {
        Map<String, String> shown = Map.of("MANAGEMENT_ENDPOINTS_WEB_EXPOSURE_INCLUDE", "health,sbom");
        try (PackedProgram program = PackedProgram.start(folder, shown).ready()) {
            assertThat(program.get("/actuator/sbom/application").body())
                    .contains("CycloneDX", "pkg:maven/org.postgresql");
        }
    }

    private static List<String> licences(JsonNode component) {
        return StreamSupport.stream(component.path("licenses").spliterator(), false)
                .map(l -> l.has("expression") ? l.path("expression") : named(l.path("license")))
                .map(JsonNode::asString)
                .toList();
    }

    private static JsonNode named(JsonNode licence) {
        return licence.has("id") ? licence.path("id") : licence.path("name");
    }

    private static List<JsonNode> components() throws IOException {
        try (ZipFile jar = new ZipFile(PackedProgram.JAR.toFile());
                InputStream bill = jar.getInputStream(jar.getEntry(BILL))) {
            return StreamSupport.stream(
                            new JsonMapper().readTree(bill).path("components").spliterator(), false)
                    .toList();
        }
    }
}
