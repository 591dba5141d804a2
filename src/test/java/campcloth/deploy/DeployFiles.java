package campcloth.deploy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What the files in {@code deploy/} say, read for tests. */
final class DeployFiles {

    static final Path FOLDER = Path.of("deploy");

    private DeployFiles() {}

    static Set<String> settingsInTheReadme() throws IOException {
        return Files.readAllLines(FOLDER.resolve("README.md")).stream()
                .filter(line -> line.startsWith("| `"))
                .flatMap(line -> Pattern.compile("`([A-Z_]{3,})`")
                        .matcher(line.substring(0, line.indexOf('|', 1)))
                        .results()
                        .map(found -> found.group(1)))
                .collect(Collectors.toSet());
    }

    static Map<String, String> environmentOfTheImage() throws IOException {
        String file = Files.readString(FOLDER.resolve("Dockerfile"));
        String block = file.substring(file.indexOf("\nENV "), file.indexOf("\nEXPOSE "));
        return Pattern.compile("([A-Z_]+)=(\\S+)")
                .matcher(block)
                .results()
                .collect(Collectors.toMap(found -> found.group(1), found -> found.group(2)));
    }

    /** A number among the settings that come with the program. */
    static int setting(String pattern) throws IOException {
        Matcher found = Pattern.compile(pattern)
                .matcher(Files.readString(Path.of("src/main/resources/application.properties")));
        return found.find() ? Integer.parseInt(found.group(1)) : -1;
    }

    static String versionInThePom() throws IOException {
        Matcher version = Pattern.compile("<artifactId>campcloth</artifactId>\\s*<version>([^<]+)<")
                .matcher(Files.readString(Path.of("pom.xml")));
        return version.find() ? version.group(1) : "none";
    }

    static Yaml manifest(String kind, String name) {
        return manifests().stream()
                .filter(m -> m.at("kind").text().equals(kind)
                        && m.at("metadata", "name").text().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + kind + " " + name));
    }

    static List<Yaml> manifests() {
        return yaml("kubernetes/kustomization.yaml").get(0).at("resources").items().stream()
                .flatMap(file -> yaml("kubernetes/" + file.text()).stream())
                .toList();
    }

    static List<Yaml> yaml(String file) {
        try {
            return Yaml.all(FOLDER.resolve(file));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }
}
